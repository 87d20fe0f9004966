package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.Barbell;
import org.leverbook.load.Sled;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;
import org.leverbook.support.Contact;
import org.leverbook.support.FixedBar;
import org.leverbook.support.Footing;
import org.leverbook.support.LimbRest;
import org.leverbook.support.Pad;
import org.leverbook.support.Support;

/**
 * Hands on bars, soles on ground, skin on pads, in every lift at start, middle and finish.
 *
 * <p>Points of the surface are the places of {@code datasets/body/places.csv} (skin, soles, the
 * middle of a grip). What a recipe puts somewhere is there to a micrometre; a cushion yields, so
 * that skin between those places may sink in or stand off by {@link Pad#YIELDS}.
 */
class ContactTest {

  private static final double EXACT = 1e-6;

  /** Half-way through a sit-up the seat rolls from its back onto the sitting bones. */
  private static final double ROLLS = 0.002;

  /** Which skin lies exactly on a pad's face; where none is named, the foremost that touches. */
  private static final Map<String, Set<Site>> ON_FACE =
      Map.of(
          "seat", Set.of(Site.SITTING_BONE),
          "foot plate", Set.of(Site.HEEL, Site.BALL_OF_FOOT),
          "heel roller", Set.of(Site.ANKLE),
          "foot hold", Set.of(Site.INSTEP),
          "arm pad", Set.of(Site.BACK_OF_ARM));

  static List<Person> builds() {
    return List.of(
        Person.of(Sex.MALE, Units.kg(85), Units.cm(178)),
        Person.of(Sex.FEMALE, Units.kg(60), Units.cm(162)),
        Person.of(Sex.MALE, Units.kg(105), Units.cm(195)));
  }

  @ParameterizedTest
  @MethodSource("builds")
  void bothHandsAreOnOneStraightBarAcrossTheLifter(Person lifter) {
    int bars = 0;
    for (Position position : all(lifter)) {
      boolean barInHands =
          position.loads().stream()
              .anyMatch(l -> l instanceof Barbell bar && bar.site() == Site.HAND);
      if (barInHands) {
        bars++;
        Vector3D apart = hand(position, Side.RIGHT).subtract(hand(position, Side.LEFT));
        assertThat(Math.hypot(apart.getX(), apart.getY())).as(position.name()).isLessThan(EXACT);
      }
    }
    assertThat(bars).isGreaterThan(30);
  }

  @ParameterizedTest
  @MethodSource("builds")
  void barsAndHandlesThatAreFixedStayInTheHandsAndWhereTheyAre(Person lifter) {
    int fixed = 0;
    for (Lift<?> lift : Library.of(lifter)) {
      List<Position> three = lift.threePositions();
      if (three.get(0).supports().stream().anyMatch(FixedBar.class::isInstance)) {
        fixed++;
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
          for (Position later : three) {
            assertThat(hand(later, side).distance(hand(three.get(0), side)))
                .as(later.name())
                .isLessThan(EXACT);
          }
        }
      }
    }
    assertThat(fixed).isEqualTo(6);
  }

  @ParameterizedTest
  @MethodSource("builds")
  void everySoleThatStandsIsOnItsGround(Person lifter) {
    int soles = 0;
    for (Position position : all(lifter)) {
      for (Support support : position.supports()) {
        if (support instanceof Footing footing) {
          for (Contact contact : footing.contacts(position.placement())) {
            Side side = contact.name().startsWith("left") ? Side.LEFT : Side.RIGHT;
            double plate = contact.name().contains("heel") ? footing.underHeels() : 0;
            assertThat(contact.point().getY() - footing.heights().get(side) - plate)
                .as(position.name() + ", " + contact.name())
                .isBetween(-EXACT, EXACT);
            soles++;
          }
        }
      }
    }
    assertThat(soles).isGreaterThan(500);
  }

  @ParameterizedTest
  @MethodSource("builds")
  void everyPadTouchesTheSkinItIsSaidToTouchAndStaysWhereItIs(Person lifter) {
    int pads = 0;
    for (Lift<?> lift : Library.of(lifter)) {
      Map<String, List<Vector3D>> before = new HashMap<>();
      for (Position position : lift.threePositions()) {
        for (Support support : position.supports()) {
          if (support instanceof Pad pad) {
            pads++;
            List<Vector3D> ends = pad.ends(position.placement());
            before.putIfAbsent(pad.source(), ends);
            assertThat(ends.get(0).distance(before.get(pad.source()).get(0)))
                .as(position.name() + ", the place of the " + pad.source())
                .isLessThan(EXACT);
            assertTouches(position, pad, ends.get(0).dotProduct(pad.facing()));
          }
        }
      }
    }
    assertThat(pads).isGreaterThan(60);
  }

  private static void assertTouches(Position position, Pad pad, double face) {
    Placement where = position.placement();
    double foremost = Double.POSITIVE_INFINITY;
    for (Contact contact : pad.contacts(where)) {
      double off = contact.point().dotProduct(pad.facing()) - face;
      foremost = Math.min(foremost, Math.abs(off));
      assertThat(Math.abs(off)).as(position.name() + contact).isLessThan(Pad.YIELDS);
    }
    double tolerance = position.name().equals("sit-up, middle") ? ROLLS : EXACT;
    assertThat(foremost).as(position.name() + ", " + pad.source()).isLessThan(tolerance);
    for (Site site : ON_FACE.getOrDefault(pad.source(), Set.of())) {
      if (pad.sites().contains(site)) {
        Vector3D skin = where.at(where.tree().place(site, Side.RIGHT));
        assertThat(skin.dotProduct(pad.facing()) - face)
            .as(position.name() + ", " + site.word() + " on the " + pad.source())
            .isBetween(-EXACT, EXACT);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("builds")
  void limbsThatRestLieOnTheFaceTheyRestOn(Person lifter) {
    int rests = 0;
    for (Position position : all(lifter)) {
      for (Support support : position.supports()) {
        if (support instanceof LimbRest rest) {
          for (Contact contact : rest.contacts(position.placement())) {
            rests++;
            assertThat(contact.point().getY() - rest.height())
                .as(position.name() + ", " + contact.name())
                .isBetween(-EXACT, EXACT);
          }
        }
      }
    }
    assertThat(rests).isGreaterThan(20);
  }

  @Test
  void bothSolesLieFlatOnTheSled() {
    for (Person lifter : builds()) {
      for (Position position : LegPress.of(lifter).threePositions()) {
        Vector3D rail = new Vector3D(Math.sqrt(0.5), Math.sqrt(0.5), 0);
        Placement where = position.placement();
        List<Double> along = new ArrayList<>();
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
          for (Site site : List.of(Site.HEEL, Site.BALL_OF_FOOT)) {
            along.add(where.at(where.tree().place(site, side)).dotProduct(rail));
          }
        }
        assertThat(position.loads()).anyMatch(Sled.class::isInstance);
        assertThat(along).allSatisfy(a -> assertThat(a - along.get(0)).isBetween(-EXACT, EXACT));
      }
    }
  }

  private static Vector3D hand(Position position, Side side) {
    Placement where = position.placement();
    return where.at(where.tree().place(Site.HAND, side));
  }

  private static List<Position> all(Person lifter) {
    List<Position> all = new ArrayList<>();
    Library.of(lifter).forEach(lift -> all.addAll(lift.threePositions()));
    return all;
  }
}
