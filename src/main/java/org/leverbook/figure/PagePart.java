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

  final String name;
  final FigureStyle style;

  /** As it was placed. */
  double width;

  /**
   * A part.
   *
   * @param name above it; empty for none
   * @param style colours and sizes
   * @param width until it is placed
   */
  PagePart(String name, FigureStyle style, double width) {
    this.name = name;
    this.style = style;
    this.width = width;
  }

  /** Of less width its letters would be too small to read on a phone. */
  abstract double least();

  /** Takes its width; comes before all that follows. */
  void place(double given) {
    width = given;
  }

  /** All drawn positions in it. */
  Stream<PositionPart> positions() {
    return Stream.empty();
  }

  /** The height that it would like. */
  abstract double height(PageKey key);

  /** Draws it into a place that is as high as it likes, or higher. */
  abstract void draw(List<Ink> page, double left, double top, double height, PageKey key);

  /** Sentences for the foot of the page. */
  List<String> notes() {
    return List.of();
  }

  /** What it is called, for the notes; empty where nobody gave it a name. */
  String called() {
    return name;
  }

  /** The name for the notes, which a very long one would fill. */
  final String shortly() {
    String name = called();
    return name.codePointCount(0, name.length()) <= LONGEST_IN_NOTES
        ? name
        : name.substring(0, name.offsetByCodePoints(0, LONGEST_IN_NOTES)).strip() + "…";
  }

  /** What it shows, for readers who listen. */
  abstract String told();

  /** A text after the part's name, where it has one. */
  final String named(String text) {
    return name.isEmpty() ? text : name + ". " + text;
  }
}
