package org.leverbook.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.leverbook.display.Picture;

/**
 * Charts side by side, or one, with sentences below.
 *
 * @param title above all of them; empty where one chart has its own
 * @param charts what XChart paints; in a row all of one height
 * @param across how many in a row
 * @param notes below
 * @param style for background, title and notes
 * @param again how to draw it in another style
 */
record ChartPicture(
    String title,
    List<AxesChart<?, ?>> charts,
    int across,
    List<String> notes,
    FigureStyle style,
    Way again)
    implements Again {

  private static final double MARGIN = 28;

  /** What a title above several charts takes. */
  private static final int HEAD = 44;

  /** Keeps its own copies of the lists. */
  ChartPicture {
    charts = List.copyOf(charts);
    notes = notes.stream().map(style::sentence).toList();
    title = style.say(title);
  }

  ChartPicture(
      String title,
      List<AxesChart<?, ?>> charts,
      int across,
      List<String> notes,
      FigureStyle style) {
    this(title, charts, across, notes, style, null);
    charts.forEach(
        chart -> {
          Spoken.in(chart, style);
          FitTexts.in(chart, style);
        });
  }

  /** One chart with its own title. */
  ChartPicture(AxesChart<?, ?> chart, List<String> notes, FigureStyle style) {
    this("", List.of(chart), 1, notes, style);
  }

  @Override
  public Picture drawnBy(Way way) {
    return new ChartPicture(title, charts, across, notes, style, way);
  }

  @Override
  public String svgDocument() {
    String[] svg = new String[1];
    Fonts.needed(() -> svg[0] = ChartSvg.write(this));
    return svg[0];
  }

  @Override
  public Picture lettersInside() {
    return new Lettered(this);
  }

  @Override
  public byte[] pngFile() {
    return png(RasterPainter.FINENESS);
  }

  @Override
  public byte[] pngFile(int pixels) {
    return png((double) pixels / width());
  }

  private byte[] png(double fineness) {
    BufferedImage image = RasterPainter.image(width(), height(), style, fineness, this::paint);
    return PngFile.of(image, told(), ChartWords.of(this), fineness);
  }

  @Override
  public byte[] pdfFile() {
    return PdfPainter.pdf(ChartInk.drawing(this), style, 1);
  }

  @Override
  public String description() {
    return told() + ". " + ChartWords.of(this);
  }

  /** The widest row of charts. */
  int width() {
    int width = 0;
    for (int i = 0; i < charts.size(); i += across) {
      List<AxesChart<?, ?>> row = charts.subList(i, Math.min(charts.size(), i + across));
      width = Math.max(width, row.stream().mapToInt(AxesChart::getWidth).sum());
    }
    // Single charts bring their own margin.
    return charts.size() == 1 ? width : width + (int) MARGIN;
  }

  int height() {
    return (int) Math.ceil(bottom() + lines().size() * leading() + MARGIN / 2);
  }

  /** Where the charts end and the notes begin. */
  private int bottom() {
    int rows = (charts.size() + across - 1) / across;
    return head() + rows * charts.get(0).getHeight();
  }

  private int head() {
    return title.isEmpty() ? 0 : HEAD;
  }

  /** The title for readers who listen. */
  String told() {
    String own = charts.get(0).getTitle();
    return !title.isEmpty() ? title : own == null ? "" : own;
  }

  /** Paints charts and notes in page units. */
  void paint(Graphics2D page) {
    int x = 0;
    for (int i = 0; i < charts.size(); i++) {
      AxesChart<?, ?> chart = charts.get(i);
      x = i % across == 0 ? 0 : x;
      Graphics2D part = (Graphics2D) page.create();
      part.translate(x, head() + i / across * chart.getHeight());
      ChartNames.during(chart, () -> chart.paint(part, chart.getWidth(), chart.getHeight()));
      part.dispose();
      x += chart.getWidth();
    }
    page.setColor(Color.decode(style.ink()));
    if (!title.isEmpty()) {
      page.setFont(Fonts.of(title, style.title(), true));
      String shown = ChartNames.shortened(title, page.getFont(), width() - 1.5 * MARGIN);
      page.drawString(shown, (float) MARGIN, (float) (HEAD - style.title() / 2));
    }
    double y = bottom();
    for (String line : lines()) {
      page.setFont(Fonts.of(line, style.caption(), false));
      y += leading();
      page.drawString(line, (float) MARGIN, (float) y);
    }
  }

  private double leading() {
    return 1.4 * style.caption();
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    notes.forEach(
        note -> lines.addAll(TextWidths.wrapped(note, style.caption(), width() - 2 * MARGIN)));
    return lines;
  }

  @Override
  public String text() {
    return "plot: " + told() + "; save it with .save(\"plot\")";
  }

  @Override
  public String toString() {
    return text();
  }
}
