package org.leverbook.session;

import java.lang.reflect.Field;
import java.lang.reflect.Type;

/** What something is, in one line: the first sentence of what is written about it. */
record Abouts(Javadocs javadocs, Forms forms) {

  String of(Form form) {
    return form.origin().flatMap(javadocs::of).map(Javadocs.Text::first).orElse("");
  }

  String of(Field field) {
    return javadocs.of(field).map(Javadocs.Text::first).orElse("");
  }

  String of(Class<?> type) {
    return javadocs.of(type).map(Javadocs.Text::first).orElse("");
  }

  String ofType(Type type) {
    return of(Types.raw(type));
  }
}
