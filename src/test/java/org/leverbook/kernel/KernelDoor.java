package org.leverbook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.leverbook.kernel.Client.Heard;
import org.leverbook.kernel.Client.Ran;

/** The kernel as a door: cells go in over its sockets, the plain texts of their values come out. */
public final class KernelDoor {

  private static final Set<String> VALUES = Set.of("execute_result", "display_data");

  private KernelDoor() {}

  /**
   * What a notebook is told.
   *
   * @param cells each run when the one before has been answered
   * @param folder where the kernel keeps its history
   */
  public static List<String> values(List<String> cells, Path folder) {
    List<String> values = new ArrayList<>();
    try (Open open = new Open(folder)) {
      for (String cell : cells) {
        Ran ran = open.client().run(cell);
        assertThat(ran.status()).as(cell + "\n" + ran.reply()).isEqualTo("ok");
        for (Heard told : ran.told()) {
          if (VALUES.contains(told.type()) && !isProgress(told)) {
            values.add(told.content().path("data").path("text/plain").asText());
          }
        }
      }
    }
    return values;
  }

  /** A bar that something else takes the place of. */
  private static boolean isProgress(Heard told) {
    return !told.content().path("transient").path("display_id").asText().isEmpty();
  }
}
