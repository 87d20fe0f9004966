package org.leverbook.notebook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.leverbook.display.Caution;

/** Writes a notebook as Markdown, its pictures as files beside it. */
final class MarkdownPage {

  /** A picture in a text: its words, then its address. */
  private static final Pattern PICTURE =
      Pattern.compile("!\\[([^\\]\\n]*)\\]\\(\\s*<?([^)\\s>]+)>?(\\s+[^)]*)?\\)");

  private static final Map<String, String> ENDINGS =
      Map.of(
          MimeBundle.GIF,
          "gif",
          MimeBundle.SVG,
          "svg",
          MimeBundle.PNG,
          "png",
          "image/jpeg",
          "jpg",
          "image/webp",
          "webp");

  /** The first that is there is taken: a moving picture's GIF before its first frame. */
  private static final List<String> ORDER =
      List.of(MimeBundle.GIF, MimeBundle.SVG, MimeBundle.PNG, "image/jpeg", "image/webp");

  private final Page page;
  private final List<String> parts = new ArrayList<>();
  private final Map<String, byte[]> pictures = new LinkedHashMap<>();
  private int number;
  private int picture;

  MarkdownPage(Page page) {
    this.page = page;
  }

  Map<String, byte[]> files() {
    if (page.notebook().title().isEmpty()) {
      parts.add("# " + Markdown.escaped(page.title()));
    }
    if (!page.warning().isEmpty()) {
      parts.add("> " + page.warning());
    }
    page.notebook().cells().forEach(this::cell);
    parts.add("---");
    parts.add(Caution.TEXT);
    String text = String.join("\n\n", parts) + "\n";
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(page.name() + ".md", text.getBytes(StandardCharsets.UTF_8));
    files.putAll(pictures);
    return files;
  }

  private void cell(Cell cell) {
    if (cell.kind() == Cell.Kind.MARKDOWN && !cell.source().isBlank()) {
      parts.add(prose(cell));
    } else if (cell.kind() == Cell.Kind.CODE && !cell.source().isBlank()) {
      number++;
      picture = 0;
      code(cell.source());
      cell.outputs().stream().map(this::output).filter(t -> !t.isEmpty()).forEach(parts::add);
    }
  }

  /** The text as it is, but for pictures: those that can be found travel along. */
  private String prose(Cell cell) {
    PictureSource source = new PictureSource(page.folder(), cell.attachments());
    Matcher found = PICTURE.matcher(cell.source().strip());
    return found.replaceAll(
        match -> {
          String address = match.group(2);
          String name = address.startsWith("attachment:") ? attached(source, address) : address;
          if (name.equals(address)) {
            source.file(address).ifPresent(this::travels);
          }
          String title = Optional.ofNullable(match.group(3)).orElse("");
          return Matcher.quoteReplacement("![" + match.group(1) + "](" + name + title + ")");
        });
  }

  private String attached(PictureSource source, String address) {
    return source
        .find(address)
        .filter(found -> ENDINGS.containsKey(found.type()))
        .map(
            found -> {
              String name = "%s-attached-%d.%s";
              name = name.formatted(page.name(), pictures.size() + 1, ENDINGS.get(found.type()));
              pictures.put(name, found.bytes());
              return address(name);
            })
        .orElse(address);
  }

  private void travels(Path inside) {
    try {
      byte[] bytes = Files.readAllBytes(page.folder().resolve(inside));
      pictures.put(inside.toString().replace('\\', '/'), bytes);
    } catch (IOException e) {
      // The page then shows the picture's words.
      pictures.remove(inside.toString());
    }
  }

  private void code(String source) {
    String block = Markdown.fenced("java", Escaped.plain(source.strip()));
    switch (page.code()) {
      case SHOWN -> parts.add(block);
      case FOLDED ->
          parts.add(
              "<details><summary>Code " + number + "</summary>\n\n" + block + "\n\n</details>");
      case NONE -> {}
    }
  }

  private String output(Output output) {
    if (output instanceof Output.Printed printed) {
      String text = Escaped.plain(printed.text());
      return text.isBlank() ? "" : Markdown.fenced("text", text);
    }
    if (output instanceof Output.Failed failed) {
      String said = Markdown.escaped(Escaped.plain(failed.message()));
      String trace = Escaped.plain(String.join("\n", failed.trace()));
      return "**" + said + "**\n\n" + Markdown.fenced("text", trace);
    }
    return given(((Output.Given) output).bundle());
  }

  private String given(MimeBundle bundle) {
    for (String type : ORDER) {
      String content = bundle.data().get(type);
      var found =
          content == null
              ? Optional.<PictureSource.Found>empty()
              : PictureSource.decoded(type, content);
      if (found.isPresent()) {
        return shown(bundle, name(ENDINGS.get(type)), found.get().bytes());
      }
    }
    String html = bundle.data().getOrDefault(MimeBundle.HTML, "");
    if (bundle.data().containsKey("text/markdown")) {
      return bundle.data().get("text/markdown").strip();
    }
    String text = Escaped.plain(bundle.text());
    return MarkdownTable.of(html)
        .orElseGet(() -> text.isBlank() ? "" : Markdown.fenced("text", text));
  }

  private String shown(MimeBundle bundle, String name, byte[] bytes) {
    pictures.put(name, bytes);
    String alt = Markdown.escaped(HtmlOutputs.told(bundle));
    String image = "![" + alt + "](" + address(name) + ")";
    Element frame =
        Jsoup.parseBodyFragment(bundle.data().getOrDefault(MimeBundle.HTML, ""))
            .selectFirst("iframe[srcdoc]");
    if (frame == null) {
      return image;
    }
    // The moving picture's own page, which a Markdown page cannot hold.
    String moving = name.replaceFirst("\\.[a-z]+$", ".html");
    pictures.put(moving, frame.attr("srcdoc").getBytes(StandardCharsets.UTF_8));
    return image + "\n\n[the moving picture as a page](" + address(moving) + ")";
  }

  private String name(String ending) {
    picture++;
    return page.name() + "-" + number + (picture == 1 ? "" : "-" + picture) + "." + ending;
  }

  private static String address(String name) {
    return name.replace(" ", "%20").replace("(", "%28").replace(")", "%29");
  }
}
