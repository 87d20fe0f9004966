package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.lift.BackSquat;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Units;
import org.leverbook.study.Sweep;

/** The page with a slider in a real Chromium, with real keys, a real finger and a real printer. */
class MovingPageInBrowserTest {

  private static final int LEFT = 37;
  private static final int RIGHT = 39;
  private static final int HOME = 36;
  private static final int END = 35;

  private static final String FRAME =
      "Array.from(document.querySelectorAll('.frame'))"
          + ".filter(f => getComputedStyle(f).display !== 'none').map(f => f.id).join()";

  private static final String BACKGROUND = "getComputedStyle(document.body).backgroundColor";

  private static String page() {
    Person man = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));
    return Sweep.through(BackSquat.of(man).holding(Barbell.of(Units.kg(100))), 21)
        .animation(JointId.HIP, JointId.KNEE, JointId.L5_S1)
        .htmlPage();
  }

  @Test
  void it_works_by_keys_and_finger_on_a_phone_in_the_dark_on_paper_and_for_those_who_listen(
      @TempDir(cleanup = CleanupMode.NEVER) Path folder) throws Exception {
    if (Chromium.named().isEmpty()) {
      System.out.println(
          "NOT RUN: MovingPageInBrowserTest needs a Chromium; name one in LEVERBOOK_BROWSER.");
    }
    assumeTrue(Chromium.named().isPresent(), "LEVERBOOK_BROWSER names no Chromium");
    Path file = Files.writeString(folder.resolve("squat.html"), page());
    try (Chromium browser = Chromium.open(Chromium.named().get(), folder, file)) {
      ready(browser);
      keys(browser);
      plays(browser);
      phone(browser);
      dark(browser);
      calm(browser);
      listening(browser);
      paper(browser);
      assertThat(browser.value("performance.getEntriesByType('resource').length"))
          .as("files that it asked for")
          .isEqualTo("0");
    }
  }

  private static void ready(Chromium browser) throws Exception {
    for (int i = 0; i < 100 && !browser.value("document.readyState").equals("complete"); i++) {
      Thread.sleep(50);
    }
    size(browser, 1200, 900, false);
    assertThat(browser.value(FRAME)).isEqualTo("frame-0");
  }

  private static void size(Chromium browser, int width, int height, boolean mobile)
      throws Exception {
    browser.ask(
        "Emulation.setDeviceMetricsOverride",
        "{\"width\":"
            + width
            + ",\"height\":"
            + height
            + ",\"deviceScaleFactor\":2,\"mobile\":"
            + mobile
            + "}");
  }

  private static void keys(Chromium browser) throws Exception {
    // Without a click first: the page itself listens.
    browser.press("ArrowRight", RIGHT, "");
    assertThat(browser.value(FRAME)).isEqualTo("frame-1");
    browser.value("document.getElementById('slider').focus()");
    browser.press("ArrowRight", RIGHT, "");
    assertThat(browser.value(FRAME)).as("one frame a key, not two").isEqualTo("frame-2");
    browser.press("End", END, "");
    assertThat(browser.value(FRAME)).isEqualTo("frame-20");
    assertThat(browser.value("document.getElementById('slider').value")).isEqualTo("20");
    String marker = browser.value("document.getElementById('upright').getAttribute('x1')");
    browser.press("ArrowLeft", LEFT, "");
    assertThat(browser.value("document.getElementById('upright').getAttribute('x1')"))
        .isNotEqualTo(marker);
    assertThat(browser.value("document.querySelector('#numbers td').textContent"))
        .isEqualTo(
            browser.value(
                "document.querySelectorAll('#values tbody tr')[19].cells[1].textContent"));
    browser.press("Home", HOME, "");
    assertThat(browser.value(FRAME)).isEqualTo("frame-0");
  }

  private static void plays(Chromium browser) throws Exception {
    browser.press(" ", 32, " ");
    assertThat(browser.value("document.getElementById('play').textContent")).isEqualTo("Pause");
    for (int i = 0; i < 100 && browser.value(FRAME).equals("frame-0"); i++) {
      Thread.sleep(50);
    }
    browser.value("document.getElementById('play').focus()");
    browser.press(" ", 32, " ");
    assertThat(browser.value("document.getElementById('play').textContent")).isEqualTo("Play");
    assertThat(browser.value(FRAME)).isNotEqualTo("frame-0");
    assertThat(browser.value("scrollY")).as("space scrolls nothing meanwhile").isEqualTo("0");
  }

  private static void phone(Chromium browser) throws Exception {
    size(browser, 360, 740, true);
    browser.ask("Emulation.setTouchEmulationEnabled", "{\"enabled\":true}");
    assertThat(browser.value("document.documentElement.scrollWidth <= 360"))
        .as("nothing is cut off at the right")
        .isEqualTo("true");
    assertThat(
            browser.value(
                "(b => b.top >= 0 && b.bottom <= innerHeight && b.height >= 44)"
                    + "(document.getElementById('slider').getBoundingClientRect())"))
        .as("the slider is in sight and as high as a fingertip")
        .isEqualTo("true");
    browser.value("scrollTo(0, 300)");
    String at =
        browser.value(
            "(b => JSON.stringify([{x: b.left + 0.7 * b.width, y: b.top + 0.5 * b.height}]))"
                + "(document.getElementById('plot').getBoundingClientRect())");
    browser.ask("Input.dispatchTouchEvent", "{\"type\":\"touchStart\",\"touchPoints\":" + at + "}");
    browser.ask("Input.dispatchTouchEvent", "{\"type\":\"touchEnd\",\"touchPoints\":[]}");
    int touched = Integer.parseInt(browser.value(FRAME).substring(6));
    assertThat(touched).as("where the finger came down").isBetween(15, 20);
    keep(browser, "phone");
    size(browser, 1200, 900, false);
  }

  private static void dark(Chromium browser) throws Exception {
    String day = browser.value(BACKGROUND);
    media(browser, "prefers-color-scheme", "dark");
    assertThat(day).isEqualTo("rgb(255, 255, 255)");
    assertThat(browser.value(BACKGROUND)).isNotEqualTo(day);
    keep(browser, "dark");
  }

  private static void calm(Chromium browser) throws Exception {
    media(browser, "prefers-reduced-motion", "reduce");
    browser.press("Home", HOME, "");
    browser.value("document.getElementById('play').click()");
    Thread.sleep(600);
    assertThat(browser.value(FRAME)).as("no film").isEqualTo("frame-0");
    browser.value("document.getElementById('play').click()");
    browser.ask("Emulation.setEmulatedMedia", "{\"media\":\"\",\"features\":[]}");
  }

  private static void media(Chromium browser, String feature, String value) throws Exception {
    browser.ask(
        "Emulation.setEmulatedMedia",
        "{\"features\":[{\"name\":\"" + feature + "\",\"value\":\"" + value + "\"}]}");
  }

  private static void listening(Chromium browser) throws Exception {
    browser.value("document.getElementById('slider').focus()");
    browser.press("ArrowRight", RIGHT, "");
    List<String> heard = new ArrayList<>();
    for (JsonNode node : browser.ask("Accessibility.getFullAXTree", "{}").path("nodes")) {
      if (!node.path("ignored").asBoolean()) {
        String role = node.path("role").path("value").asText();
        heard.add(role + ": " + node.path("name").path("value").asText());
      }
    }
    assertThat(heard)
        .anyMatch(h -> h.equals("slider: way (%)"))
        .anyMatch(h -> h.equals("button: Play"))
        .anyMatch(h -> h.matches("(image|img): Back squat: barbell 100.0 kg.*At way 5 %: hip.*"))
        .anyMatch(h -> h.startsWith("StaticText: way 5 %: hip (each side) "))
        .anyMatch(h -> h.startsWith("columnheader: hip (each side) moment"));
    assertThat(browser.value("document.getElementById('slider').getAttribute('aria-valuetext')"))
        .isEqualTo("way 5 %");
  }

  private static void paper(Chromium browser) throws Exception {
    browser.ask("Emulation.setEmulatedMedia", "{\"media\":\"print\"}");
    assertThat(browser.value(FRAME)).isEqualTo("frame-0");
    for (String id : List.of("slider", "now", "numbers", "marker")) {
      assertThat(browser.value("document.getElementById('" + id + "').getClientRects().length"))
          .as(id)
          .isEqualTo("0");
    }
    assertThat(
            browser.value(
                "(s => s.scrollHeight <= s.clientHeight + 1)(document.querySelector('.scroll'))"))
        .as("the whole table is printed")
        .isEqualTo("true");
    keep(browser, "print");
  }

  /** For those who look. */
  private static void keep(Chromium browser, String name) throws Exception {
    Path folder = Files.createDirectories(Path.of("target", "moving-page"));
    Files.write(folder.resolve(name + ".png"), browser.seen());
  }
}
