package org.leverbook.display;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.leverbook.quantity.Refused;

/**
 * A picture that moves: frames of one size and one scale, shown in turn.
 *
 * <p>As a plain picture it is its first frame.
 */
public interface MovingPicture extends Picture {

  /**
   * Its frames, each a picture of its own.
   *
   * @return in the order in which they are shown, there and not back
   */
  List<Picture> frames();

  @Override
  default byte[] pngFile(int pixels) {
    return frames().get(0).pngFile(pixels);
  }

  @Override
  default byte[] pdfFile() {
    return frames().get(0).pdfFile();
  }

  /**
   * All frames as one animated GIF that starts anew at its end.
   *
   * @return the bytes of the file
   */
  byte[] gifFile();

  /**
   * All frames as one page that needs no network and no other file: a slider, the picture, the plot
   * with a marker, the numbers, and a table of all of them.
   *
   * @return an HTML document
   */
  String htmlPage();

  /**
   * The same frames shown slower or faster.
   *
   * @param duration of one run from the first frame to the last, without the rests at its ends
   * @return the changed picture
   * @throws Refused if the duration is missing, or leaves a frame less than a fiftieth of a second,
   *     which viewers do not show, or more than ten seconds
   */
  MovingPicture lasting(Quantity<Time> duration);

  /**
   * The same frames, run through to the last and back to the first.
   *
   * @return the changed picture
   */
  MovingPicture thereAndBack();

  /**
   * Saves the moving picture, or its first frame.
   *
   * @param name {@code "squat.gif"}, {@code "squat.html"}, or {@code "squat"} for both; another
   *     picture's ending saves the first frame
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  @Override
  default Saved save(String name) {
    if (name.endsWith(".gif")) {
      return new Saved(List.of(OutputFolder.write(name, gifFile())));
    }
    if (name.endsWith(".html")) {
      return new Saved(List.of(OutputFolder.write(name, htmlPage())));
    }
    if (name.endsWith(".svg") || name.endsWith(".png") || name.endsWith(".pdf")) {
      return Picture.super.save(name);
    }
    if (name.matches(".*\\.[A-Za-z0-9]{1,4}")) {
      throw new Refused(
          "A moving picture is saved as .gif or .html, not as \""
              + name
              + "\"; a name without an ending saves both, and .svg or .png its first frame.");
    }
    List<java.nio.file.Path> files = new ArrayList<>();
    files.add(OutputFolder.write(name + ".gif", gifFile()));
    files.add(OutputFolder.write(name + ".html", htmlPage()));
    return new Saved(files);
  }
}
