package org.leverbook.launch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LauncherTest {

  @ParameterizedTest
  @ValueSource(strings = {"1.8", "9", "11", "16"})
  void a_java_below_17_is_told_so_in_words(String version) {
    assertThat(Launcher.complaint(version, true))
        .startsWith("Leverbook needs a JDK 17 or newer; this is Java " + version + " (")
        .endsWith("Install a JDK 17 and run the same command with its java.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"17", "21", "25", "30"})
  void a_jdk_of_17_or_more_is_fine(String version) {
    assertThat(Launcher.complaint(version, true)).isNull();
  }

  @Test
  void a_java_without_compiler_is_told_which_package_brings_one() {
    assertThat(Launcher.complaint("17", false)).contains("full JDK").contains("openjdk-17");
  }

  @Test
  void even_java_8_can_load_the_class_that_complains() throws IOException {
    try (InputStream file = Launcher.class.getResourceAsStream("Launcher.class");
        DataInputStream code = new DataInputStream(file)) {
      assertThat(code.readInt()).isEqualTo(0xCAFEBABE);
      code.readUnsignedShort();
      // Class file version 52 is Java 8.
      assertThat(code.readUnsignedShort()).isEqualTo(52);
    }
  }
}
