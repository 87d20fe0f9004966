package org.leverbook.figure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.leverbook.body.JointId;
import org.leverbook.display.Look;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * How every picture and plot looks, apart from what it shows: colours, dashes, widths, letters, and
 * the language of its labels. A value: each change gives another style.
 *
 * <p>{@code article().withColour(HIP, "#7a3b00").withLetters(1.2)} works; a colour that cannot be
 * read on its paper is refused.
 */
public final class FigureStyle implements Look {

  /** The joints a lesson speaks of most have fixed accents; the others take turns. */
  private static final List<JointId> FIRST =
      List.of(
          JointId.HIP, JointId.L5_S1, JointId.SHOULDER, JointId.T7_T8, JointId.ANKLE, JointId.KNEE);

  private static final String FONTS =
      "Helvetica, Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif";

  private static final Letters OF_ARTICLE = new Letters(19, 13, 12, FONTS);

  private static final Letters OF_SLIDE = new Letters(26, 18, 16, FONTS);

  /** How much wider lines on a slide are. */
  private static final double SLIDE_LINES = 1.6;

  /** Letters and lines that are still pictures. */
  private static final double SMALLEST = 0.5;

  private static final double LARGEST = 3;

  /** For the pages of an article, in colours. */
  public static final FigureStyle ARTICLE =
      new FigureStyle(
          Palettes.colours(), Palettes.CALM, Map.of(), OF_ARTICLE, 1, LabelWords.ENGLISH, false);

  /** For a slide: larger letters, wider lines. */
  public static final FigureStyle SLIDE =
      new FigureStyle(
          Palettes.colours(),
          Palettes.CALM,
          Map.of(),
          OF_SLIDE,
          SLIDE_LINES,
          LabelWords.ENGLISH,
          false);

  /** For a printer without colours: greys, dashes, markers. */
  public static final FigureStyle BLACK_AND_WHITE =
      new FigureStyle(
          Palettes.greyTones(), Palettes.GREYS, Map.of(), OF_ARTICLE, 1, LabelWords.ENGLISH, true);

  /** With the clearest colours for readers of every colour vision; less calm than the others. */
  public static final FigureStyle CLEAR_COLOURS =
      new FigureStyle(
          Palettes.colours(), Palettes.CLEAR, Map.of(), OF_ARTICLE, 1, LabelWords.ENGLISH, false);

  /** The style of pictures made without saying one; of the whole process, as is the folder. */
  private static volatile FigureStyle current = ARTICLE;

  private final Map<Tint, String> tones;
  private final List<Accent> palette;
  private final Map<JointId, Accent> own;
  private final Letters letters;
  private final double line;
  private final LabelWords words;
  private final boolean grey;

  /**
   * How one joint is told from the others: by colour, and in grey print by dash and marker too.
   *
   * @param colour of its lines, as #rrggbb
   * @param dash lengths on and off, page units; empty for a solid line
   * @param marker which marker shape a plot uses, from 0
   * @param fill of its bars and areas, as #rrggbb
   */
  record Accent(String colour, List<Double> dash, int marker, String fill) {

    Accent(String colour, List<Double> dash, int marker) {
      this(colour, dash, marker, colour);
    }
  }

  private FigureStyle(
      Map<Tint, String> tones,
      List<Accent> palette,
      Map<JointId, Accent> own,
      Letters letters,
      double line,
      LabelWords words,
      boolean grey) {
    this.tones = Map.copyOf(tones);
    this.palette = List.copyOf(palette);
    this.own = Map.copyOf(own);
    this.letters = letters;
    this.line = line;
    this.words = words;
    this.grey = grey;
  }

  /**
   * The style of pictures made without saying one.
   *
   * @return for an article, unless another was chosen
   */
  public static FigureStyle current() {
    return current;
  }

  /**
   * Chooses the style of all pictures made from now on.
   *
   * @param style which
   * @return the same
   */
  public static FigureStyle choose(FigureStyle style) {
    current = Ask.present("style", style, "slide()");
    return style;
  }

  /**
   * Another colour for one part of pictures.
   *
   * @param part as in "body", "ink", "paper"
   * @param colour as in "#00529c"
   * @return the style with it
   * @throws Refused if there is no such part, it is no colour, or it cannot be read on its paper
   */
  public FigureStyle withColour(String part, String colour) {
    Tint tint = Tint.of(Ask.present("part", part, "\"body\""));
    Map<Tint, String> other = new EnumMap<>(tones);
    other.put(tint, Contrast.colour("the " + tint.word(), colour));
    return new FigureStyle(other, palette, own, letters, line, words, grey).read();
  }

  /**
   * Another colour for one joint.
   *
   * @param joint which
   * @param colour as in "#00529c"
   * @return the style with it; dash and marker stay
   * @throws Refused if it is no colour, or cannot be seen on the paper
   */
  public FigureStyle withColour(JointId joint, String colour) {
    Accent before = accent(Ask.present("joint", joint, "HIP"));
    String checked = Contrast.colour("the " + joint.word(), colour);
    Map<JointId, Accent> other = new EnumMap<>(JointId.class);
    other.putAll(own);
    other.put(joint, new Accent(checked, before.dash(), before.marker()));
    return new FigureStyle(tones, palette, other, letters, line, words, grey).read();
  }

