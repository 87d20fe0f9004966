package org.leverbook.terminal;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * The texts of an SVG picture and where they stand. Those that are turned or moved by a transform
 * are left out.
 *
 * @param width of the picture, in its own units
 * @param height of the picture
 * @param texts what stands in it
 */
record SvgTexts(double width, double height, List<Text> texts) {

  /** A picture without a known text. */
  static final SvgTexts NONE = new SvgTexts(0, 0, List.of());

  /** How wide a letter is on average, of its size; generous. */
  private static final double LETTER = 0.62;

  /**
   * A text.
   *
   * @param left where it begins
   * @param baseline where its letters stand
   * @param size of the letters
   * @param words what it says
   */
  record Text(double left, double baseline, double size, String words) {

    double width() {
      return LETTER * size * words.length();
    }
  }

  /** Reads a document; one that cannot be read has no texts. */
  static SvgTexts of(String document) {
    XMLInputFactory factory = XMLInputFactory.newInstance();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    try {
      XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(document));
      try {
        return read(reader);
      } finally {
        reader.close();
      }
    } catch (XMLStreamException | NumberFormatException e) {
      return NONE;
    }
  }

  private static SvgTexts read(XMLStreamReader reader) throws XMLStreamException {
    List<Text> texts = new ArrayList<>();
    double width = 0;
    double height = 0;
    int moved = 0;
    while (reader.hasNext()) {
      int event = reader.next();
      if (event == XMLStreamConstants.END_ELEMENT) {
        moved -= moved > 0 ? 1 : 0;
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        boolean moves = reader.getAttributeValue(null, "transform") != null;
        if (width == 0 && reader.getLocalName().equals("svg")) {
          width = number(reader, "width", 0);
          height = number(reader, "height", 0);
        }
        if (reader.getLocalName().equals("text") && moved == 0 && !moves) {
          texts.add(text(reader));
        } else {
          moved += moves || moved > 0 ? 1 : 0;
        }
      }
    }
    return new SvgTexts(width, height, texts);
  }

  /** Reads up to the end of the text element, with what stands in parts of it. */
  private static Text text(XMLStreamReader reader) throws XMLStreamException {
    double x = number(reader, "x", 0);
    double y = number(reader, "y", 0);
    double size = number(reader, "font-size", 12);
    String anchor = String.valueOf(reader.getAttributeValue(null, "text-anchor"));
    StringBuilder words = new StringBuilder();
    int depth = 1;
    while (depth > 0) {
      int event = reader.next();
      depth += event == XMLStreamConstants.START_ELEMENT ? 1 : 0;
      depth -= event == XMLStreamConstants.END_ELEMENT ? 1 : 0;
      if (event == XMLStreamConstants.CHARACTERS) {
        words.append(reader.getText());
      }
    }
    Text text = new Text(x, y, size, words.toString().strip());
    double back = anchor.equals("middle") ? 0.5 : anchor.equals("end") ? 1 : 0;
    return new Text(x - back * text.width(), y, size, text.words());
  }

  private static double number(XMLStreamReader reader, String name, double otherwise) {
    String value = reader.getAttributeValue(null, name);
    return value == null ? otherwise : Double.parseDouble(value.replaceAll("(px|pt)$", ""));
  }
}
