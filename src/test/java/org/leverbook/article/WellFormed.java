package org.leverbook.article;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A page as a strict reader of XML sees it; a page that is not well-formed cannot be one. */
record WellFormed(Document document) {

  static WellFormed of(String page) throws Exception {
    var builder = DocumentBuilderFactory.newNSInstance().newDocumentBuilder();
    builder.setErrorHandler(null);
    return new WellFormed(builder.parse(new InputSource(new StringReader(page))));
  }

  List<Element> all(String tag) {
    NodeList found = document.getElementsByTagName(tag);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  List<String> texts(String tag) {
    return all(tag).stream().map(e -> e.getTextContent().strip()).toList();
  }

  List<String> attributes(String name) {
    return all("*").stream()
        .filter(e -> e.hasAttribute(name))
        .map(e -> e.getAttribute(name))
        .toList();
  }

  /** The elements of a class of the style sheet. */
  List<Element> ofClass(String name) {
    return all("*").stream()
        .filter(e -> List.of(e.getAttribute("class").split(" ")).contains(name))
        .toList();
  }

  /** What a browser would fetch on opening the page. */
  List<String> fetched() {
    List<String> fetched = new ArrayList<>();
    for (Element element : all("*")) {
      for (int i = 0; i < element.getAttributes().getLength(); i++) {
        Attr attribute = (Attr) element.getAttributes().item(i);
        boolean link = element.getTagName().equals("a") && attribute.getName().equals("href");
        boolean names = attribute.getName().startsWith("xmlns");
        boolean frame = attribute.getName().equals("srcdoc");
        if (!link
            && !names
            && !frame
            && attribute.getValue().matches("(?s).*(https?:)?//.*")
            && !attribute.getValue().startsWith("data:")) {
          fetched.add(attribute.getName() + "=" + attribute.getValue());
        }
      }
      if (List.of("link", "script").contains(element.getTagName())) {
        fetched.add(element.getTagName());
      }
    }
    texts("style").stream()
        .filter(s -> s.contains("url(") || s.contains("@import"))
        .forEach(fetched::add);
    return fetched;
  }
}
