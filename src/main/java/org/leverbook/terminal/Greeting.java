package org.leverbook.terminal;

import org.leverbook.data.Version;
import org.leverbook.display.Caution;

/** The first lines of a shell. */
final class Greeting {

  static final String TEXT =
      "Leverbook "
          + Version.number()
          + ". help() lists the words, quit() leaves. Try this line:\n"
          + "  hinge(person(MALE, kg(85), cm(178))).holding(barbell(kg(140))).start()\n"
          + Caution.TEXT;

  private Greeting() {}
}
