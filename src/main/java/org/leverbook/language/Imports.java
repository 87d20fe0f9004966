package org.leverbook.language;

/**
 * What every session imports, so that shell, script and notebook read alike: the words, the types
 * they give, and the everyday parts of Java.
 */
public final class Imports {

  /**
   * Java source. The compiler takes all of it under the name of its first line, which a user who
   * gave the same import would replace: so that one is of no use to anybody.
   */
  public static final String SOURCE =
      """
      import org.leverbook.language.Imports;
      import static org.leverbook.language.Vocabulary.*;
      import java.util.*;
      import java.util.function.*;
      import java.util.stream.*;
      import java.nio.file.*;
      import javax.measure.Quantity;
      import javax.measure.quantity.*;
      import org.leverbook.body.*;
      import org.leverbook.load.Cam;
      import org.leverbook.load.Direction;
      import org.leverbook.load.Stretch;
      import org.leverbook.lift.*;
      import org.leverbook.marks.*;
      import org.leverbook.muscle.*;
      import org.leverbook.statics.*;
      import org.leverbook.strength.*;
      import org.leverbook.study.*;
      import org.leverbook.support.*;
      import tech.tablesaw.api.Table;
      """;

  private Imports() {}
}
