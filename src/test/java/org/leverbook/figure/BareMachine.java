package org.leverbook.figure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Draws on a machine that is told to have no fonts. */
final class BareMachine {

  private BareMachine() {}

  public static void main(String[] folder) throws IOException {
    Path into = Path.of(folder[0]);
    Files.write(into.resolve("position.png"), PictureFilesTest.position().pngFile());
    Files.write(into.resolve("plot.png"), PictureFilesTest.plot().pngFile());
    Files.writeString(into.resolve("plot.svg"), PictureFilesTest.plot().svgDocument());
    Files.write(into.resolve("plot.pdf"), PictureFilesTest.plot().pdfFile());
  }
}
