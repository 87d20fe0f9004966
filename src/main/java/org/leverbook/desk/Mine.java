package org.leverbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.session.Belonging;
import org.leverbook.session.Value;

/** The table of what the user declared. */
final class Mine {

  private static final int WIDTH = 60;

  private Mine() {}

  static Sheet of(List<Belonging> belongings) {
    List<List<Object>> rows = new ArrayList<>();
    for (Belonging one : belongings) {
      String kind = one.kind().name().toLowerCase(Locale.ROOT);
      switch (one.kind()) {
        case VARIABLE -> rows.add(List.of(one.name(), kind, one.type(), value(one)));
        case METHOD -> rows.add(method(one, kind));
        case CLASS ->
            rows.add(List.of(one.name(), one.type(), "", OneLine.of(one.source(), WIDTH)));
        default -> rows.add(List.of(one.name(), kind, "", ""));
      }
    }
    return new Sheet(
        rows.isEmpty()
            ? "Nothing of your own yet: var lifter = person(…) makes a variable."
            : "Mine",
        List.of(
            Column.text("name"), Column.text("kind"), Column.text("type"), Column.text("value")),
        rows,
        List.of());
  }

  private static String value(Belonging variable) {
    return variable.value() == null
        ? "nothing (null)"
        : OneLine.of(new Value(variable.value(), 1).text(), WIDTH);
  }

  /** A signature is told by the compiler as in "(Person,double)Mass". */
  private static List<Object> method(Belonging one, String kind) {
    int close = one.type().lastIndexOf(')');
    String takes = one.type().substring(0, close + 1).replace(",", ", ");
    return List.of(
        one.name() + takes, kind, one.type().substring(close + 1), OneLine.of(one.source(), WIDTH));
  }
}
