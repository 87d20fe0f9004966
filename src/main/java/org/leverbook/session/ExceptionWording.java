package org.leverbook.session;

import java.io.FileNotFoundException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.util.ConcurrentModificationException;
import java.util.IllegalFormatException;
import java.util.NoSuchElementException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Exceptions in words: what is so, and often what to do; then why it came. */
final class ExceptionWording {

  private static final int MOST_CAUSES = 12;

  private static final Pattern NULL =
      Pattern.compile("Cannot (.*?) because (.*) is null", Pattern.DOTALL);
  private static final Pattern ASKED = Pattern.compile("\"(?:[^\"(]*\\.)?(\\w+)\\([^\"]*\\)\"");
  private static final Pattern CAST =
      Pattern.compile("class (\\S+) cannot be cast to class (\\S+).*", Pattern.DOTALL);
  private static final Pattern PLACE =
      Pattern.compile("Index:? (-?\\d+),? (?:out of bounds for length|Size:) (\\d+)");
  private static final Pattern INDEX = Pattern.compile("ndex out of range: (-?\\d+)");
  private static final Pattern RANGE =
      Pattern.compile("(?:begin |Range \\[)(-?\\d+), (?:end )?(-?\\d+)\\)?,?.* length (\\d+)");

  private static final Pattern CONSTANT =
      Pattern.compile("No enum constant (?:\\w+\\.)*(\\w+)\\.(.*)", Pattern.DOTALL);
  private static final Pattern NO_NUMBER =
      Pattern.compile("Unsupported number value '(-?\\w+)' of type");
  private static final Pattern KINDS =
      Pattern.compile("(\\S+) is not compatible with (\\S+)", Pattern.DOTALL);

  private ExceptionWording() {}

  /** An exception and its causes, one line each. */
  static String of(Throwable thrown) {
    StringBuilder text = new StringBuilder(alone(thrown));
    Throwable cause = thrown.getCause();
    for (int depth = 0; cause != null && depth < MOST_CAUSES; depth++) {
      String why = Copies.message(cause);
      text.append("\nbecause of ").append(named(cause)).append(why.isEmpty() ? "" : ": " + why);
      cause = cause.getCause();
    }
    return text.toString();
  }

  private static String alone(Throwable thrown) {
    String message = Copies.message(thrown);
    if (thrown instanceof StackOverflowError) {
      return "A method calls itself without end.";
    }
    if (thrown instanceof NullPointerException) {
      return missing(message);
    }
    if (thrown instanceof ArithmeticException && message.equals("/ by zero")) {
      return "A whole number is divided by zero.";
    }
    if (thrown instanceof ClassCastException) {
      return cast(message);
    }
    if (thrown instanceof IndexOutOfBoundsException) {
      return outside(message);
    }
    if (thrown instanceof NumberFormatException) {
      return "This is no number"
          + (message.isEmpty() ? "." : ": " + message.replace("For input string: ", "") + ".");
    }
    Matcher kinds = KINDS.matcher(message);
    if (thrown.getClass().getName().startsWith("javax.measure.") && kinds.find()) {
      return "These amounts are of different kinds: one is in "
          + kinds.group(1)
          + ", the other in "
          + kinds.group(2)
          + ".";
    }
    String file = file(thrown, message);
    return file.isEmpty() ? listed(thrown, message) : file;
  }

  private static String listed(Throwable thrown, String message) {
    if (thrown instanceof NegativeArraySizeException) {
      return "A length cannot be negative: " + message + ".";
    }
    if (thrown instanceof UnsupportedOperationException && message.isEmpty()) {
      return "This cannot be changed once it is made: what List.of(...) or .toList() gives stays as"
          + " it is; new ArrayList<>(...) makes a list that can be changed.";
    }
    if (thrown instanceof ConcurrentModificationException) {
      return "A list was changed while something still went through it.";
    }
    if (thrown instanceof NoSuchElementException) {
      return "There is nothing to take here" + (message.isEmpty() ? "." : ": " + message + ".");
    }
    if (thrown instanceof IllegalFormatException) {
      return "The pattern does not fit what is to be filled in: " + Words.cleaned(message) + ".";
    }
    if (thrown instanceof InterruptedException) {
      return "The waiting was interrupted.";
    }
    if (thrown instanceof IllegalArgumentException) {
      return argument(thrown, message);
    }
    return byKind(thrown, message);
  }

