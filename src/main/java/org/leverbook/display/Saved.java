package org.leverbook.display;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What a {@code save} did.
 *
 * @param files the files written, in order
 */
public record Saved(List<Path> files) implements Shown {

  /** Keeps its own copy of the list. */
  public Saved {
    files = List.copyOf(files);
  }

  @Override
  public String text() {
    return "saved " + files.stream().map(Path::toString).collect(Collectors.joining(", "));
  }

  @Override
  public String toString() {
    return text();
  }
}
