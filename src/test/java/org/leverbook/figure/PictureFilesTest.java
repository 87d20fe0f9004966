package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.display.Picture;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.study.Comparison;
import org.leverbook.study.Grid;
import org.leverbook.study.Span;
import org.leverbook.study.Sweep;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class PictureFilesTest {

  /** PNG and PDF are filled by two painters, whose edges may differ by half a pixel's grey. */
  private static final int ANOTHER_GREY = 100;

  /** Of all pixels; letters are all edges, and a page has some 2,000 of them. */
  private static final double FEW = 0.01;

  private static Hinge pull() {
    return Hinge.of(Person.of(Sex.MALE, Units.kg(85), Units.cm(178)))
        .holding(Barbell.of(Units.kg(140)))
        .hipHeight(Units.cm(58));
  }

  static Picture position() {
    return pull().start().picture();
  }

  static Picture plot() {
    return Sweep.over("hip height", Units.cm(48), Units.cm(72), 7, h -> pull().hipHeight(h).start())
        .plot(JointId.HIP, JointId.KNEE);
  }

  static Picture map() {
    return Grid.over(
            Span.of("hip height", Units.cm(54), Units.cm(70), 3),
            Span.of("bar", Units.kg(60), Units.kg(140), 3),
            (h, m) -> pull().holding(Barbell.of(m)).hipHeight(h).start())
        .plot(JointId.HIP);
  }

  private static Picture sideBySide() {
    return Comparison.of(pull().start(), pull().hipHeight(Units.cm(66)).start())
        .called("low hips", "high hips")
        .picture();
  }

  private static Map<String, Picture> pictures() {
    Map<String, Picture> all = new TreeMap<>();
    all.put("position", position());
    all.put("plot", plot());
    all.put("map", map());
    all.put("side by side", sideBySide());
    return all;
  }

  @Test
  void a_pdf_shows_what_the_png_shows() throws IOException {
    for (var entry : pictures().entrySet()) {
      BufferedImage png = ImageIO.read(new ByteArrayInputStream(entry.getValue().pngFile()));
      try (PDDocument pdf = Loader.loadPDF(entry.getValue().pdfFile())) {
        assertThat(pdf.getNumberOfPages()).isEqualTo(1);
        // A page unit is 0.75 points and 2 pixels, so 192 dots per inch are the PNG's.
        BufferedImage page = new PDFRenderer(pdf).renderImageWithDPI(0, 192);
        assertThat(page.getWidth()).as(entry.getKey()).isEqualTo(png.getWidth());
        assertThat(page.getHeight()).isCloseTo(png.getHeight(), within(1));
        assertThat(different(png, page)).as(entry.getKey()).isLessThan(FEW);
      }
    }
  }

  private static double different(BufferedImage one, BufferedImage other) {
    int different = 0;
    int height = Math.min(one.getHeight(), other.getHeight());
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < one.getWidth(); x++) {
        if (Math.abs(grey(one.getRGB(x, y)) - grey(other.getRGB(x, y))) > ANOTHER_GREY) {
          different++;
        }
      }
    }
    return (double) different / one.getWidth() / height;
  }

  private static int grey(int rgb) {
    return ((rgb >> 16 & 0xff) + (rgb >> 8 & 0xff) + (rgb & 0xff)) / 3;
  }

  @Test
  void a_pdf_holds_real_text_its_letters_and_a_description_for_those_who_listen()
      throws IOException {
    try (PDDocument pdf = Loader.loadPDF(position().pdfFile())) {
      assertThat(new PDFTextStripper().getText(pdf))
          .contains("Hinge, start: barbell 140.0 kg")
          .contains("38.3 cm, 339 N·m")
          .contains(Caution.TEXT);
      for (var name : pdf.getPage(0).getResources().getFontNames()) {
        assertThat(pdf.getPage(0).getResources().getFont(name).isEmbedded()).isTrue();
      }
      assertThat(pdf.getDocumentInformation().getTitle())
          .isEqualTo("Hinge, start: barbell 140.0 kg");
      assertThat(pdf.getDocumentInformation().getCreationDate()).as("no date").isNull();
      PDStructureElement whole =
          (PDStructureElement) pdf.getDocumentCatalog().getStructureTreeRoot().getKids().get(0);
      PDStructureElement figure = (PDStructureElement) whole.getKids().get(0);
      assertThat(figure.getStructureType()).isEqualTo("Figure");
      assertThat(figure.getAlternateDescription())
          .isEqualTo(position().description())
          .contains("hip (each side): 38.3 cm, 339 N·m");
    }
    try (PDDocument pdf = Loader.loadPDF(plot().pdfFile())) {
      assertThat(new PDFTextStripper().getText(pdf))
          .contains("Moment against hip height", "hip height (cm)", "hip (each side)", "52")
          .contains(Caution.TEXT);
    }
  }

  @Test
  void the_same_picture_gives_the_same_bytes_in_every_format() {
    Map<String, Picture> again = pictures();
    pictures()
        .forEach(
            (name, picture) -> {
              Picture other = again.get(name);
              assertThat(picture.svgDocument()).as(name).isEqualTo(other.svgDocument());
              assertThat(picture.pngFile()).as(name).isEqualTo(other.pngFile());
              assertThat(picture.pdfFile()).as(name).isEqualTo(other.pdfFile());
            });
  }

  @Test
  void a_description_tells_the_numbers_of_the_picture() {
    assertThat(position().description())
        .startsWith("Hinge, start: barbell 140.0 kg. Side view, drawn to scale, of man, 85.0 kg")
        .contains("low back (L5/S1): 30.7 cm, 539 N·m");
    assertThat(plot().description())
        .startsWith("Moment against hip height.")
        .containsPattern("knee \\(each side\\): from [0-9.]+ at 52 to −40.7 at 72");
    assertThat(map().description()).contains("Lowest 168 at 60 and 54, highest 391 at 140 and 70.");
    assertThat(sideBySide().description()).contains("low hips: hip 339 N·m, 38.3 cm");
  }

  @Test
  void an_svg_names_its_title_and_its_description() {
    pictures()
        .forEach(
            (name, picture) -> {
              SvgReader svg = SvgReader.of(picture.svgDocument());
              assertThat(svg.root().getAttribute("role")).isEqualTo("img");
              assertThat(svg.root().getAttribute("aria-labelledby").split(" "))
                  .as(name)
                  .containsExactly(id(svg, "title"), id(svg, "desc"))
                  .doesNotHaveDuplicates();
              assertThat(
                      svg.all("title").get(0).getTextContent()
                          + ". "
                          + svg.all("desc").get(0).getTextContent())
                  .isEqualTo(picture.description());
            });
  }

  private static String id(SvgReader svg, String tag) {
    Element element = svg.all(tag).get(0);
    return element.getAttribute("id");
  }

  @Test
  void a_png_carries_its_description_and_its_size_on_paper() throws IOException {
    Map<String, String> texts = pngTexts(position().pngFile());
    assertThat(texts.get("Description"))
        .contains("low back (L5/S1): 30.7 cm, 539 N·m")
        .contains("Balance at 48 % of the foot");
    assertThat(texts.get("Title")).isEqualTo("Hinge, start: barbell 140.0 kg");
    // 192 dots per inch, so that a page unit is a 96th of an inch.
    assertThat(texts.get("pixelsPerUnitXAxis")).isEqualTo("7559");
    assertThat(pngTexts(plot().pngFile()).get("Description")).contains("at 72. ");
  }

  private static Map<String, String> pngTexts(byte[] file) throws IOException {
    ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
      reader.setInput(in);
      Element root = (Element) reader.getImageMetadata(0).getAsTree("javax_imageio_png_1.0");
      Map<String, String> texts = new TreeMap<>();
      for (String[] kind : new String[][] {{"tEXtEntry", "value"}, {"iTXtEntry", "text"}}) {
        NodeList entries = root.getElementsByTagName(kind[0]);
        for (int i = 0; i < entries.getLength(); i++) {
          Element entry = (Element) entries.item(i);
          texts.put(entry.getAttribute("keyword"), entry.getAttribute(kind[1]));
        }
      }
      Element size = (Element) root.getElementsByTagName("pHYs").item(0);
      texts.put("pixelsPerUnitXAxis", size.getAttribute("pixelsPerUnitXAxis"));
      return texts;
    } finally {
      reader.dispose();
    }
  }

  @Test
  void an_svg_with_its_letters_inside_needs_none_of_the_reader() throws Exception {
    for (Picture picture : List.of(position(), plot())) {
      String svg = picture.lettersInside().svgDocument();
      SvgReader read = SvgReader.of(svg);
      assertThat(read.root().getAttribute("font-family")).startsWith("'Letters inside', ");
      Matcher face = Pattern.compile("base64,([^)]*)\\)").matcher(svg);
      int faces = 0;
      while (face.find()) {
        faces++;
        byte[] file = Base64.getDecoder().decode(face.group(1));
        assertThat(file.length).isLessThan(40_000);
        Font letters = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(file));
        assertThat(letters.canDisplayUpTo(read.words())).as("a sign is missing").isEqualTo(-1);
      }
      assertThat(faces).as("plain and bold").isEqualTo(2);
      assertThat(picture.lettersInside().pdfFile()).isEqualTo(picture.pdfFile());
    }
  }

  @Test
  void on_a_machine_without_any_font_every_file_is_the_same(@TempDir Path folder) throws Exception {
    Files.writeString(
        folder.resolve("fonts.conf"),
        "<?xml version=\"1.0\"?><fontconfig><cachedir>" + folder + "</cachedir></fontconfig>");
    ProcessBuilder bare =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Djava.awt.headless=true",
            // The JDK keeps a list of fonts under the home folder.
            "-Duser.home=" + folder,
            "-cp",
            System.getProperty("java.class.path"),
            BareMachine.class.getName(),
            folder.toString());
    bare.environment().put("FONTCONFIG_FILE", folder.resolve("fonts.conf").toString());
    bare.redirectErrorStream(true).redirectOutput(folder.resolve("said").toFile());
    Process process = bare.start();
    assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as(Files.readString(folder.resolve("said"))).isZero();
    assertThat(folder.resolve("position.png")).hasBinaryContent(position().pngFile());
    assertThat(folder.resolve("plot.png")).hasBinaryContent(plot().pngFile());
    assertThat(folder.resolve("plot.svg")).hasContent(plot().svgDocument());
    assertThat(folder.resolve("plot.pdf")).hasBinaryContent(plot().pdfFile());
  }

  @Test
  void a_sign_that_our_letters_lack_does_no_harm() throws IOException {
    Picture picture =
        Comparison.of(pull().start(), pull().hipHeight(Units.cm(66)).start())
            .called("低い", "high \u0007 hips")
            .picture();
    try (PDDocument pdf = Loader.loadPDF(picture.pdfFile())) {
      assertThat(new PDFTextStripper().getText(pdf)).contains("539 N·m");
    }
    assertThat(picture.pngFile()).isNotEmpty();
    assertThat(pngTexts(picture.pngFile()).get("Description")).contains("低い: hip 339 N·m");
  }

  @Test
  void a_png_is_as_wide_as_asked_and_no_narrower_than_can_be_read(@TempDir Path folder)
      throws IOException {
    for (Picture picture : List.of(position(), plot())) {
      for (int pixels : new int[] {400, 1000, 1601}) {
        Path file = picture.save(folder.resolve("a.png").toString(), pixels).files().get(0);
        assertThat(ImageIO.read(file.toFile()).getWidth()).isEqualTo(pixels);
      }
      assertThatThrownBy(() -> picture.save(folder.resolve("b.png").toString(), 10))
          .isInstanceOf(Refused.class)
          .hasMessage(
              "A picture can be 400 to 10,000 pixels wide, not 10: below that its letters cannot be"
                  + " read.");
      assertThatThrownBy(() -> picture.save("b.pdf", 1000))
          .isInstanceOf(Refused.class)
          .hasMessage(
              "Only a .png has a width in pixels; .pdf is sharp at any size: save(\"b.pdf\").");
    }
    assertThat(folder.resolve("b.png")).doesNotExist();
  }

  @Test
  void an_ending_says_the_format_and_others_are_refused(@TempDir Path folder) {
    for (Picture picture : List.of(position(), plot())) {
      for (String ending : List.of("svg", "png", "pdf", "PDF")) {
        Path file = folder.resolve("a." + ending);
        assertThat(picture.save(file.toString()).files()).containsExactly(file);
        assertThat(file).isNotEmptyFile();
      }
      assertThat(picture.save(folder.resolve("squat 97.5").toString()).files())
          .extracting(f -> f.getFileName().toString())
          .containsExactly("squat 97.5.svg", "squat 97.5.png");
      for (String name : Arrays.asList("a.jpg", "a.bmp", "a.b.tiff")) {
        assertThatThrownBy(() -> picture.save(folder.resolve(name).toString()))
            .isInstanceOf(Refused.class)
            .hasMessageStartingWith("A picture is saved as .svg, .png or .pdf, not as \"")
            .hasMessageEndingWith(name + "\"; a name without an ending saves .svg and .png.");
        assertThat(folder.resolve(name)).doesNotExist();
      }
      for (String name : Arrays.asList("", " ", ".png", "new/")) {
        assertThatThrownBy(() -> picture.save(name))
            .isInstanceOf(Refused.class)
            .hasMessage("A picture needs a file name, such as save(\"start.svg\").");
      }
    }
  }
}