  /**
   * Other colours for joints and curves, in the order in which they are taken: hip, low back,
   * shoulder, mid back, ankle, knee.
   *
   * @param colours two or more, as in "#00529c"
   * @return the style with them
   * @throws Refused if there are fewer, or one cannot be seen on the paper
   */
  public FigureStyle withPalette(String... colours) {
    if (colours.length < 2) {
      throw new Refused("A palette needs two colours or more, such as \"#00529c\", \"#dc6309\".");
    }
    List<String> checked = new ArrayList<>();
    for (String colour : colours) {
      checked.add(Contrast.colour("a palette", colour));
    }
    List<Accent> accents = Palettes.accents(checked);
    return new FigureStyle(tones, accents, Map.of(), letters, line, words, grey).read();
  }

  /**
   * Larger or smaller letters.
   *
   * @param times as large as now, 0.5 to 3
   * @return the style with them
   * @throws Refused if that is too small or too large
   */
  public FigureStyle withLetters(double times) {
    inReach("Letters", times);
    return new FigureStyle(tones, palette, own, letters.times(times), line, words, grey);
  }

  /**
   * Wider or thinner lines.
   *
   * @param times as wide as now, 0.5 to 3
   * @return the style with them
   * @throws Refused if that is too thin or too wide
   */
  public FigureStyle withLines(double times) {
    inReach("Lines", times);
    return new FigureStyle(tones, palette, own, letters, times * line, words, grey);
  }

  /**
   * Other fonts for SVG; a reader takes the first that his machine has.
   *
   * @param stack as in "Georgia, serif"; end it with sans-serif or serif
   * @return the style with them
   */
  public FigureStyle withFonts(String stack) {
    String asked = Ask.present("fonts", stack, "\"Georgia, serif\"");
    return new FigureStyle(tones, palette, own, letters.in(asked), line, words, grey);
  }

  /**
   * Labels in one's own words.
   *
   * @param other as in {@code labelWords("german.txt")}
   * @return the style with them
   */
  public FigureStyle speaking(LabelWords other) {
    LabelWords asked = Ask.present("words", other, "labelWords(\"german.txt\")");
    return new FigureStyle(tones, palette, own, letters, line, asked, grey);
  }

  private static void inReach(String what, double times) {
    if (!(times >= SMALLEST && times <= LARGEST)) {
      throw new Refused(what + " can be 0.5 to 3 times as large, not " + times + " times.");
    }
  }

  /** Refuses what cannot be read on the paper. */
  private FigureStyle read() {
    tones.forEach(
        (tint, colour) -> {
          if (tint.least() > 1) {
            Contrast.enough("the " + tint.word(), colour, paper(), tint.least());
          }
        });
    List<Accent> all = new ArrayList<>(palette);
    all.addAll(own.values());
    all.forEach(a -> Contrast.enough("a line", a.colour(), paper(), Contrast.OF_LINES));
    return this;
  }

  String paper() {
    return tone(Tint.PAPER);
  }

  String ink() {
    return tone(Tint.INK);
  }

  String quiet() {
    return tone(Tint.QUIET);
  }

  String flesh() {
    return tone(Tint.BODY);
  }

  String farFlesh() {
    return tone(Tint.FAR_BODY);
  }

  String edge() {
    return tone(Tint.EDGE);
  }

  String bone() {
    return tone(Tint.SPINE);
  }

  String metal() {
    return tone(Tint.METAL);
  }

  String tone(Tint tint) {
    return tones.get(tint);
  }

  /** Size of the title, page units. */
  double title() {
    return letters.title();
  }

  /** Size of labels at the arms, page units. */
  double label() {
    return letters.label();
  }

  /** Size of the caption, page units. */
  double caption() {
    return letters.caption();
  }

  /** Font stack of the SVG. */
  String fonts() {
    return letters.fonts();
  }

  /** How much wider lines are than on the page of an article. */
  double line() {
    return line;
  }

  /** Whether there are no colours to tell things apart. */
  boolean grey() {
    return grey;
  }

  /** A label in its language: known words within it are exchanged. */
  String say(String label) {
    return words.label(label);
  }

  /** A sentence in its language, where the whole sentence is known. */
  String sentence(String english) {
    return words.sentence(english);
  }

  Accent accent(JointId joint) {
    return own.getOrDefault(joint, palette.get(place(joint) % palette.size()));
  }

  private static int place(JointId joint) {
    int first = FIRST.indexOf(joint);
    if (first >= 0) {
      return first;
    }
    int others = 0;
    for (JointId other : JointId.values()) {
      if (other == joint) {
        return others;
      }
      others += FIRST.contains(other) ? 0 : 1;
    }
    return others;
  }

  /**
   * The accent of one curve of many: where the palette ends it begins anew with other dashes.
   *
   * @param which from 0
   * @return its accent
   */
  Accent accent(int which) {
    int size = palette.size();
    Accent base = palette.get(which % size);
    Accent dashed = palette.get((which % size + which / size) % size);
    return new Accent(base.colour(), dashed.dash(), dashed.marker(), base.fill());
  }

  /**
   * Accents for several joints in one plot, all different as far as the palette goes: each keeps
   * its own unless another has taken it.
   *
   * @param joints in order
   * @return one accent for each
   */
  List<Accent> accents(List<JointId> joints) {
    List<Accent> taken = new ArrayList<>();
    for (JointId joint : joints) {
      Accent usual = accent(joint);
      Accent free =
          taken.contains(usual)
              ? palette.stream().filter(a -> !taken.contains(a)).findFirst().orElse(usual)
              : usual;
      taken.add(free);
    }
    return taken;
  }

  @Override
  public String text() {
    return String.format(
        Locale.ROOT,
        "style: letters of %s and %s, lines %s times, %s%s",
        SvgWriter.number(title()),
        SvgWriter.number(label()),
        SvgWriter.number(line),
        grey ? "black and white" : palette.size() + " colours",
        words.text());
  }

  @Override
  public String toString() {
    return text();
  }
}
