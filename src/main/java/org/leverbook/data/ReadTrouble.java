package org.leverbook.data;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Why a file cannot be read, as the end of a sentence. */
public final class ReadTrouble {

  private static final Pattern SIGN =
      Pattern.compile("Unexpected character \\('(.+?)' \\(code (\\d+)", Pattern.DOTALL);
  private static final Pattern CONTROL = Pattern.compile("Illegal .*character .*code (\\d+)");
  private static final Pattern WORD =
      Pattern.compile("(?:Unrecognized|Non-standard) token '(.*?)'", Pattern.DOTALL);
  private static final Pattern TWICE =
      Pattern.compile("Duplicate (?:field|Object property) [\"'](.*?)[\"']", Pattern.DOTALL);
  private static final int LONGEST = 40;

  private ReadTrouble() {}

  /**
   * Why a text file cannot be read.
   *
   * @param trouble what the system said
   * @return a clause without a full stop
   */
  public static String of(Exception trouble) {
    if (trouble instanceof CharacterCodingException) {
      return "it is not in UTF-8; save it again as \"CSV UTF-8\"";
    }
    if (trouble instanceof AccessDeniedException) {
      return "the system does not let you read it";
    }
    if (trouble instanceof NoSuchFileException) {
      return "it is not there any more";
    }
    String told = trouble.getMessage();
    return "the system gives no way to read it" + (told == null ? "" : " (" + told + ")");
  }

  /**
   * What is wrong with a text that should be JSON.
   *
   * @param trouble what its reader said
   * @return a clause without a full stop
   */
  public static String json(JsonProcessingException trouble) {
    String told = String.valueOf(trouble.getOriginalMessage());
    if (trouble instanceof JsonEOFException || told.startsWith("Unexpected end-of-input")) {
      return "it ends in the middle";
    }
    Matcher sign = SIGN.matcher(told);
    if (sign.find()) {
      int code = Integer.parseInt(sign.group(2));
      return code < ' '
          ? "a control character (number " + code + ") has no place there"
          : "the sign " + sign.group(1) + " has no place there";
    }
    Matcher control = CONTROL.matcher(told);
    if (control.find()) {
      return "a control character (number " + control.group(1) + ") has no place there";
    }
    Matcher word = WORD.matcher(told);
    if (word.find()) {
      return "\"" + brief(word.group(1)) + "\" has no place there";
    }
    Matcher twice = TWICE.matcher(told);
    return twice.find()
        ? "the name \"" + brief(twice.group(1)) + "\" comes twice"
        : "its reader says: " + first(told);
  }

  private static String brief(String text) {
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
  }

  private static String first(String told) {
    String line = told.lines().findFirst().orElse("").replaceFirst("[.:]$", "");
    return line.isEmpty()
        ? "no more"
        : line.substring(0, 1).toLowerCase(Locale.ROOT) + line.substring(1);
  }
}