  private static String byKind(Throwable thrown, String message) {
    String name = named(thrown);
    String kind = Character.toUpperCase(name.charAt(0)) + name.substring(1);
    return kind + (message.isEmpty() ? "." : ": " + message);
  }

  private static String argument(Throwable thrown, String message) {
    Matcher constant = CONSTANT.matcher(message);
    if (constant.matches()) {
      return "There is no " + constant.group(1) + " called \"" + constant.group(2) + "\".";
    }
    // The library of quantities says so of NaN and of infinities.
    Matcher number = NO_NUMBER.matcher(message);
    return number.find()
        ? "An amount must be a finite number, and this comes to " + number.group(1) + "."
        : byKind(thrown, message);
  }

  private static String file(Throwable thrown, String message) {
    if (thrown instanceof NoSuchFileException) {
      return "There is no file " + message + ".";
    }
    if (thrown instanceof FileNotFoundException) {
      return "This file cannot be opened: " + message + ".";
    }
    if (thrown instanceof FileAlreadyExistsException) {
      return "There is a file " + message + " already.";
    }
    if (thrown instanceof AccessDeniedException) {
      return "The file " + message + " may not be touched: the system denies it.";
    }
    return "";
  }

  /** Java tells which part of the line was null; names in it are the user's. */
  private static String missing(String message) {
    Matcher told = NULL.matcher(message);
    if (!told.find()) {
      return "A value is missing (null)" + (message.isEmpty() ? "." : ": " + message + ".");
    }
    String empty = told.group(2);
    Matcher giver = ASKED.matcher(empty);
    String what =
        giver.find()
            ? "what " + giver.group(1) + "() gave"
            : empty.contains("<local") ? "a value" : empty.replace("\"", "");
    Matcher asked = ASKED.matcher(told.group(1));
    return "A value is missing (null): "
        + what
        + " is empty"
        + (asked.find() ? " where " + asked.group(1) + "() is asked of it." : ".");
  }

  private static String cast(String message) {
    Matcher told = CAST.matcher(message);
    if (!told.matches()) {
      return "A value is of another kind than the code says.";
    }
    return "A value is of another kind than the code says: it is "
        + Kinds.a(Words.cleaned(told.group(1)))
        + ", not "
        + Kinds.a(Words.cleaned(told.group(2)))
        + ".";
  }

  private static String outside(String message) {
    Matcher place = PLACE.matcher(message);
    if (place.find()) {
      int length = Integer.parseInt(place.group(2));
      String why =
          length == 0
              ? "it is empty."
              : "places count from 0, and the last one is " + (length - 1) + ".";
      return "There is no place " + place.group(1) + " here: " + why;
    }
    Matcher index = INDEX.matcher(message);
    if (index.find()) {
      return "There is no place " + index.group(1) + " here: places count from 0.";
    }
    Matcher range = RANGE.matcher(message);
    return range.find()
        ? String.format(
            "There is no part from %s to %s here: the whole is %s long.",
            range.group(1), range.group(2), range.group(3))
        : "This place is outside the list or text" + (message.isEmpty() ? "." : ": " + message);
  }

  private static String named(Throwable thrown) {
    String simple = thrown.getClass().getSimpleName();
    String bare = simple.replaceAll("(?<=.)(Exception|Error)$", "");
    return bare.isEmpty() || bare.equals("Exception")
        ? "exception"
        : Words.spaced(bare) + " exception";
  }
}
