package org.leverbook.kernel;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.leverbook.desk.Desk;
import org.leverbook.display.OnStage;
import org.leverbook.display.Stop;
import org.leverbook.language.Leaving;
import org.leverbook.notebook.MimeBundle;
import org.leverbook.quantity.Refused;
import org.leverbook.session.Errands;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Value;

/** Runs cells, one at a time, on the thread that calls; stops them from any other. */
final class Execution {

  private static final String STOPPED = "Stopped";
  private static final long LOOK = 20;

  private final CompletableFuture<Desk> desk;
  private final Publisher publisher;
  private final Stand stand;
  private final TypedInput input;
  private final History history;
  private final Object showing = new Object();
  private volatile Cell current;
  private Thread shower;
  private int count;

  Execution(
      CompletableFuture<Desk> desk,
      Publisher publisher,
      Stand stand,
      TypedInput input,
      History history) {
    this.desk = desk;
    this.publisher = publisher;
    this.stand = stand;
    this.input = input;
    this.history = history;
  }

  /** A value that cannot be shown, and the line of its expression. */
  private static final class NotShown extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Trouble trouble;

    NotShown(Trouble trouble) {
      super(trouble.words(), null, false, false);
      this.trouble = trouble;
    }
  }

  /** What a text came to. */
  private record Outcome(Optional<Trouble> trouble, Optional<ObjectNode> value) {
    static Outcome bad(Trouble trouble) {
      return new Outcome(Optional.of(trouble), Optional.empty());
    }
  }

  /**
   * Answers an execute_request.
   *
   * @return the reply
   */
  ObjectNode run(Message request) {
    ObjectNode asked = request.content();
    if (!asked.path("code").isTextual()) {
      ObjectNode reply = Trouble.of("NoCode", "The request has no code to run.").reply();
      return reply.put("execution_count", count);
    }
    String code = Json.text(asked, "code");
    boolean silent = Json.flag(asked, "silent", false);
    boolean kept = !silent && Json.flag(asked, "store_history", true);
    if (kept) {
      count++;
    }
    Cell cell = new Cell(request, count, publisher);
    // Before anyone hears of the cell: whoever stops it then must find it.
    current = cell;
    try {
      if (kept) {
        history.add(count, code);
      }
      cell.tell("execute_input", Json.object().put("code", code).put("execution_count", count));
      input.forget();
      stand.turnTo(cell);
      return answer(cell, code);
    } finally {
      current = null;
      cell.printed().flush();
      cell.finish();
      // A stop that came at the very end is over with its cell.
      Thread.interrupted();
    }
  }

  /** Whether a cell runs, or waits for the session. */
  boolean isBusy() {
    return current != null;
  }

  private ObjectNode answer(Cell cell, String code) {
    Outcome outcome = Errands.during(cell, () -> outcome(cell, code));
    ObjectNode reply = Json.object();
    if (outcome.trouble().isPresent()) {
      Trouble trouble = outcome.trouble().get();
      cell.printed().flush();
      cell.tell("error", trouble.fields());
      return trouble.reply().put("execution_count", count);
    }
    reply.put("status", "ok");
    reply.put("execution_count", count);
    var payload = reply.putArray("payload");
    if (Leaving.isAsked()) {
      Leaving.forget();
      payload.addObject().put("source", "ask_exit").put("keepkernel", false);
    }
    reply.set("user_expressions", expressions(cell));
    return reply;
  }

  private Outcome outcome(Cell cell, String code) {
    try {
      Desk ready = awaitDesk(cell);
      if (ready == null || cell.stopAsked()) {
        return Outcome.bad(Trouble.of(STOPPED, "Stopped before it began."));
      }
      Evaluation evaluation = ready.evaluate(code, value -> hold(cell, value));
      if (!evaluation.ok()) {
        cell.release();
        return Outcome.bad(Trouble.of(evaluation));
      }
      Optional<ObjectNode> result = Optional.empty();
      if (evaluation.value().isPresent()) {
        result = cell.result();
        result.ifPresent(forms -> history.gave(Json.text(forms, MimeBundle.TEXT)));
      } else {
        cell.release();
      }
      tellNotes(cell, evaluation);
      return new Outcome(Optional.empty(), result);
    } catch (NotShown e) {
      return Outcome.bad(e.trouble);
    } catch (Stop e) {
      return Outcome.bad(Trouble.of(STOPPED, "Stopped; what was done until then is kept."));
    } catch (RuntimeException | Error e) {
      return Outcome.bad(Trouble.of(e instanceof CompletionException ? e.getCause() : e));
    }
  }

  private static void tellNotes(Cell cell, Evaluation evaluation) {
    StringBuilder notes = new StringBuilder();
    evaluation.notes().forEach(note -> notes.append(note).append('\n'));
    if (Leaving.isAsked()) {
      notes.append("quit() ends a shell. A notebook's kernel is ended by the notebook itself.\n");
    }
    byte[] bytes = notes.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8);
    cell.printed().print("stderr", bytes, 0, bytes.length);
  }

  private Desk awaitDesk(Cell cell) {
    while (!cell.stopAsked()) {
      try {
        return desk.get(LOOK, TimeUnit.MILLISECONDS);
      } catch (TimeoutException e) {
        continue;
      } catch (ExecutionException e) {
        throw new CompletionException(e.getCause());
      } catch (InterruptedException e) {
        return null;
      }
    }
    return null;
  }

  private void hold(Cell cell, Value value) {
    cell.printed().flush();
    cell.release();
    if (value.object() instanceof OnStage) {
      // It stands there already.
      return;
    }
    synchronized (showing) {
      shower = Thread.currentThread();
    }
    try {
      cell.hold(Forms.of(value.shown()));
    } catch (Refused e) {
      throw new NotShown(Trouble.of(e, value.line()));
    } finally {
      synchronized (showing) {
        shower = null;
        // A stop while showing may have come too late to meet a check.
        if (Thread.interrupted()) {
          cell.askToStop();
        }
      }
    }
  }

  private ObjectNode expressions(Cell cell) {
    ObjectNode answers = Json.object();
    for (var each : cell.request().content().path("user_expressions").properties()) {
      answers.set(each.getKey(), Errands.during(cell, () -> expression(each.getValue())));
    }
    return answers;
  }

  private ObjectNode expression(JsonNode text) {
    try {
      Evaluation evaluation =
          desk.join().session().evaluate(text.isTextual() ? text.textValue() : "");
      if (!evaluation.ok()) {
        return Trouble.of(evaluation).reply();
      }
      if (evaluation.value().isEmpty()) {
        return Trouble.of("NoValue", "This has no value: " + text.asText() + ".").reply();
      }
      ObjectNode answer = Json.object().put("status", "ok");
      answer.set("data", Forms.of(evaluation.value().get().shown()));
      answer.set("metadata", Json.object());
      return answer;
    } catch (Refused e) {
      return Trouble.of(e, 1).reply();
    } catch (RuntimeException | Error e) {
      return Trouble.of(e).reply();
    }
  }

  /** The reply for a cell that was given up. */
  ObjectNode givenUp() {
    return Json.object().put("status", "aborted").put("execution_count", count);
  }

  /**
   * Stops the cell that runs; does nothing where none does. Returns at once; the cell ends soon
   * after, and what was computed stays.
   */
  void stop() {
    Cell running = current;
    if (running == null || running.stopAsked()) {
      return;
    }
    running.askToStop();
    Thread stopper = new Thread(() -> stop(running), "leverbook stop");
    stopper.setDaemon(true);
    stopper.start();
  }

  private void stop(Cell running) {
    try {
      desk.get();
      // A cell that is just beginning, or between two texts, hears it the next time.
      boolean heard = false;
      while (!heard && current == running) {
        heard = desk.join().session().stop();
        synchronized (showing) {
          if (shower != null && current == running) {
            shower.interrupt();
          }
        }
        if (!heard) {
          Thread.sleep(LOOK);
        }
      }
    } catch (InterruptedException | ExecutionException e) {
      // Without a session, nothing runs that could be stopped.
      return;
    }
  }
}
