package org.leverbook.notebook;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Gives each cell a name of its own. A good one stays; a missing, repeated or malformed one is made
 * from what is written in the cell, so that the same file always gets the same names.
 */
final class CellIds {

  private static final Pattern GOOD = Pattern.compile("[a-zA-Z0-9_-]{1,64}");

  private CellIds() {}

  static List<Cell> given(List<Cell> cells) {
    Set<String> taken = new HashSet<>();
    cells.forEach(cell -> taken.add(cell.id()));
    Set<String> met = new HashSet<>();
    List<Cell> named = new ArrayList<>();
    for (Cell cell : cells) {
      if (GOOD.matcher(cell.id()).matches() && met.add(cell.id())) {
        named.add(cell);
      } else {
        named.add(cell.named(made(cell, taken)));
      }
    }
    return named;
  }

  private static String made(Cell cell, Set<String> taken) {
    String stem = digest(cell.kind() + "\n" + cell.source()).substring(0, 8);
    String id = stem;
    for (int i = 2; !taken.add(id); i++) {
      id = stem + "-" + i;
    }
    return id;
  }

  private static String digest(String text) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(sha.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
