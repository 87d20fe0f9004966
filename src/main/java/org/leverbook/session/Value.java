package org.leverbook.session;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.leverbook.display.Display;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Refused;

/**
 * The value of an expression, and the one safe way for a door to show it: whatever the value does
 * when it shows itself, the door gets a text, and a picture or nothing, never an exception (but for
 * a stop).
 *
 * <p>Two are equal when they hold equal objects of the same line.
 */
public final class Value {

  private final Object object;
  private final int line;
  private Shown shown;
  private String text;
  private Throwable failure;

  /**
   * A value.
   *
   * @param object the object itself; may be null
   * @param line the line on which the expression begins in its text, from 1
   */
  public Value(Object object, int line) {
    this.object = object;
    this.line = line;
  }

  /**
   * The object itself.
   *
   * @return may be null
   */
  public Object object() {
    return object;
  }

  /**
   * The line on which the expression begins in its text.
   *
   * @return from 1
   */
  public int line() {
    return line;
  }

  /**
   * The value as text, worked out once. This runs the user's code where the class is the user's, so
   * it can take long.
   *
   * @return never null, never throws, but for a stop
   */
  public synchronized String text() {
    if (text == null) {
      try {
        text = Objects.requireNonNullElse(asked().text(), "null");
      } catch (Stopped e) {
        throw e;
      } catch (Refused e) {
        // What is worked out only when it is asked may turn out to be impossible.
        failure = e;
        text = String.valueOf(e.getMessage());
      } catch (RuntimeException | StackOverflowError e) {
        failure = e;
        String simple = object.getClass().getSimpleName();
        String kind = simple.isEmpty() ? "value" : simple;
        text = Words.article(kind) + " that cannot show itself";
        text += " (" + ExceptionWording.of(e) + ")";
      }
    }
    return text;
  }

  /**
   * Why the value cannot show itself as text.
   *
   * @return what it threw; empty where it can
   */
  public Optional<Throwable> failure() {
    text();
    return Optional.ofNullable(failure);
  }

  /**
   * The value as a Shown whose four forms never throw.
   *
   * @return its text is {@link #text()}; forms that fail are empty
   */
  public Shown shown() {
    return new Shown() {
      @Override
      public String text() {
        return Value.this.text();
      }

      @Override
      public Optional<String> html() {
        return safely(() -> asked().html());
      }

      @Override
      public Optional<String> svg() {
        return safely(() -> asked().svg());
      }

      @Override
      public Optional<byte[]> png() {
        return safely(() -> asked().png());
      }
    };
  }

  private synchronized Shown asked() {
    shown = shown == null ? Display.of(object) : shown;
    return shown;
  }

  private static <T> Optional<T> safely(Supplier<Optional<T>> form) {
    try {
      return Objects.requireNonNullElse(form.get(), Optional.empty());
    } catch (Stopped e) {
      throw e;
    } catch (RuntimeException | StackOverflowError e) {
      // The text tells what is wrong.
      return Optional.empty();
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Value value
        && line == value.line
        && Objects.equals(object, value.object);
  }

  @Override
  public int hashCode() {
    return 31 * Objects.hashCode(object) + line;
  }

  @Override
  public String toString() {
    return "Value of line " + line + ": " + text();
  }
}
