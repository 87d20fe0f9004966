package org.leverbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.leverbook.display.Display;
import org.leverbook.display.MovingPicture;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;
import org.leverbook.language.Vocabulary;
import org.leverbook.lift.Hinge;
import org.leverbook.quantity.Refused;

/** The forms of a value in a notebook. */
class MimeBundleTest {

  private static Hinge pull() {
    var lifter = Vocabulary.person(Vocabulary.MALE, Vocabulary.kg(85), Vocabulary.cm(178));
    return Vocabulary.hinge(lifter).holding(Vocabulary.barbell(Vocabulary.kg(140)));
  }

  private static byte[] bytes(MimeBundle bundle, String type) {
    return Base64.getDecoder().decode(bundle.data().get(type));
  }

  @Test
  void a_plain_value_is_text_alone() {
    assertThat(MimeBundle.of(Display.of(3)).data()).containsOnlyKeys("text/plain");
    assertThat(MimeBundle.of(Display.of(null)).text()).isEqualTo("null");
  }

  @Test
  void a_table_is_text_and_html() {
    Sheet sheet =
        new Sheet("T", List.of(Sheet.Column.text("a")), List.of(List.of("<b>")), List.of());

    MimeBundle bundle = MimeBundle.of(sheet);

    assertThat(bundle.data()).containsOnlyKeys("text/plain", "text/html");
    assertThat(bundle.data().get("text/html")).contains("<td>&lt;b&gt;</td>");
  }

  @Test
  void a_picture_is_text_svg_and_png() {
    MimeBundle bundle = MimeBundle.of(pull().start().picture());

    assertThat(bundle.data()).containsOnlyKeys("text/plain", "image/svg+xml", "image/png");
    assertThat(bundle.data().get("image/svg+xml")).startsWith("<svg ").contains("</svg>");
    assertThat(bytes(bundle, "image/png")).startsWith(0x89, 'P', 'N', 'G');
  }

  @Test
  void a_moving_picture_is_its_page_in_a_closed_frame_and_a_gif_where_asked() {
    MovingPicture moving = Vocabulary.animation(pull(), 3);

    MimeBundle bundle = MimeBundle.withGif(moving);

    assertThat(bundle.data().get("text/html"))
        .startsWith("<figure class=\"moving\"><iframe sandbox=\"allow-scripts\"")
        .contains("<figcaption>Hinge: barbell 140.0 kg, 3 frames in ");
    assertThat(bytes(bundle, "image/gif")).startsWith('G', 'I', 'F');
    assertThat(bytes(bundle, "image/png")).startsWith(0x89, 'P', 'N', 'G');
    assertThat(MimeBundle.of(moving).data()).doesNotContainKey("image/gif");
  }

  @Test
  void a_value_refused_when_it_is_shown_is_refused_with_its_sentence() {
    Shown lazy =
        () -> {
          throw new Refused("Not with this bar.");
        };

    assertThatThrownBy(() -> MimeBundle.of(lazy))
        .isInstanceOf(Refused.class)
        .hasMessage("Not with this bar.");
  }

  @Test
  void a_value_that_breaks_while_it_is_drawn_still_shows_its_text() {
    Shown broken =
        new Shown() {
          @Override
          public String text() {
            return "the text";
          }

          @Override
          public Optional<String> html() {
            throw new IllegalStateException("broken");
          }
        };

    assertThat(MimeBundle.of(broken).data()).containsOnlyKeys("text/plain");
  }
}
