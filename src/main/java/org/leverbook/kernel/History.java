package org.leverbook.kernel;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.leverbook.kernel.HistoryFile.Entry;

/** What was evaluated, in this session and in earlier ones. */
final class History {

  private static final int LONGEST_OUTPUT = 2_000;

  private final HistoryFile file;
  private final List<Entry> own = new ArrayList<>();

  History(HistoryFile file) {
    this.file = file;
  }

  /** Remembers a cell. */
  synchronized void add(int line, String code) {
    Entry entry = new Entry(file.session(), line, code, "");
    own.add(entry);
    file.add(entry);
  }

  /** Remembers what the last cell gave. */
  synchronized void gave(String text) {
    int last = own.size() - 1;
    if (last >= 0) {
      Entry entry = own.get(last);
      String kept = text.length() > LONGEST_OUTPUT ? text.substring(0, LONGEST_OUTPUT) + "…" : text;
      own.set(last, new Entry(entry.session(), entry.line(), entry.code(), kept));
    }
  }

  /** Answers a history_request. */
  synchronized ObjectNode answer(ObjectNode asked) {
    List<Entry> found =
        switch (Json.text(asked, "hist_access_type")) {
          case "tail" -> last(all(), Json.number(asked, "n", all().size()));
          case "range" -> range(asked);
          case "search" -> search(asked);
          default -> List.of();
        };
    boolean output = Json.flag(asked, "output", false);
    ArrayNode list = Json.array();
    for (Entry entry : found) {
      ArrayNode row = list.addArray().add(entry.session()).add(entry.line());
      if (output) {
        ArrayNode both = row.addArray().add(entry.code());
        both.add(entry.output().isEmpty() ? null : entry.output());
      } else {
        row.add(entry.code());
      }
    }
    ObjectNode reply = Json.object();
    reply.put("status", "ok");
    reply.set("history", list);
    return reply;
  }

  private List<Entry> all() {
    return Stream.concat(file.before().stream(), own.stream()).toList();
  }

  private static List<Entry> last(List<Entry> entries, int count) {
    int from = Math.max(0, entries.size() - Math.max(0, count));
    return entries.subList(from, entries.size());
  }

  private List<Entry> range(ObjectNode asked) {
    int session = Json.number(asked, "session", 0);
    int wanted = session;
    if (session <= 0) {
      // Counted back among the sessions that have cells; 0 is this one.
      TreeSet<Integer> numbers = new TreeSet<>();
      file.before().forEach(entry -> numbers.add(entry.session()));
      List<Integer> back = new ArrayList<>(numbers.descendingSet());
      back.add(0, file.session());
      wanted = -(long) session < back.size() ? back.get(-session) : -1;
    }
    int number = wanted;
    int start = Json.number(asked, "start", 0);
    int stop = Json.number(asked, "stop", Integer.MAX_VALUE);
    return all().stream()
        .filter(e -> e.session() == number && e.line() >= start && e.line() < stop)
        .toList();
  }

  private List<Entry> search(ObjectNode asked) {
    String pattern = asked.path("pattern").isTextual() ? Json.text(asked, "pattern") : "*";
    Pattern wanted = Pattern.compile(regex(pattern), Pattern.DOTALL);
    List<Entry> found =
        new ArrayList<>(all().stream().filter(e -> wanted.matcher(e.code()).matches()).toList());
    if (Json.flag(asked, "unique", false)) {
      Map<String, Entry> latest = new LinkedHashMap<>();
      for (Entry entry : found) {
        latest.remove(entry.code());
        latest.put(entry.code(), entry);
      }
      found = new ArrayList<>(latest.values());
    }
    return last(Collections.unmodifiableList(found), Json.number(asked, "n", found.size()));
  }

  /** A pattern of the kind that names files: * stands for anything, ? for one letter. */
  private static String regex(String pattern) {
    StringBuilder regex = new StringBuilder();
    for (String part : pattern.split("(?<=[*?])|(?=[*?])")) {
      regex.append(
          switch (part) {
            case "*" -> ".*";
            case "?" -> ".";
            default -> Pattern.quote(part);
          });
    }
    return regex.toString();
  }
}
