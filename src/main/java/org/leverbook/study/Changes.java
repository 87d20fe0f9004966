package org.leverbook.study;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTable;
import org.leverbook.body.Variation;
import org.leverbook.lift.Setting;
import org.leverbook.load.Load;

/** What is off in one case. Filled by its inputs one after the other, then only read. */
final class Changes {

  private final Map<Variation.Of, Double> body = new HashMap<>();
  private final Map<Setting, Double> settings = new EnumMap<>(Setting.class);
  private final Map<Load, Double> loads = new LinkedHashMap<>();
  private final Map<String, Double> own = new HashMap<>();
  private double heavier = 1;
  private SegmentTable table;

  Changes body(Variation.Trait trait, String part, double size) {
    body.put(new Variation.Of(trait, part), size);
    return this;
  }

  Changes heavier(double factor) {
    heavier = factor;
    return this;
  }

  Changes weighedBy(SegmentTable other) {
    table = other;
    return this;
  }

  Changes setting(Setting setting, double off) {
    settings.put(setting, off);
    return this;
  }

  Changes load(Load load, double factor) {
    loads.put(load, factor);
    return this;
  }

  Changes own(String name, double score) {
    own.put(name, score);
    return this;
  }

  /** The person as it would really be. */
  Person person(Person plain) {
    Person person = heavier == 1 ? plain : plain.heavier(heavier);
    person = table == null ? person : person.weighedBy(table);
    return body.isEmpty() ? person : person.varied(new Variation(body));
  }

  Map<Setting, Double> settings() {
    return settings;
  }

  Map<Load, Double> loads() {
    return loads;
  }

  Map<String, Double> own() {
    return own;
  }
}
