package org.leverbook.figure;

import java.util.List;
import java.util.Map;

/**
 * A finished page.
 *
 * @param width page units; one is a CSS pixel
 * @param height page units
 * @param title for readers who listen
 * @param description for readers who listen
 * @param attributes of the whole, for pages and tests that read the SVG
 * @param content in order, the first at the back
 */
record Drawing(
    double width,
    double height,
    String title,
    String description,
    Map<String, String> attributes,
    List<Ink> content) {

  /** Keeps its own copy of the list. */
  Drawing {
    content = List.copyOf(content);
  }
}
