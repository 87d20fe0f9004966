package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadataNode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.display.MovingPicture;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Picture;
import org.leverbook.language.Vocabulary;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Tempo;
import org.leverbook.study.Sweep;
import org.w3c.dom.Element;

/** A way as an animated GIF, and its frames. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MovingPictureTest {

  /** Page numbers have three decimals; an arm read back from two points is good to this. */
  private static final double PAGE_ROUNDING = 0.002;

  private static final Person MAN = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));

  private Sweep squat;
  private MovingPicture moving;
  private byte[] gif;

  @BeforeAll
  void drawOnce() {
    squat = Sweep.through(BackSquat.of(MAN).holding(Barbell.of(Units.kg(100))), 41);
    moving = squat.animation(JointId.HIP, JointId.KNEE, JointId.L5_S1);
    gif = moving.gifFile();
  }

  @Test
  void the_gif_has_all_frames_stands_at_its_ends_and_starts_anew() throws IOException {
    Gif read = Gif.of(gif);
    assertThat(read.images).hasSize(41);
    assertThat(read.loops).as("0 is for ever").containsExactly(1, 0, 0);
    assertThat(read.delays.get(0)).isEqualTo(80);
    assertThat(read.delays.get(40)).isEqualTo(80);
    // 3.2 s in 40 steps of 8 hundredths.
    assertThat(read.delays.subList(1, 40)).containsOnly(8);
    assertThat(read.comment).contains("Back squat: barbell 100.0 kg", "in 41 frames", "N?m");
  }

  @Test
  void the_gif_of_41_frames_is_smaller_than_two_megabytes_and_the_page_than_one_and_a_half() {
    byte[] page = moving.htmlPage().getBytes(java.nio.charset.StandardCharsets.UTF_8);
    assertThat(page.length).isBetween(50_000, 1_500_000);
    assertThat(gif.length).isBetween(50_000, 2_000_000);
    assertThat(moving.thereAndBack().gifFile().length).isLessThan(2_000_000);
  }

  @Test
  void each_frame_of_the_gif_shows_what_was_drawn() throws IOException {
    Gif read = Gif.of(gif);
    MotionPage page =
        MotionPage.of(
            squat, List.of(JointId.HIP, JointId.KNEE, JointId.L5_S1), FigureStyle.ARTICLE);
    for (int i : new int[] {0, 20, 40}) {
      BufferedImage shown = read.shown(i);
      double fineness = shown.getWidth() / MotionPage.WIDTH;
      BufferedImage drawn = RasterPainter.image(page.drawing(i), FigureStyle.ARTICLE, fineness);
      assertThat(shown.getHeight()).isEqualTo(drawn.getHeight());
      int worst = 0;
      for (int y = 0; y < drawn.getHeight(); y++) {
        for (int x = 0; x < drawn.getWidth(); x++) {
          for (int part : new int[] {0, 8, 16}) {
            int one = drawn.getRGB(x, y) >> part & 255;
            worst = Math.max(worst, Math.abs(one - (shown.getRGB(x, y) >> part & 255)));
          }
        }
      }
      // Mixtures along edges differ by what 255 colours cannot tell.
      assertThat(worst).as("largest difference in red, green or blue of 255").isLessThan(40);
    }
  }

  @Test
  void the_camera_stands_still_and_every_arm_has_its_length_in_every_frame() {
    List<JointId> joints = List.of(JointId.HIP, JointId.KNEE, JointId.L5_S1);
    List<SvgReader> frames =
        moving.frames().stream().map(f -> SvgReader.of(f.svgDocument())).toList();
    double scale = frames.get(0).attribute("data-scale");
    for (int i = 0; i < frames.size(); i++) {
      SvgReader svg = frames.get(i);
      assertThat(svg.attribute("data-scale")).isEqualTo(scale);
      for (String size : List.of("viewBox", "width", "height")) {
        assertThat(svg.root().getAttribute(size))
            .isEqualTo(frames.get(0).root().getAttribute(size));
      }
      assertThat(svg.words()).contains("about the knee's own axis");
      assertThat(svg.words()).contains(Caution.TEXT.substring(0, 30));
      List<Element> arms = svg.groups("arm");
      assertThat(arms).hasSize(3);
      Scene scene = Scene.of(squat.position(i), joints);
      for (int a = 0; a < arms.size(); a++) {
        Element arm = arms.get(a);
        String line = SvgReader.children(arm, "path").get(0).getAttribute("d");
        double[] ends = SvgReader.numbers(line);
        double drawn = Math.hypot(ends[2] - ends[0], ends[3] - ends[1]) / scale;
        DrawnArm seen = scene.arms().get(a);
        assertThat(arm.getAttribute("data-joint")).isEqualTo(seen.id().word());
        assertThat(drawn).isCloseTo(seen.length(), within(PAGE_ROUNDING / scale));
      }
    }
  }

  @Test
  void the_marker_stands_at_the_frames_value_on_the_curves_of_the_sweep() {
    MotionPage page = MotionPage.of(squat, List.of(JointId.HIP, JointId.KNEE), FigureStyle.ARTICLE);
    double left = page.plot().x(0);
    double right = page.plot().x(40);
    for (int i = 0; i < 41; i++) {
      assertThat(page.plot().x(i)).isCloseTo(left + i / 40.0 * (right - left), within(1e-9));
    }
    // Heights are a straight line of the moment: two of them tell the third.
    double y0 = page.plot().y(0, JointId.HIP);
    double y40 = page.plot().y(40, JointId.HIP);
    double m0 = squat.rows().get(0).moment(JointId.HIP);
    double m40 = squat.rows().get(40).moment(JointId.HIP);
    for (int i = 0; i < 41; i++) {
      double m = squat.rows().get(i).moment(JointId.KNEE);
      assertThat(page.plot().y(i, JointId.KNEE))
          .isCloseTo(y0 + (m - m0) / (m40 - m0) * (y40 - y0), within(1e-6));
    }
    assertThat(y40).as("more is higher").isLessThan(y0);
  }

  @Test
  void a_movement_is_shown_at_its_own_tempo_and_can_be_slowed() throws IOException {
    Hinge pull = Hinge.of(MAN).holding(Barbell.of(Units.kg(60)));
    Movement rise =
        Movement.of(
            "rise",
            Tempo.smooth(Units.seconds(1.5)),
            s -> pull.hipHeight(Units.cm(62 + 6 * s)).start());
    MovingPicture own = Vocabulary.animation(rise, 7, JointId.HIP);
    assertThat(own.text()).contains("Rise: barbell 60.0 kg, 7 frames in 1.5 s");
    assertThat(Gif.of(own.gifFile()).delays.subList(1, 6)).containsOnly(25);
    assertThat(Gif.of(own.lasting(Units.seconds(3)).gifFile()).delays.subList(1, 6))
        .containsOnly(50);
    List<Integer> back = Gif.of(own.thereAndBack().gifFile()).delays;
    assertThat(back).hasSize(12);
    assertThatThrownBy(() -> own.lasting(Units.seconds(0.05)))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "7 frames cannot last 0.05 s: viewers show a frame for 0.02 s at least, and nobody looks"
                + " at one for more than 10 s. Take 0.12 to 60 s.");
    assertThatThrownBy(() -> own.lasting(null)).isInstanceOf(Refused.class);
  }

  @Test
  void rounding_of_frame_times_does_not_add_up() throws IOException {
    MovingPicture seven = Vocabulary.animation(BackSquat.of(MAN), 8, JointId.HIP);
    List<Integer> delays = Gif.of(seven.lasting(Units.seconds(1)).gifFile()).delays;
    int between = delays.subList(1, 7).stream().mapToInt(d -> d).sum();
    assertThat(between).as("6 steps of 1/7 s, hundredths").isBetween(85, 86);
  }

  @Test
  void where_nothing_can_be_held_the_frame_says_why_and_the_first_picture_is_one_that_holds() {
    Hinge pull = Hinge.of(MAN).holding(Barbell.of(Units.kg(140)));
    MovingPicture gaps =
        Sweep.over("hip height", Units.cm(44), Units.cm(60), 5, h -> pull.hipHeight(h).start())
            .animation();
    List<String> frames = gaps.frames().stream().map(Picture::svgDocument).toList();
    assertThat(frames).hasSize(5);
    assertThat(SvgReader.of(frames.get(0)).words().replaceAll("\\s+", " "))
        .contains("No position here: A hip height of 44.0 cm would put the hips below");
    assertThat(SvgReader.of(frames.get(0)).groups("arm")).isEmpty();
    assertThat(gaps.svgDocument()).isEqualTo(frames.get(2));
  }

  @Test
  void what_cannot_move_is_refused_in_a_sentence() {
    Hinge pull = Hinge.of(MAN).holding(Barbell.of(Units.kg(140)));
    Sweep none =
        Sweep.over("hip height", Units.cm(20), Units.cm(30), 3, h -> pull.hipHeight(h).start());
    assertThatThrownBy(none::animation)
        .isInstanceOf(Refused.class)
        .hasMessageContaining("none of the 3 positions could be held");
    Sweep one = Sweep.over("lifter", List.of(MAN), l -> BackSquat.of(l).finish());
    assertThatThrownBy(one::animation)
        .isInstanceOf(Refused.class)
        .hasMessage("A moving picture has 2 to 400 frames, but here are 1 positions.");
    assertThatThrownBy(() -> Vocabulary.animation(BackSquat.of(MAN), 1))
        .isInstanceOf(Refused.class);
  }

  @Test
  void it_is_saved_by_its_ending(@TempDir Path folder) throws IOException {
    OutputFolder.choose(folder);
    try {
      MovingPicture few = Vocabulary.animation(BackSquat.of(MAN), 3, JointId.HIP);
      assertThat(few.save("a").files()).hasSize(2);
      assertThat(Files.readAllBytes(folder.resolve("a.gif"))).startsWith('G', 'I', 'F', '8', '9');
      assertThat(Files.readString(folder.resolve("a.html"))).startsWith("<!DOCTYPE html>");
      few.save("b.svg");
      assertThat(folder.resolve("b.svg")).hasContent(few.frames().get(0).svgDocument());
      assertThatThrownBy(() -> few.save("a.mp4"))
          .isInstanceOf(Refused.class)
          .hasMessage(
              "A moving picture is saved as .gif or .html, not as \"a.mp4\"; a name without an"
                  + " ending saves both, and .svg or .png its first frame.");
    } finally {
      OutputFolder.choose(Path.of(""));
    }
  }

  /** A GIF as a viewer reads it. */
  private record Gif(
      List<BufferedImage> images,
      List<int[]> corners,
      List<Integer> delays,
      byte[] loops,
      String comment) {

    static Gif of(byte[] file) throws IOException {
      ImageReader reader = ImageIO.getImageReadersByFormatName("gif").next();
      reader.setInput(ImageIO.createImageInputStream(new ByteArrayInputStream(file)));
      List<BufferedImage> images = new ArrayList<>();
      List<int[]> corners = new ArrayList<>();
      List<Integer> delays = new ArrayList<>();
      byte[] loops = new byte[0];
      String comment = "";
      for (int i = 0; i < reader.getNumImages(true); i++) {
        images.add(reader.read(i));
        IIOMetadataNode root =
            (IIOMetadataNode) reader.getImageMetadata(i).getAsTree("javax_imageio_gif_image_1.0");
        IIOMetadataNode place = one(root, "ImageDescriptor");
        corners.add(
            new int[] {
              Integer.parseInt(place.getAttribute("imageLeftPosition")),
              Integer.parseInt(place.getAttribute("imageTopPosition"))
            });
        IIOMetadataNode control = one(root, "GraphicControlExtension");
        assertThat(control.getAttribute("disposalMethod")).isEqualTo("doNotDispose");
        delays.add(Integer.parseInt(control.getAttribute("delayTime")));
        if (i == 0) {
          loops = (byte[]) one(root, "ApplicationExtension").getUserObject();
          comment = one(root, "CommentExtension").getAttribute("value");
        }
      }
      return new Gif(images, corners, delays, loops, comment);
    }

    private static IIOMetadataNode one(IIOMetadataNode root, String name) {
      return (IIOMetadataNode) root.getElementsByTagName(name).item(0);
    }

    /** What is to be seen at a frame, all frames before it painted below. */
    BufferedImage shown(int frame) {
      BufferedImage first = images.get(0);
      BufferedImage shown =
          new BufferedImage(first.getWidth(), first.getHeight(), BufferedImage.TYPE_INT_ARGB);
      Graphics2D page = shown.createGraphics();
      IntStream.rangeClosed(0, frame)
          .forEach(i -> page.drawImage(images.get(i), corners.get(i)[0], corners.get(i)[1], null));
      page.dispose();
      return shown;
    }
  }
}
