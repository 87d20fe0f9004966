package org.leverbook.display;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.leverbook.quantity.Refused;

/** A value that is a picture: an SVG document and the same picture as PNG. */
public interface Picture extends Shown {

  /**
   * The picture as one SVG document.
   *
   * @return the document
   */
  String svgDocument();

  /**
   * The picture as one PNG file, at twice the nominal size.
   *
   * @return the bytes of the file
   */
  byte[] pngFile();

  /**
   * The same picture in another look, as in {@code picture.styled(slide())}.
   *
   * @param look colours, lines, letters and language
   * @return the picture drawn anew; this one stays as it is
   * @throws Refused if this picture holds its colours fast
   */
  default Picture styled(Look look) {
    throw new Refused(
        "This picture cannot be drawn in another look: it holds its colours fast. Say"
            + " style(slide()) first, then make it anew.");
  }

  @Override
  default Optional<String> svg() {
    return Optional.of(svgDocument());
  }

  @Override
  default Optional<byte[]> png() {
    return Optional.of(pngFile());
  }

  /**
   * Saves the picture.
   *
   * @param name {@code "start.svg"}, {@code "start.png"}, or {@code "start"} for both
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  default Saved save(String name) {
    List<java.nio.file.Path> files = new ArrayList<>();
    if (name.endsWith(".svg")) {
      files.add(OutputFolder.write(name, svgDocument()));
    } else if (name.endsWith(".png")) {
      files.add(OutputFolder.write(name, pngFile()));
    } else if (name.matches(".*\\.[A-Za-z]{1,4}")) {
      throw new Refused(
          "A picture is saved as .svg or .png, not as \""
              + name
              + "\"; a name without an ending saves both.");
    } else {
      files.add(OutputFolder.write(name + ".svg", svgDocument()));
      files.add(OutputFolder.write(name + ".png", pngFile()));
    }
    return new Saved(files);
  }
}
