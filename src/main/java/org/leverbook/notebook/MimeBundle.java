package org.leverbook.notebook;

import java.util.Base64;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.leverbook.display.MovingPicture;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Refused;

/**
 * A value in the forms a notebook can show, by MIME type: plain text always, HTML for tables, SVG
 * and PNG for pictures. A moving picture is HTML (its page in a frame) and its first frame as PNG.
 *
 * @param data each form under its type; images other than SVG in base64
 */
public record MimeBundle(Map<String, String> data) {

  /** Plain text. */
  public static final String TEXT = "text/plain";

  /** An HTML fragment. */
  public static final String HTML = "text/html";

  /** An SVG document. */
  public static final String SVG = "image/svg+xml";

  /** A PNG image. */
  public static final String PNG = "image/png";

  /** A GIF image. */
  public static final String GIF = "image/gif";

  /** Keeps its own copy, in the given order. */
  public MimeBundle {
    data = Collections.unmodifiableMap(new LinkedHashMap<>(data));
  }

  /**
   * All forms of a value. Making them runs the value's own code, so it can take long.
   *
   * @param shown how the value shows itself
   * @return its forms; plain text is always among them
   * @throws Refused if what was to be worked out only now turns out to be impossible
   */
  public static MimeBundle of(Shown shown) {
    Map<String, String> data = new LinkedHashMap<>();
    data.put(TEXT, text(shown));
    if (shown instanceof MovingPicture moving) {
      data.put(HTML, Framed.page(moving));
      data.put(PNG, base64(moving.pngFile()));
      return new MimeBundle(data);
    }
    form(shown::html).ifPresent(html -> data.put(HTML, html));
    form(shown::svg).ifPresent(svg -> data.put(SVG, svg));
    form(shown::png).ifPresent(png -> data.put(PNG, base64(png)));
    return new MimeBundle(data);
  }

  /**
   * The forms of a value for a file that is to stay small: a drawing stands there as SVG alone. Its
   * PNG copy is about ten times as long.
   *
   * @param shown how the value shows itself
   * @return its forms; plain text is always among them
   * @throws Refused if what was to be worked out only now turns out to be impossible
   */
  public static MimeBundle light(Shown shown) {
    if (shown instanceof MovingPicture) {
      return of(shown);
    }
    Map<String, String> data = new LinkedHashMap<>();
    data.put(TEXT, text(shown));
    form(shown::html).ifPresent(html -> data.put(HTML, html));
    form(shown::svg).ifPresent(svg -> data.put(SVG, svg));
    return data.containsKey(SVG) ? new MimeBundle(data) : of(shown);
  }

  /**
   * All forms of a value, a moving picture also as a GIF. That takes some seconds more; it is for
   * places where no page can run.
   *
   * @param shown how the value shows itself
   * @return its forms; plain text is always among them
   * @throws Refused if what was to be worked out only now turns out to be impossible
   */
  public static MimeBundle withGif(Shown shown) {
    Map<String, String> data = new LinkedHashMap<>(of(shown).data());
    if (shown instanceof MovingPicture moving) {
      data.put(GIF, base64(moving.gifFile()));
    }
    return new MimeBundle(data);
  }

  /**
   * The value as plain text.
   *
   * @return never null; empty where the bundle came from elsewhere and has none
   */
  public String text() {
    return data.getOrDefault(TEXT, "");
  }

  private static String text(Shown shown) {
    try {
      return String.valueOf(shown.text());
    } catch (Refused e) {
      throw e;
    } catch (RuntimeException | StackOverflowError e) {
      return "a " + shown.getClass().getSimpleName() + " that cannot show itself (" + e + ")";
    }
  }

  /** Where one rich form fails, the others still tell the value. */
  private static <T> Optional<T> form(java.util.function.Supplier<Optional<T>> making) {
    try {
      return making.get();
    } catch (Refused e) {
      throw e;
    } catch (RuntimeException | StackOverflowError e) {
      return Optional.empty();
    }
  }

  private static String base64(byte[] bytes) {
    return Base64.getEncoder().encodeToString(bytes);
  }
}
