package org.leverbook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.leverbook.display.OwnFolder;

class SmallPartsTest {

  @Test
  void places_count_letters_and_stay_inside_the_text() {
    String text = "a\uD83D\uDE00b";

    assertThat(CodePoints.place(text, new IntNode(2))).isEqualTo(3);
    assertThat(CodePoints.place(text, new IntNode(-5))).isZero();
    assertThat(CodePoints.place(text, new DoubleNode(1e99))).isEqualTo(4);
    assertThat(CodePoints.place(text, new DoubleNode(1.9))).isEqualTo(1);
    assertThat(CodePoints.place(text, MissingNode.getInstance())).isEqualTo(4);
    assertThat(CodePoints.count(text, 3)).isEqualTo(2);
    assertThat(CodePoints.count(text, 99)).isEqualTo(3);
  }

  @Test
  void a_letter_is_not_cut_in_the_middle_of_its_bytes() {
    byte[] bytes = "aü€\uD83D\uDE00".getBytes(StandardCharsets.UTF_8);
    List<Integer> whole = List.of(0, 1, 1, 3, 3, 3, 6, 6, 6, 6, 10);

    for (int length = 0; length <= bytes.length; length++) {
      assertThat(Printed.wholeLetters(Arrays.copyOf(bytes, length)))
          .as("of " + length + " bytes")
          .isEqualTo(whole.get(length));
    }
    byte[] noText = {(byte) 0x80, (byte) 0x80, (byte) 0x80, (byte) 0x80, (byte) 0x80};
    assertThat(Printed.wholeLetters(noText)).isEqualTo(5);
  }

  @Test
  void a_flood_of_bad_messages_fills_no_log() {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    Log log = new Log(new PrintStream(said, true));

    for (int i = 0; i < 1000; i++) {
      log.say("bad " + i);
    }

    assertThat(said.toString().lines()).hasSize(101);
    assertThat(said.toString())
        .startsWith("leverbook kernel: bad 0")
        .contains("More of this is left out for a minute.");
  }

  @Test
  void signatures_are_those_of_the_standard_and_repeats_are_known() {
    // RFC 4231, test case 2.
    Seal seal = new Seal("Jefe".getBytes(StandardCharsets.US_ASCII));
    List<byte[]> frames =
        List.of(
            "what do ya want ".getBytes(StandardCharsets.US_ASCII),
            "for nothing?".getBytes(StandardCharsets.US_ASCII));
    byte[] expected =
        "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843"
            .getBytes(StandardCharsets.US_ASCII);

    assertThat(seal.of(frames).getBytes(StandardCharsets.US_ASCII)).isEqualTo(expected);
    assertThat(seal.fits(expected, frames)).isTrue();
    assertThat(seal.fits(new byte[64], frames)).isFalse();
    assertThat(seal.isNew(expected)).isTrue();
    assertThat(seal.isNew(expected)).isFalse();
    assertThat(new Seal(new byte[0]).of(frames)).isEmpty();
  }

  @Test
  void the_history_lies_beside_the_shells() {
    Properties linux = new Properties();
    linux.setProperty("os.name", "Linux");
    linux.setProperty("user.home", "/home/coach");

    assertThat(OwnFolder.STATE.of(Map.of(), linux))
        .isEqualTo(Path.of("/home/coach/.local/state/leverbook"));
    assertThat(OwnFolder.STATE.of(Map.of("XDG_STATE_HOME", "/state"), linux))
        .isEqualTo(Path.of("/state/leverbook"));
    linux.setProperty("leverbook.home", "/chosen");
    assertThat(OwnFolder.STATE.of(Map.of(), linux)).isEqualTo(Path.of("/chosen"));
  }
}
