package org.leverbook.terminal;

import java.util.ArrayList;
import java.util.List;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStringBuilder;
import org.leverbook.session.CallHint;
import org.leverbook.terminal.Palette.Role;

/** What a call takes, in dim lines with the current parameter marked. */
final class HintLines {

  private static final String CUT = "…";

  private final Palette palette;

  HintLines(Palette palette) {
    this.palette = palette;
  }

  /**
   * The lines.
   *
   * @param hint what the call takes
   * @param columns the width there is
   * @param most how many lines there may be, from 1
   */
  List<AttributedString> of(CallHint hint, int columns, int most) {
    List<AttributedString> lines = new ArrayList<>();
    int all = hint.forms().size();
    int shown = all <= most ? all : Math.max(1, most - 1);
    for (String form : hint.forms().subList(0, shown)) {
      lines.add(fitted(new Form(form), hint.parameter(), columns));
    }
    if (shown < all && most > 1) {
      String rest = CUT + " and " + (all - shown) + " more";
      lines.add(new AttributedString(rest, palette.style(Role.ASIDE)));
    }
    return lines;
  }

  private AttributedString fitted(Form form, int current, int columns) {
    AttributedStringBuilder line = new AttributedStringBuilder();
    line.append(form.head(), palette.style(Role.ASIDE));
    int marked = form.marked(current);
    int markedEnd = 0;
    for (int i = 0; i < form.parameters().size(); i++) {
      Role role = i == marked ? Role.CURRENT : Role.ASIDE;
      line.append(i == 0 ? "" : ", ", palette.style(Role.ASIDE));
      line.append(form.parameters().get(i), palette.style(role));
      markedEnd = i == marked ? line.columnLength() : markedEnd;
    }
    line.append(form.tail(), palette.style(Role.ASIDE));
    return cut(line.toAttributedString(), markedEnd, columns - 1);
  }

  /** Cut to the width, so that the marked parameter stays in sight. */
  private AttributedString cut(AttributedString line, int markedEnd, int columns) {
    if (line.columnLength() <= columns) {
      return line;
    }
    AttributedString dots = new AttributedString(CUT, palette.style(Role.ASIDE));
    int from = Math.max(0, markedEnd + 1 - columns);
    AttributedStringBuilder kept = new AttributedStringBuilder();
    int room = columns;
    if (from > 0) {
      kept.append(dots);
      from++;
      room--;
    }
    boolean endsLater = line.columnLength() > from + room;
    kept.append(line.columnSubSequence(from, from + room - (endsLater ? 1 : 0)));
    return endsLater ? kept.append(dots).toAttributedString() : kept.toAttributedString();
  }

  /** A signature in its parts: up to the bracket, the parameters, from the closing bracket on. */
  private record Form(String head, List<String> parameters, String tail) {

    Form(String signature) {
      this(signature, signature.indexOf('('));
    }

    private Form(String signature, int open) {
      this(
          open < 0 ? signature : signature.substring(0, open + 1),
          open < 0 ? List.of() : parameters(signature, open + 1),
          open < 0 ? "" : signature.substring(end(signature, open + 1)));
    }

    /** Which parameter a place belongs to: the last one where it can repeat; -1 for none. */
    int marked(int current) {
      int last = parameters.size() - 1;
      boolean repeats = last >= 0 && parameters.get(last).contains("...");
      return current <= last ? current : repeats ? last : -1;
    }

    private static int end(String text, int from) {
      int depth = 0;
      for (int at = from; at < text.length(); at++) {
        depth += depth(text, at);
        if (depth < 0) {
          return at;
        }
      }
      return text.length();
    }

    private static List<String> parameters(String text, int from) {
      List<String> found = new ArrayList<>();
      int end = end(text, from);
      int depth = 0;
      int begin = from;
      for (int at = from; at < end; at++) {
        depth += depth(text, at);
        if (text.charAt(at) == ',' && depth == 0) {
          found.add(text.substring(begin, at).strip());
          begin = at + 1;
        }
      }
      String last = text.substring(begin, end).strip();
      if (!last.isEmpty()) {
        found.add(last);
      }
      return found;
    }

    private static int depth(String text, int at) {
      char c = text.charAt(at);
      boolean arrow = c == '>' && at > 0 && text.charAt(at - 1) == '-';
      return "(<[{".indexOf(c) >= 0 ? 1 : ")>]}".indexOf(c) >= 0 && !arrow ? -1 : 0;
    }
  }
}
