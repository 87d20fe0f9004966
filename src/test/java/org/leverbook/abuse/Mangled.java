package org.leverbook.abuse;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Good bytes made bad: cut, doubled, swapped, with odd pieces in them. */
public final class Mangled {

  private static final List<String> PIECES =
      List.of(
          "",
          "NaN",
          "Infinity",
          "-1e308",
          "1e309",
          "null",
          "true",
          "\"",
          "\"\"",
          ",",
          ";",
          "\n",
          "\r\n",
          "\r",
          "\t",
          "\u0000",
          "\ufeff",
          "{",
          "}",
          "[",
          "]",
          "[[[[",
          "{}",
          "é",
          "膝",
          "\ud83c\udfcb",
          "#",
          "-",
          "0",
          "99999999999999999999",
          "1,5",
          "1.5.5",
          "\\u0000",
          "\\",
          "<b>",
          "nil",
          " ",
          "x".repeat(5000),
          ":");

  private final Random random;

  /** Mangles by a seeded chance. */
  public Mangled(Random random) {
    this.random = random;
  }

  /** The bytes with one to four things done to them. */
  public byte[] bytes(byte[] good) {
    byte[] bytes = good;
    for (int times = 1 + random.nextInt(4); times > 0; times--) {
      bytes = once(bytes);
    }
    return bytes;
  }

  /** The same for a text. */
  public String text(String good) {
    return new String(bytes(good.getBytes(StandardCharsets.UTF_8)), StandardCharsets.UTF_8);
  }

  private byte[] once(byte[] bytes) {
    if (bytes.length == 0) {
      return piece();
    }
    int at = random.nextInt(bytes.length);
    int end = Math.min(bytes.length, at + 1 + random.nextInt(random.nextBoolean() ? 6 : 200));
    byte[] head = Arrays.copyOf(bytes, at);
    byte[] cut = Arrays.copyOfRange(bytes, at, end);
    byte[] tail = Arrays.copyOfRange(bytes, end, bytes.length);
    return switch (random.nextInt(8)) {
      case 0 -> join(head, tail);
      case 1 -> join(head, cut, cut, tail);
      case 2 -> join(head, piece(), tail);
      case 3 -> join(head, piece(), cut, tail);
      case 4 -> head;
      case 5 -> token(bytes);
      case 6 -> {
        byte[] flipped = bytes.clone();
        flipped[at] = (byte) random.nextInt();
        yield flipped;
      }
      default -> join(tail, cut, head);
    };
  }

  /** A whole word or number replaced, so that the form stays whole and the value is odd. */
  private byte[] token(byte[] bytes) {
    int at = random.nextInt(bytes.length);
    int start = at;
    int end = at;
    while (start > 0 && isPart(bytes[start - 1])) {
      start--;
    }
    while (end < bytes.length && isPart(bytes[end])) {
      end++;
    }
    return join(Arrays.copyOf(bytes, start), piece(), Arrays.copyOfRange(bytes, end, bytes.length));
  }

  private static boolean isPart(byte sign) {
    return Character.isLetterOrDigit(sign) || sign == '.' || sign == '-' || sign == '_';
  }

  private byte[] piece() {
    return PIECES.get(random.nextInt(PIECES.size())).getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] join(byte[]... parts) {
    int length = Arrays.stream(parts).mapToInt(p -> p.length).sum();
    byte[] whole = new byte[length];
    int at = 0;
    for (byte[] part : parts) {
      System.arraycopy(part, 0, whole, at, part.length);
      at += part.length;
    }
    return whole;
  }
}
