package org.leverbook.study;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.leverbook.body.Person;
import org.leverbook.lift.Lift;
import org.leverbook.lift.Redone;
import org.leverbook.lift.Setting;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/** What a doubt is about: a position that can be had again with something changed. */
interface Subject {

  /** The position as it would really be. */
  Position with(Changes changes);

  /** What may be off, strength and muscles left out. */
  Inputs inputs();

  /** The person, unchanged. */
  Person person();

  /** A lift at some share of its way. */
  record OfLift<L extends Lift<L>>(L lift, Function<L, Position> at, Map<Setting, Double> settings)
      implements Subject {

    static <L extends Lift<L>> OfLift<L> of(L lift, Function<L, Position> at) {
      return new OfLift<>(lift, at, Redone.settings(lift));
    }

    @Override
    public Position with(Changes changes) {
      Map<Setting, Double> values = new EnumMap<>(Setting.class);
      changes
          .settings()
          .forEach((setting, off) -> values.put(setting, settings.get(setting) + off));
      return at.apply(Redone.of(lift, changes.person(person()), values, changes.loads()));
    }

    @Override
    public Inputs inputs() {
      Set<Setting> vary = EnumSet.noneOf(Setting.class);
      // Nothing under the heels, no turn, no rounding: what is not there is not off.
      settings.forEach(
          (setting, value) -> {
            if (Math.abs(value) > 1e-9) {
              vary.add(setting);
            }
          });
      return Inputs.ofBuild(person()).withLoads(Redone.loads(lift)).withSettings(vary);
    }

    @Override
    public Person person() {
      return lift.body().person();
    }
  }

  /** A position that a script makes for a person. */
  record OfPerson(Person person, BiFunction<Person, Draw, Position> make) implements Subject {

    @Override
    public Position with(Changes changes) {
      return make.apply(changes.person(person), new Draw(changes.own()));
    }

    @Override
    public Inputs inputs() {
      Draw plain = new Draw(Map.of());
      make.apply(person, plain);
      Inputs build = Inputs.ofBuild(person);
      for (String name : plain.asked().keySet()) {
        if (build.all().stream().anyMatch(i -> i.name().equals(name))) {
          throw new Refused(
              "\"" + name + "\" varies anyway: give a quantity of your own another name.");
        }
      }
      return build.withOwn(plain.asked());
    }
  }
}
