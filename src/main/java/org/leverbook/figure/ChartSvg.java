package org.leverbook.figure;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.HeatMapChart;
import org.knowm.xchart.HorizontalBarChart;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.HeatMapStyler;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * A chart as SVG.
 *
 * <p>Batik's generator (Apache-2.0) takes what XChart paints; {@link LetterGraphics} turns the
 * letters, which XChart hands over as outlines, back into text.
 */
final class ChartSvg {

  private static final String SVG = "http://www.w3.org/2000/svg";

  private ChartSvg() {}

  static String write(ChartPicture picture) {
    try {
      Document document =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .getDOMImplementation()
              .createDocument(SVG, "svg", null);
      SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
      context.setComment(null);
      context.setPrecision(2);
      List<String> seen = new ArrayList<>();
      LetterGraphics page = new LetterGraphics(context, letters(picture, seen));
      listening(picture.charts(), seen, () -> picture.paint(page));
      Element root = page.getRoot();
      dress(root, picture);
      return text(root);
    } catch (ParserConfigurationException | TransformerException e) {
      throw new IllegalStateException("The JDK's own XML writer failed.", e);
    }
  }

  /** The letters of a picture's charts; tick labels are known as soon as they were heard. */
  static LetterShapes letters(ChartPicture picture, List<String> heard) {
    Set<java.awt.Font> fonts = new LinkedHashSet<>();
    picture.charts().forEach(chart -> fonts.addAll(fonts(chart.getStyler())));
    return new LetterShapes(() -> texts(picture, heard), fonts);
  }

  /** Hears which tick labels XChart makes, since it tells them to nobody else. */
  static void listening(List<AxesChart<?, ?>> charts, List<String> seen, Runnable painting) {
    if (charts.isEmpty()) {
      painting.run();
      return;
    }
    AxesChartStyler styler = charts.get(0).getStyler();
    Function<Double, String> x = styler.getXAxisTickLabelsFormattingFunction();
    Function<Double, String> y = styler.getYAxisTickLabelsFormattingFunction();
    try {
      styler.setXAxisTickLabelsFormattingFunction(heard(x, seen));
      styler.setYAxisTickLabelsFormattingFunction(heard(y, seen));
      listening(charts.subList(1, charts.size()), seen, painting);
    } finally {
      styler.setXAxisTickLabelsFormattingFunction(x);
      styler.setYAxisTickLabelsFormattingFunction(y);
    }
  }

  private static Function<Double, String> heard(Function<Double, String> plain, List<String> seen) {
    return plain == null
        ? null
        : value -> {
          String label = plain.apply(value);
          seen.add(label);
          return label;
        };
  }

  private static Set<String> texts(ChartPicture picture, List<String> seen) {
    Set<String> texts = new LinkedHashSet<>(seen);
    for (AxesChart<?, ?> chart : picture.charts()) {
      texts.add(chart.getTitle());
      texts.add(chart.getXAxisTitle());
      texts.add(chart.getYAxisTitle());
      chart.getSeriesCollection().forEach(series -> texts.add(series.getLabel()));
      if (chart instanceof HeatMapChart map) {
        texts.addAll(HeatMaps.texts(map));
      }
      if (chart instanceof HorizontalBarChart rows) {
        rows.getSeriesCollection()
            .forEach(s -> s.getYData().forEach(name -> texts.add(String.valueOf(name))));
      }
      if (chart instanceof CategoryChart bars) {
        texts.addAll(Bars.texts(bars));
      }
    }
    texts.removeIf(text -> text == null || text.isBlank());
    return texts;
  }

  private static Set<java.awt.Font> fonts(AxesChartStyler styler) {
    Set<java.awt.Font> fonts =
        new LinkedHashSet<>(
            List.of(
                styler.getAxisTickLabelsFont(),
                styler.getAxisTitleFont(),
                styler.getLegendFont(),
                styler.getChartTitleFont()));
    if (styler instanceof HeatMapStyler map) {
      fonts.add(map.getValueFont());
    }
    return fonts;
  }

  private static void dress(Element root, ChartPicture picture) {
    String width = Integer.toString(picture.width());
    String height = Integer.toString(picture.height());
    root.setAttribute("width", width);
    root.setAttribute("height", height);
    root.setAttribute("viewBox", "0 0 " + width + " " + height);
    root.setAttribute("role", "img");
    root.setAttribute("font-family", picture.style().fonts());
    Document document = root.getOwnerDocument();
    Element paper = document.createElementNS(SVG, "rect");
    paper.setAttribute("width", width);
    paper.setAttribute("height", height);
    paper.setAttribute("fill", picture.style().paper());
    paper.setAttribute("stroke", "none");
    root.insertBefore(paper, root.getFirstChild());
    String description = ChartWords.of(picture);
    String key = Told.key(picture.told(), description);
    root.setAttribute("aria-labelledby", "t" + key + " d" + key);
    root.insertBefore(told(document, "desc", "d" + key, description), paper);
    root.insertBefore(told(document, "title", "t" + key, picture.told()), root.getFirstChild());
    oneFamily(root.getFirstChild());
  }

  /** The root names the fonts for all of it, so that every viewer finds one it has. */
  private static void oneFamily(Node first) {
    for (Node node = first; node != null; node = node.getNextSibling()) {
      if (node instanceof Element element) {
        element.removeAttribute("font-family");
        oneFamily(element.getFirstChild());
      }
    }
  }

  private static Element told(Document document, String name, String id, String text) {
    Element element = document.createElementNS(SVG, name);
    element.setAttribute("id", id);
    element.appendChild(document.createTextNode(text));
    return element;
  }

  private static String text(Element root) throws TransformerException {
    Transformer writer = TransformerFactory.newInstance().newTransformer();
    writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
    writer.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
    StringWriter text = new StringWriter();
    writer.transform(new DOMSource(root), new StreamResult(text));
    return text.append('\n').toString();
  }
}
