package org.leverbook.figure;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads an SVG the way a page would. */
final class SvgReader {

  private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+");

  private final Document document;

  private SvgReader(Document document) {
    this.document = document;
  }

  static SvgReader of(String svg) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      return new SvgReader(
          factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg))));
    } catch (Exception e) {
      throw new AssertionError("not well-formed XML: " + e.getMessage(), e);
    }
  }

  Element root() {
    return document.getDocumentElement();
  }

  double attribute(String name) {
    return Double.parseDouble(root().getAttribute(name));
  }

  List<Element> groups(String kind) {
    return all("g").stream().filter(g -> g.getAttribute("class").equals(kind)).toList();
  }

  List<Element> all(String tag) {
    return children(root(), tag);
  }

  static List<Element> children(Element of, String tag) {
    NodeList nodes = of.getElementsByTagName(tag);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  /** Every word on the page, in order. */
  String words() {
    StringBuilder words = new StringBuilder();
    all("text").forEach(t -> words.append(t.getTextContent()).append(' '));
    return words.toString();
  }

  static double[] numbers(String text) {
    Matcher matcher = NUMBER.matcher(text);
    List<Double> numbers = new ArrayList<>();
    while (matcher.find()) {
      numbers.add(Double.valueOf(matcher.group()));
    }
    return numbers.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
