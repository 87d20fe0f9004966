package org.leverbook.language;

import java.util.Map;
import org.leverbook.marks.Landmarks;
import org.leverbook.marks.Photo;
import org.leverbook.quantity.Refused;

/** The words for what a camera saw: a theme of {@link Vocabulary}, which sessions import. */
public abstract sealed class MarkWords extends MovementWords permits LegLiftWords {

  MarkWords() {}

  /**
   * A still photo of a lifter from the side, as in {@code photo("still.png").scale(412, 655, 412,
   * 430, cm(45)).mark("hip", 380, 420)}.
   *
   * @param file PNG, JPEG, GIF or BMP
   * @return the photo; with scale and marks, {@code .fit(lifter)} gives the pose
   * @throws Refused if there is no such file, or it is broken
   */
  public static Photo photo(String file) {
    return Photo.of(file);
  }

  /**
   * Landmarks over time from a table with the columns time, landmark, x, y and, for places in
   * space, z, as in {@code landmarks("pull.csv").fit(lifter).movement()}.
   *
   * @param file a CSV file, units in its headings
   * @return the landmarks
   * @throws Refused if there is no such file, or a row is broken
   */
  public static Landmarks landmarks(String file) {
    return Landmarks.of(file, Map.of());
  }

  /**
   * The same from a table whose columns are called otherwise, as in {@code landmarks("pull.csv",
   * Map.of("time", "t (s)", "landmark", "point"))}.
   *
   * @param file a CSV file
   * @param columns from our names to the file's headings
   * @return the landmarks
   * @throws Refused if there is no such file or column, or a row is broken
   */
  public static Landmarks landmarks(String file, Map<String, String> columns) {
    return Landmarks.of(file, columns);
  }
}
