package org.leverbook.desk;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.leverbook.display.InputFile;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Saved;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;
import org.leverbook.language.Doorway;
import org.leverbook.language.Lesson;
import org.leverbook.notebook.Notebook;
import org.leverbook.quantity.Refused;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Problem;
import org.leverbook.session.Session;
import org.leverbook.session.Value;

/** How the words about the session reach the desk. */
final class DeskDoorway implements Doorway {

  private final Desk desk;
  private final Session session;
  private final Logbook logbook;
  private final Guide guide;
  private final TakingBack takingBack;
  private final Deque<Path> loading = new ArrayDeque<>();
  private boolean repeating;

  DeskDoorway(Desk desk, Session session, Logbook logbook, Guide guide) {
    this.desk = desk;
    this.session = session;
    this.logbook = logbook;
    this.guide = guide;
    this.takingBack = new TakingBack(session, logbook);
  }

  @Override
  public boolean isHere() {
    return session.runs(Thread.currentThread());
  }

  @Override
  public void aside() {
    desk.sayAside();
  }

  @Override
  public Sheet mine() {
    return Mine.of(session.belongings());
  }

  @Override
  public Sheet inputs() {
    return logbook.sheet();
  }

  @Override
  public void undo() {
    Entry running = desk.running();
    desk.ask(
        (each, line) -> {
          Value told = new Value(takingBack.last(running), line);
          each.accept(told);
          return good(told);
        });
  }

  private static Evaluation good(Value value) {
    return new Evaluation(Evaluation.Status.OK, Optional.of(value), Optional.empty(), List.of(), 1);
  }

  @Override
  public void again(int number) {
    if (repeating) {
      throw new Refused(
          "An input that runs another one again cannot itself be run again: ask for that other one. inputs() lists them.");
    }
    Entry wanted = logbook.wanted(number, desk.running());
    String text = wanted.again();
    desk.ask(
        (each, line) -> {
          repeating = true;
          try {
            return inside(text, "input " + wanted.number(), each, line);
          } finally {
            repeating = false;
          }
        });
  }

  private Evaluation inside(String text, String where, Consumer<Value> each, int line) {
    Evaluation evaluation = desk.run(text, each);
    List<String> outer = desk.running().text().lines().toList();
    String source = line <= outer.size() ? outer.get(line - 1) : "";
    Optional<Problem> problem =
        evaluation.problem().map(p -> Problems.within(p, where, line, source));
    return Problems.with(evaluation, problem);
  }

  @Override
  public void load(String name) {
    LessonFile file = LessonFile.read(name);
    if (loading.contains(file.path())) {
      throw new Refused(name + " loads itself, which would never end: take its load(…) out of it.");
    }
    desk.ask(
        (each, line) -> {
          loading.push(file.path());
          Path before = InputFile.runs(file.path());
          try {
            return loaded(file, each, line);
          } finally {
            InputFile.lookIn(before);
            loading.pop();
          }
        });
  }

  private Evaluation loaded(LessonFile file, Consumer<Value> each, int line) {
    int before = desk.running().done().size();
    Evaluation evaluation = inside(file.text(), file.name(), each, line);
    if (!evaluation.ok()) {
      return evaluation;
    }
    Set<String> names = new LinkedHashSet<>();
    List<Entry.Done> done = desk.running().done();
    done.subList(before, done.size()).forEach(piece -> names.addAll(piece.change().names()));
    int count = evaluation.unitsDone();
    String made = names.isEmpty() ? "." : ", and made " + String.join(", ", names) + ".";
    String statements = count == 1 ? " statement" : " statements";
    Value told = new Value(new Said(file.name() + " ran: " + count + statements + made), line);
    each.accept(told);
    return Problems.joined(evaluation, good(told));
  }

  @Override
  public Saved save(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    boolean notebook = lower.endsWith(".ipynb");
    if (!notebook && !lower.endsWith(".jsh")) {
      throw new Refused(
          "A session is saved as a script, whose name ends in .jsh, or as a notebook, in .ipynb: \""
              + name
              + "\" does not.");
    }
    List<String> cells = ScriptText.cells(logbook.entries());
    if (cells.isEmpty()) {
      throw new Refused("Nothing has worked yet that could be saved in " + name + ".");
    }
    aside();
    if (notebook) {
      Path file = Path.of(name).getFileName();
      return Notebook.of(cells, String.valueOf(file).replaceFirst("\\.[^.]*$", "")).save(name);
    }
    return new Saved(List.of(OutputFolder.write(name, desk.script())));
  }

  @Override
  public boolean offer(String code) {
    return desk.offer(code);
  }

  @Override
  public Shown trace() {
    Optional<Problem> problem = desk.lastProblem();
    if (problem.isEmpty()) {
      return new Said("Nothing has failed so far.");
    }
    if (problem.get().thrown().isEmpty()) {
      return new Said(
          "The last failure threw nothing: "
              + problem.get().message()
              + "\noriginal() has the compiler's own words.");
    }
    StringWriter text = new StringWriter();
    problem.get().thrown().get().printStackTrace(new PrintWriter(text, true));
    return new Said(text.toString().stripTrailing());
  }

  @Override
  public Shown original() {
    Optional<Problem> problem = desk.lastProblem();
    if (problem.isEmpty()) {
      return new Said("Nothing has failed so far.");
    }
    String words = problem.get().original();
    return new Said(
        words.isBlank()
            ? "Of the last failure the compiler said nothing: " + problem.get().message()
            : words);
  }

  @Override
  public Lesson lesson() {
    return guide.page();
  }
}
