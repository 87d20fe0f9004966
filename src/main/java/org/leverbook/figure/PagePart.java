package org.leverbook.figure;

import java.util.List;
import java.util.stream.Stream;

/**
 * A part of a page of pictures. It is laid out in three steps: how narrow it may be, its place in
 * the page's width, and, when the scales are known, its ink.
 */
abstract class PagePart {

  /** Free between a heading and what it heads, page units. */
  static final double AIR = 6;

  private static final int LONGEST_IN_NOTES = 40;

  /** Of less width its letters would be too small to read on a phone. */
  abstract double least();

  /** Takes its width; comes before all that follows. */
  abstract void place(double width);

  /** All drawn positions in it. */
  abstract Stream<PositionPart> positions();

  /** The height that it would like. */
  abstract double height(PageKey key);

  /** Draws it into a place that is as high as it likes, or higher. */
  abstract void draw(List<Ink> page, double left, double top, double height, PageKey key);

  /** Sentences for the foot of the page. */
  abstract List<String> notes();

  /** What it is called, for the notes; empty where nobody gave it a name. */
  abstract String called();

  /** The name for the notes, which a very long one would fill. */
  final String shortly() {
    String name = called();
    return name.codePointCount(0, name.length()) <= LONGEST_IN_NOTES
        ? name
        : name.substring(0, name.offsetByCodePoints(0, LONGEST_IN_NOTES)).strip() + "…";
  }

  /** What it shows, for readers who listen. */
  abstract String told();
}
