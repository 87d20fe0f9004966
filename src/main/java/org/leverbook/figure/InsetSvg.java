package org.leverbook.figure;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.leverbook.display.Picture;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Puts the SVG of one picture into that of a page, as a nested {@code svg} with its own view box.
 *
 * <p>Names inside it get a prefix, so that no picture refers to a part of another. What has style
 * sheets, scripts or foreign content of its own is laid in as an image instead, where neither can
 * reach the page; what is no readable SVG, as its PNG. Title and description are left out: those of
 * the page tell them.
 */
final class InsetSvg {

  private static final Pattern URL = Pattern.compile("url\\((['\"]?)#");
  private static final Set<String> APART = Set.of("style", "script", "foreignObject");
  private static final Set<String> LISTS = Set.of("aria-labelledby", "aria-describedby");

  private InsetSvg() {}

  static String of(Ink.Inset inset, String prefix) {
    Optional<Element> found = root(inset.picture());
    if (found.isEmpty()) {
      return image(inset, "image/png", RasterPainter.file(InsetSize.pixels(inset.picture())));
    }
    Element root = found.get();
    if (APART.stream().anyMatch(tag -> root.getElementsByTagNameNS("*", tag).getLength() > 0)) {
      return image(
          inset, "image/svg+xml", inset.picture().svgDocument().getBytes(StandardCharsets.UTF_8));
    }
    InsetSize size = InsetSize.of(inset.picture());
    if (!root.hasAttribute("viewBox")) {
      root.setAttribute(
          "viewBox",
          "0 0 " + SvgWriter.number(size.width()) + " " + SvgWriter.number(size.height()));
    }
    root.setAttribute("x", SvgWriter.number(inset.x()));
    root.setAttribute("y", SvgWriter.number(inset.y()));
    root.setAttribute("width", SvgWriter.number(inset.width()));
    root.setAttribute("height", SvgWriter.number(inset.height()));
    root.removeAttribute("role");
    LISTS.forEach(root::removeAttribute);
    untold(root);
    renamed(root, names(root, new TreeSet<>()), prefix);
    return text(root);
  }

  /** The root of a picture's SVG, a copy of its own; empty where it cannot be read. */
  static Optional<Element> root(Picture picture) {
    String svg = picture.svgDocument();
    if (svg == null || svg.isBlank()) {
      return Optional.empty();
    }
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      // A picture has no business reading other files.
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      DocumentBuilder reader = factory.newDocumentBuilder();
      // Said by the return, not on the standard error stream.
      reader.setErrorHandler(new DefaultHandler());
      Element root = reader.parse(new InputSource(new StringReader(svg))).getDocumentElement();
      return "svg".equals(root.getLocalName()) ? Optional.of(root) : Optional.empty();
    } catch (SAXException e) {
      return Optional.empty();
    } catch (ParserConfigurationException | IOException e) {
      throw new IllegalStateException("The JDK's own XML reader failed.", e);
    }
  }

  /** The text of a picture's own title or description; empty where it has none. */
  static String told(Element root, String tag) {
    for (Node child : children(root)) {
      if (tag.equals(child.getLocalName())) {
        return child.getTextContent().strip();
      }
    }
    return "";
  }

  private static void untold(Element root) {
    for (Node child : children(root)) {
      if ("title".equals(child.getLocalName()) || "desc".equals(child.getLocalName())) {
        root.removeChild(child);
      }
    }
  }

  private static List<Node> children(Element of) {
    List<Node> children = new ArrayList<>();
    NodeList nodes = of.getChildNodes();
    for (int i = 0; i < nodes.getLength(); i++) {
      children.add(nodes.item(i));
    }
    return children;
  }

  private static Set<String> names(Element of, Set<String> names) {
    if (of.hasAttribute("id")) {
      names.add(of.getAttribute("id"));
    }
    for (Node child : children(of)) {
      if (child instanceof Element element) {
        names(element, names);
      }
    }
    return names;
  }

  private static void renamed(Element of, Set<String> names, String prefix) {
    NamedNodeMap attributes = of.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      Attr attribute = (Attr) attributes.item(i);
      attribute.setValue(renamed(attribute.getName(), attribute.getValue(), names, prefix));
    }
    for (Node child : children(of)) {
      if (child instanceof Element element) {
        renamed(element, names, prefix);
      }
    }
  }

  private static String renamed(String name, String value, Set<String> names, String prefix) {
    if (name.equals("id")) {
      return prefix + value;
    }
    if (name.equals("href") || name.equals("xlink:href")) {
      boolean own = value.startsWith("#") && names.contains(value.substring(1));
      return own ? "#" + prefix + value.substring(1) : value;
    }
    if (LISTS.contains(name)) {
      return value.strip().replaceAll("(^|\\s+)(\\S)", "$1" + prefix + "$2");
    }
    return value.contains("url(") ? URL.matcher(value).replaceAll("url($1#" + prefix) : value;
  }

  private static String image(Ink.Inset inset, String kind, byte[] file) {
    return "<image x=\""
        + SvgWriter.number(inset.x())
        + "\" y=\""
        + SvgWriter.number(inset.y())
        + "\" width=\""
        + SvgWriter.number(inset.width())
        + "\" height=\""
        + SvgWriter.number(inset.height())
        + "\" href=\"data:"
        + kind
        + ";base64,"
        + Base64.getEncoder().encodeToString(file)
        + "\"/>\n";
  }

  private static String text(Element root) {
    try {
      Transformer writer = TransformerFactory.newInstance().newTransformer();
      writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
      writer.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
      StringWriter text = new StringWriter();
      writer.transform(new DOMSource(root), new StreamResult(text));
      return text.append('\n').toString();
    } catch (TransformerException e) {
      throw new IllegalStateException("The JDK's own XML writer failed.", e);
    }
  }
}
