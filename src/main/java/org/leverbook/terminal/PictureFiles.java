package org.leverbook.terminal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Saved;
import org.leverbook.display.Shown;

/** Writes pictures that a terminal cannot show into the output folder, under the next free name. */
final class PictureFiles {

  private int last;

  /**
   * Saves a picture.
   *
   * @param shown any value
   * @return what was written; empty where the value is no picture
   * @throws org.leverbook.quantity.Refused if the disk says no
   */
  Optional<Saved> save(Shown shown) {
    Optional<String> svg = shown.svg();
    Optional<byte[]> png = shown.png();
    if (svg.isEmpty() && png.isEmpty()) {
      return Optional.empty();
    }
    String name = nextName();
    List<Path> files = new ArrayList<>();
    svg.ifPresent(document -> files.add(OutputFolder.write(name + ".svg", document)));
    png.ifPresent(bytes -> files.add(OutputFolder.write(name + ".png", bytes)));
    return Optional.of(new Saved(files));
  }

  private String nextName() {
    String name;
    do {
      last++;
      name = "picture-" + last;
    } while (Files.exists(OutputFolder.resolve(name + ".svg"))
        || Files.exists(OutputFolder.resolve(name + ".png")));
    return name;
  }
}
