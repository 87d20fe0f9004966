package org.leverbook.notebook;

import org.leverbook.display.MovingPicture;

/** A moving picture's page inside another page. */
final class Framed {

  private Framed() {}

  /** The page in a frame, which keeps its script apart from the page around it; told below. */
  static String page(MovingPicture moving) {
    String told = Escaped.html(moving.description());
    return "<figure class=\"moving\"><iframe sandbox=\"allow-scripts\" title=\"moving picture\""
        + " style=\"width:100%;height:44em;border:0\" srcdoc=\""
        + Escaped.html(moving.htmlPage())
        + "\"></iframe><figcaption>"
        + told
        + "</figcaption></figure>";
  }
}
