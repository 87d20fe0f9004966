package org.leverbook.figure;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.leverbook.display.Picture;

/**
 * A picture whose SVG holds the letters it is written in, only those it uses.
 *
 * @param plain the picture as it is without
 */
record Lettered(Picture plain) implements Picture {

  private static final String FAMILY = "Letters inside";

  /** What a viewer needs to draw letters; the tables of ligatures and accents are large. */
  private static final List<String> TABLES =
      List.of(
          "OS/2", "cmap", "cvt ", "fpgm", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name",
          "post", "prep");

  private static final Pattern TEXT = Pattern.compile("<text[^>]*>([^<]*)</text>");

  private static final String FONTS = "font-family=\"";

  @Override
  public List<Object> subjects() {
    return plain.subjects();
  }

  @Override
  public String svgDocument() {
    String svg = plain.svgDocument();
    Set<Integer> signs = signs(svg);
    StringBuilder style = new StringBuilder("<style>");
    face(style, "normal", signs, false);
    if (svg.contains("font-weight=\"bold\"")) {
      face(style, "bold", signs, true);
    }
    style.append("</style>");
    int fonts = svg.indexOf(FONTS) + FONTS.length();
    int content = svg.indexOf('>') + 1;
    return svg.substring(0, fonts)
        + "'"
        + FAMILY
        + "', "
        + svg.substring(fonts, content)
        + style
        + svg.substring(content);
  }

  /** Every sign that is written, in order, so that the same picture has the same letters. */
  private static Set<Integer> signs(String svg) {
    Set<Integer> signs = new TreeSet<>();
    "&<>\" ".codePoints().forEach(signs::add);
    Matcher text = TEXT.matcher(svg);
    while (text.find()) {
      text.group(1).codePoints().forEach(signs::add);
    }
    return signs;
  }

  private static void face(StringBuilder style, String weight, Set<Integer> signs, boolean bold) {
    style.append("@font-face{font-family:'").append(FAMILY).append("';font-weight:");
    style.append(weight).append(";src:url(data:font/ttf;base64,");
    style.append(Base64.getEncoder().encodeToString(letters(signs, bold))).append(")}");
  }

  private static byte[] letters(Set<Integer> signs, boolean bold) {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try (TrueTypeFont whole = new TTFParser().parse(new RandomAccessReadBuffer(Fonts.file(bold)))) {
      CmapLookup known = whole.getUnicodeCmapLookup();
      TTFSubsetter some = new TTFSubsetter(whole, TABLES);
      signs.stream().filter(sign -> known.getGlyphId(sign) > 0).forEach(some::add);
      some.writeToStream(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return file.toByteArray();
  }

  @Override
  public byte[] pngFile() {
    return plain.pngFile();
  }

  @Override
  public byte[] pngFile(int pixels) {
    return plain.pngFile(pixels);
  }

  @Override
  public byte[] pdfFile() {
    return plain.pdfFile();
  }

  @Override
  public String description() {
    return plain.description();
  }

  @Override
  public String text() {
    return plain.text();
  }

  @Override
  public String toString() {
    return text();
  }
}
