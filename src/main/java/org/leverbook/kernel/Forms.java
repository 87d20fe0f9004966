package org.leverbook.kernel;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.leverbook.display.Picture;
import org.leverbook.display.Progress;
import org.leverbook.display.Shown;
import org.leverbook.notebook.MimeBundle;

/** The forms of a value as a message carries them, by MIME type. */
final class Forms {

  /** Longer texts and tables make a page that no browser scrolls, in letters. */
  private static final int LONGEST_TEXT = 500_000;

  private static final int LONGEST_TABLE = 5_000_000;

  private Forms() {}

  /**
   * All forms of a value.
   *
   * @throws org.leverbook.quantity.Refused if what is worked out only now is impossible
   */
  static ObjectNode of(Shown shown) {
    Map<String, String> forms = new LinkedHashMap<>(MimeBundle.of(shown).data());
    String text = forms.get(MimeBundle.TEXT);
    if (text.length() > LONGEST_TEXT) {
      forms.put(
          MimeBundle.TEXT,
          text.substring(0, LONGEST_TEXT)
              + String.format(Locale.ROOT, " … (%,d characters in all)", text.length()));
    }
    if (forms.getOrDefault(MimeBundle.HTML, "").length() > LONGEST_TABLE) {
      forms.remove(MimeBundle.HTML);
    }
    String drawing = forms.get(MimeBundle.SVG);
    if (drawing != null) {
      forms.putIfAbsent(MimeBundle.HTML, image(drawing, shown));
    }
    return Json.object(forms);
  }

  /**
   * A drawing as an image of a page. Some programs that make pages of notebooks take every line out
   * of a drawing that stands in the page itself, for fear of scripts; an image holds none.
   */
  private static String image(String drawing, Shown shown) {
    String told = shown instanceof Picture picture ? picture.description() : shown.text();
    String data = Base64.getEncoder().encodeToString(drawing.getBytes(StandardCharsets.UTF_8));
    return "<img style=\"max-width:100%;height:auto\" alt=\""
        + escaped(told)
        + "\" src=\"data:image/svg+xml;base64,"
        + data
        + "\">";
  }

  /** How far work is: a bar, and the line of text. */
  static ObjectNode of(Progress progress) {
    String bar =
        "<progress max=\"100\" value=\""
            + progress.percent()
            + "\"></progress> <span>"
            + escaped(progress.text())
            + "</span>";
    return Json.object(Map.of(MimeBundle.TEXT, progress.text(), MimeBundle.HTML, bar));
  }

  /** The line that stays where the bar was. */
  static ObjectNode over(Progress last) {
    String text = String.format(Locale.ROOT, "%s: over after %.1f s", last.what(), last.spent());
    return Json.object(
        Map.of(MimeBundle.TEXT, text, MimeBundle.HTML, "<span>" + escaped(text) + "</span>"));
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
