package org.leverbook.article;

import java.io.StringReader;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * An SVG document as a part of a page: its names made its own, so that two pictures of a page do
 * not take each other's, and without scripts or references to elsewhere.
 */
public final class InlineSvg {

  private static final Pattern LOCAL = Pattern.compile("url\\(\\s*['\"]?#([^)'\"]+)['\"]?\\s*\\)");

  private static final Pattern ELSEWHERE =
      Pattern.compile("url\\(\\s*['\"]?(?!#)[^)]*\\)|@import[^;]*;?", Pattern.CASE_INSENSITIVE);

  /** Elements that run code or bring in foreign content. */
  private static final Set<String> UNWANTED =
      Set.of("script", "foreignobject", "iframe", "object", "embed");

  /** Attributes that hold names of other elements, with spaces between. */
  private static final Set<String> NAMES = Set.of("aria-labelledby", "aria-describedby");

  private final String own;
  private final StringBuilder svg = new StringBuilder();

  /** Where the last element began. */
  private int started;

  private InlineSvg(String own) {
    this.own = own;
  }

  /**
   * The document as a part of a page.
   *
   * @param document an SVG document
   * @param own begins every name in it, as in "figure-1-"; letters, digits, hyphens
   * @return an {@code svg} element; empty where the document cannot be read as XML, or has a style
   *     sheet, which would rule the whole page
   */
  public static Optional<String> of(String document, String own) {
    XMLInputFactory factory = XMLInputFactory.newFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, false);
    try {
      InlineSvg part = new InlineSvg(own);
      boolean whole = part.copy(factory.createXMLStreamReader(new StringReader(document)));
      String text = part.svg.toString();
      return whole && text.startsWith("<svg") ? Optional.of(text) : Optional.empty();
    } catch (XMLStreamException e) {
      return Optional.empty();
    }
  }

  /** Copies the document; false where it has a style sheet. */
  private boolean copy(XMLStreamReader in) throws XMLStreamException {
    int skipped = 0;
    while (in.hasNext()) {
      int event = in.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        if (in.getLocalName().equals("style")) {
          return false;
        }
        if (skipped > 0 || UNWANTED.contains(in.getLocalName().toLowerCase(Locale.ROOT))) {
          skipped++;
        } else {
          start(in);
        }
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        if (skipped > 0) {
          skipped--;
        } else {
          end(in.getLocalName());
        }
      } else if (skipped == 0
          && svg.length() > 0
          && (event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.CDATA)) {
        svg.append(Page.escaped(in.getText()));
      }
    }
    return true;
  }

  private void start(XMLStreamReader in) {
    started = svg.length();
    svg.append('<').append(in.getLocalName());
    for (int i = 0; i < in.getAttributeCount(); i++) {
      String prefix = in.getAttributePrefix(i);
      String local = in.getAttributeLocalName(i);
      String name = prefix == null || prefix.isEmpty() ? local : prefix + ":" + local;
      String value = in.getAttributeValue(i);
      if (wanted(name, value)) {
        svg.append(' ').append(name).append("=\"");
        svg.append(Page.escaped(renamed(name, value))).append('"');
      }
    }
    svg.append('>');
  }

  private void end(String name) {
    int last = svg.length() - 1;
    // A text cannot end so: its marks are escaped. Nothing since the start means an empty element.
    if (svg.charAt(last) == '>' && svg.lastIndexOf("<") == started && svg.charAt(last - 1) != '/') {
      svg.setCharAt(last, '/');
      svg.append('>');
    } else {
      svg.append("</").append(name).append('>');
    }
  }

  /** No code, and nothing that a reader would have to fetch. */
  private static boolean wanted(String name, String value) {
    String small = name.toLowerCase(Locale.ROOT);
    if (small.startsWith("on")) {
      return false;
    }
    if (small.equals("href") || small.equals("xlink:href") || small.equals("src")) {
      return value.startsWith("#") || value.startsWith("data:image/");
    }
    return !ELSEWHERE.matcher(value).find();
  }

  private String renamed(String name, String value) {
    if (name.equals("id")) {
      return own + value;
    }
    if (NAMES.contains(name)) {
      return value.isBlank() ? value : own + value.strip().replaceAll("\\s+", " " + own);
    }
    if (value.startsWith("#") && name.endsWith("href")) {
      return "#" + own + value.substring(1);
    }
    return LOCAL
        .matcher(value)
        .replaceAll(m -> Matcher.quoteReplacement("url(#" + own + m.group(1) + ")"));
  }
}
