package org.leverbook.notebook;

import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The pictures that a text names: attachments of its cell, and files beside the notebook. Files
 * outside the notebook's folder are none of a page's business.
 *
 * @param folder the notebook's folder
 * @param attachments files that travel in the cell, by name
 */
record PictureSource(Path folder, Map<String, MimeBundle> attachments) {

  private static final Map<String, String> TYPES =
      Map.of(
          "png",
          MimeBundle.PNG,
          "jpg",
          "image/jpeg",
          "jpeg",
          "image/jpeg",
          "gif",
          MimeBundle.GIF,
          "webp",
          "image/webp",
          "svg",
          MimeBundle.SVG);

  private static final long LARGEST = 20_000_000;
  private static final String ATTACHED = "attachment:";

  /** A picture's type and bytes. */
  record Found(String type, byte[] bytes) {
    String dataUri() {
      return "data:" + type + ";base64," + Base64.getEncoder().encodeToString(bytes);
    }
  }

  /** The picture of this address; empty where there is none here. */
  Optional<Found> find(String address) {
    return address.startsWith(ATTACHED)
        ? attached(decoded(address.substring(ATTACHED.length())))
        : beside(address);
  }

  private Optional<Found> attached(String name) {
    return Optional.ofNullable(attachments.get(name))
        .flatMap(bundle -> bundle.data().entrySet().stream().findFirst())
        .flatMap(form -> decoded(form.getKey(), form.getValue()));
  }

  /** The bytes of one form of a value. */
  static Optional<Found> decoded(String type, String content) {
    if (type.equals(MimeBundle.SVG)) {
      return Optional.of(new Found(type, content.getBytes(StandardCharsets.UTF_8)));
    }
    try {
      return Optional.of(new Found(type, Base64.getMimeDecoder().decode(content)));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** The file of this address inside the folder, relative to it. */
  Optional<Path> file(String address) {
    try {
      Path inside = Path.of(decoded(address)).normalize();
      Path file = folder.resolve(inside);
      boolean reachable =
          !inside.isAbsolute()
              && !inside.startsWith("..")
              && Files.isRegularFile(file)
              && file.toRealPath().startsWith(folder.toRealPath())
              && Files.size(file) <= LARGEST
              && TYPES.containsKey(ending(inside));
      return reachable ? Optional.of(inside) : Optional.empty();
    } catch (InvalidPathException | IOException e) {
      return Optional.empty();
    }
  }

  private Optional<Found> beside(String address) {
    return file(address)
        .flatMap(
            inside -> {
              try {
                byte[] bytes = Files.readAllBytes(folder.resolve(inside));
                return Optional.of(new Found(TYPES.get(ending(inside)), bytes));
              } catch (IOException e) {
                return Optional.empty();
              }
            });
  }

  private static String ending(Path file) {
    return file.toString().replaceFirst(".*\\.", "").toLowerCase(Locale.ROOT);
  }

  private static String decoded(String address) {
    try {
      return URLDecoder.decode(address.replace("+", "%2B"), StandardCharsets.UTF_8);
    } catch (IllegalArgumentException e) {
      return address;
    }
  }
}
