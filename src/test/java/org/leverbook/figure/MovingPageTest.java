package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.htmlunit.BrowserVersion;
import org.htmlunit.MockWebConnection;
import org.htmlunit.WebClient;
import org.htmlunit.html.DomElement;
import org.htmlunit.html.HtmlPage;
import org.htmlunit.html.HtmlTableRow;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Units;
import org.leverbook.study.Sweep;
import org.leverbook.study.SweepRow;
import org.w3c.dom.Element;

/** The page with a slider, its script run by a browser written in Java. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MovingPageTest {

  /** Told with one decimal. */
  private static final double ROUNDING = 0.05 + 1e-9;

  private static final Person MAN = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));
  private static final List<JointId> JOINTS = List.of(JointId.HIP, JointId.KNEE, JointId.L5_S1);

  private Sweep squat;
  private MotionPlot plot;
  private String html;
  private WebClient browser;
  private HtmlPage page;

  @BeforeAll
  void writeOnce() {
    squat = Sweep.through(BackSquat.of(MAN).holding(Barbell.of(Units.kg(100))), 21);
    plot = MotionPage.of(squat, JOINTS, FigureStyle.ARTICLE).plot();
    html = squat.animation(JOINTS.toArray(JointId[]::new)).htmlPage();
  }

  @BeforeEach
  void open() throws IOException {
    open(html, false);
  }

  private void open(String document, boolean calm) throws IOException {
    browser = new WebClient(BrowserVersion.CHROME);
    browser.getOptions().setCssEnabled(false);
    MockWebConnection connection = new MockWebConnection();
    String asked =
        "<script>window.matchMedia=function(q){return {matches:" + calm + "};};</script>";
    byte[] served = document.replace("<head>", "<head>" + asked).getBytes(StandardCharsets.UTF_8);
    connection.setDefaultResponse(served, 200, "OK", "text/html");
    browser.setWebConnection(connection);
    page = browser.getPage("http://localhost/page.html");
  }

  @AfterEach
  void close() {
    browser.close();
  }

  private DomElement part(String id) {
    return page.getElementById(id);
  }

  private Object run(String script) {
    return page.executeJavaScript(script).getJavaScriptResult();
  }

  private void press(String key) {
    run(
        "document.getElementById('slider').dispatchEvent(new KeyboardEvent('keydown',"
            + "{key:'"
            + key
            + "',bubbles:true,cancelable:true}));");
  }

  /** The frames that are not hidden. */
  private List<String> shown() {
    return page.getByXPath("//*[@class='frame']").stream()
        .map(DomElement.class::cast)
        .filter(frame -> !frame.hasAttribute("display"))
        .map(DomElement::getId)
        .toList();
  }

  private static double number(String told) {
    return Double.parseDouble(told.replace('−', '-'));
  }

  /** Everything on the page tells one and the same frame. */
  private void tells(int frame) {
    assertThat(shown()).containsExactly("frame-" + frame);
    String place = String.format(Locale.ROOT, "way %d %%", 5 * frame);
    assertThat(part("slider").getAttribute("aria-valuetext")).isEqualTo(place);
    assertThat(run("document.getElementById('slider').value")).isEqualTo("" + frame);
    assertThat(part("now").getTextContent()).startsWith(place + ": hip (each side) ");
    assertThat(part("stage-told").getTextContent()).startsWith("At " + place + ": hip");
    List<DomElement> dots = page.getByXPath("//*[@id='marker']/*[local-name()='circle']");
    List<HtmlTableRow> live = page.getByXPath("//table[@id='numbers']/tbody/tr");
    assertThat(dots).hasSize(3);
    for (int j = 0; j < JOINTS.size(); j++) {
      SweepRow row = squat.rows().get(frame);
      assertThat(number(dots.get(j).getAttribute("cx"))).isCloseTo(plot.x(frame), within(ROUNDING));
      assertThat(number(dots.get(j).getAttribute("cy")))
          .isCloseTo(plot.y(frame, JOINTS.get(j)), within(ROUNDING));
      assertThat(number(live.get(j).getCell(1).asNormalizedText()))
          .isCloseTo(row.moment(JOINTS.get(j)), within(ROUNDING));
      assertThat(number(live.get(j).getCell(2).asNormalizedText()))
          .isCloseTo(100 * row.arm(JOINTS.get(j)), within(ROUNDING));
    }
    assertThat(number(part("upright").getAttribute("x1")))
        .isCloseTo(plot.x(frame), within(ROUNDING));
    List<HtmlTableRow> current = page.getByXPath("//table[@id='values']//tr[@aria-current='true']");
    assertThat(current).hasSize(1);
    assertThat(number(current.get(0).getCell(0).asNormalizedText())).isEqualTo(5 * frame);
  }

  @Test
  void arrow_keys_home_and_end_move_picture_marker_and_numbers() {
    tells(0);
    press("ArrowRight");
    tells(1);
    press("End");
    tells(20);
    press("ArrowRight");
    tells(20);
    press("ArrowLeft");
    tells(19);
    press("PageDown");
    tells(17);
    press("Home");
    tells(0);
    press("ArrowLeft");
    tells(0);
  }

  @Test
  void dragging_the_slider_moves_picture_marker_and_numbers() {
    run(
        "var s=document.getElementById('slider');s.value='17';"
            + "s.dispatchEvent(new Event('input',{bubbles:true}));");
    tells(17);
  }

  @Test
  void space_plays_and_pauses_and_meanwhile_no_voice_reads_every_frame() {
    press(" ");
    assertThat(part("play").getTextContent()).isEqualTo("Pause");
    assertThat(part("now").getAttribute("aria-live")).isEqualTo("off");
    browser.waitForBackgroundJavaScript(1_500);
    int reached = Integer.parseInt(shown().get(0).substring(6));
    assertThat(reached).isPositive();
    press(" ");
    assertThat(part("play").getTextContent()).isEqualTo("Play");
    assertThat(part("now").getAttribute("aria-live")).isEqualTo("polite");
    int stopped = Integer.parseInt(shown().get(0).substring(6));
    browser.waitForBackgroundJavaScript(500);
    tells(stopped);
  }

  @Test
  void nothing_moves_by_itself() {
    browser.waitForBackgroundJavaScript(1_200);
    tells(0);
  }

  @Test
  void a_device_that_asks_for_less_motion_gets_a_few_still_pictures() throws IOException {
    browser.close();
    open(html, true);
    press(" ");
    browser.waitForBackgroundJavaScript(1_900);
    press(" ");
    // 21 frames in eighths.
    tells(3);
  }

  @Test
  void the_page_needs_no_other_file_and_is_well_formed() {
    SvgReader read = SvgReader.of(html);
    for (String tag : List.of("link", "img", "iframe", "object", "image")) {
      assertThat(read.all(tag)).as(tag).isEmpty();
    }
    assertThat(
            html.replace("http://www.w3.org/1999/xhtml", "")
                .replace("http://www.w3.org/2000/svg", ""))
        .doesNotContain("http:", "https:", "src=", "url(", "@import", "fetch(", "XMLHttpRequest");
    for (Element use : read.all("use")) {
      String id = use.getAttribute("href").substring(1);
      assertThat(html).contains("<g id=\"" + id + "\">");
    }
    assertThat(html).contains("width=device-width", "prefers-color-scheme:dark", "@media print");
    assertThat(html).contains(Caution.TEXT);
    assertThat(html).isEqualTo(squat.animation(JOINTS.toArray(JointId[]::new)).htmlPage());
  }

  @Test
  void without_a_script_there_are_the_first_frame_the_plot_and_a_table_with_all_numbers() {
    SvgReader read = SvgReader.of(html);
    List<Element> frames = read.groups("frame");
    assertThat(frames).hasSize(21);
    assertThat(frames.stream().filter(f -> f.getAttribute("display").isEmpty())).hasSize(1);
    assertThat(read.groups("curve")).hasSize(3);
    List<HtmlTableRow> rows = page.getByXPath("//table[@id='values']/tbody/tr");
    assertThat(rows).hasSize(21);
    int compared = 0;
    for (int i = 0; i < 21; i++) {
      SweepRow row = squat.rows().get(i);
      for (int j = 0; j < 3; j++) {
        assertThat(number(rows.get(i).getCell(1 + j).asNormalizedText()))
            .isCloseTo(row.moment(JOINTS.get(j)), within(ROUNDING));
        assertThat(number(rows.get(i).getCell(4 + j).asNormalizedText()))
            .isCloseTo(100 * row.arm(JOINTS.get(j)), within(ROUNDING));
        compared += 2;
      }
    }
    assertThat(compared).isEqualTo(126);
    assertThat(page.getByXPath("//table[@id='values']/thead//th[@scope='col']")).hasSize(7);
    assertThat(part("stage").getAttribute("role")).isEqualTo("img");
    for (String id : "stage-title stage-told plot-title plot-told".split(" ")) {
      assertThat(part(id).getTextContent()).isNotBlank();
    }
  }

  @Test
  void a_sweep_with_gaps_opens_where_it_holds_and_says_elsewhere_why_not() throws IOException {
    Hinge pull = Hinge.of(MAN).holding(Barbell.of(Units.kg(140)));
    Sweep gaps =
        Sweep.over("hip height", Units.cm(44), Units.cm(60), 5, h -> pull.hipHeight(h).start());
    browser.close();
    open(gaps.animation().htmlPage(), false);
    assertThat(shown()).containsExactly("frame-2");
    press("Home");
    assertThat(shown()).containsExactly("frame-0");
    assertThat(part("now").getTextContent())
        .startsWith("hip height 44 cm: A hip height of 44.0 cm would put the hips below the knees");
    List<DomElement> dots = page.getByXPath("//*[@id='marker']/*[local-name()='circle']");
    assertThat(dots).allMatch(dot -> dot.hasAttribute("display"));
    List<HtmlTableRow> live = page.getByXPath("//table[@id='numbers']/tbody/tr");
    assertThat(live).allMatch(row -> row.getCell(1).asNormalizedText().equals("–"));
    press("End");
    assertThat(dots).noneMatch(dot -> dot.hasAttribute("display"));
  }

  @Test
  void what_a_user_named_cannot_break_the_page() throws IOException {
    Sweep named =
        Sweep.over(
            "lifter </script><b>&\"'",
            List.of("A <i>& \"long\" thighs</i>", "lifter B"),
            who -> BackSquat.of(MAN).finish());
    String document = named.animation(JointId.HIP).htmlPage();
    SvgReader read = SvgReader.of(document);
    assertThat(read.all("b")).isEmpty();
    assertThat(read.all("i")).isEmpty();
    browser.close();
    open(document, false);
    press("ArrowRight");
    assertThat(shown()).containsExactly("frame-1");
  }
}
