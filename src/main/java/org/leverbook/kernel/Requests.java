package org.leverbook.kernel;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.leverbook.data.Version;
import org.leverbook.desk.Desk;
import org.leverbook.display.Caution;

/** The answers of the kernel, each between busy and idle. */
final class Requests {

  /**
   * Consoles ask at every line end whether a text is finished, hold their keys meanwhile, and never
   * ask again where the answer takes a second: before the session is ready they get none.
   */
  private static final long SOON = 150;

  private final Wire wire;
  private final Publisher publisher;
  private final CompletableFuture<Desk> desk;
  private final Execution execution;
  private final History history;
  private final Log log;
  private final Runnable ender;
  private final Map<String, Function<Message, ObjectNode>> answers;

  Requests(
      Wire wire,
      Publisher publisher,
      CompletableFuture<Desk> desk,
      Execution execution,
      History history,
      Log log,
      Runnable ender) {
    this.wire = wire;
    this.publisher = publisher;
    this.desk = desk;
    this.execution = execution;
    this.history = history;
    this.log = log;
    this.ender = ender;
    this.answers =
        Map.of(
            "kernel_info_request", request -> info(),
            "execute_request", execution::run,
            "complete_request", request -> assisted(Assistant::complete, request),
            "inspect_request", request -> assisted(Assistant::inspect, request),
            "is_complete_request", this::isComplete,
            "history_request", request -> history.answer(request.content()),
            "comm_info_request", request -> comms(),
            "interrupt_request", this::interrupt,
            "shutdown_request", this::shutdown);
  }

  /**
   * Answers a request.
   *
   * @param request what is asked
   * @param line where the answer goes
   */
  void answer(Message request, Line line) {
    answer(request, line, answers.get(request.type()), () -> {});
  }

  /** Answers a request that waited its turn; where a cell fails, those that wait are given up. */
  void answer(Queue.Turn turn, Line line, Queue queue) {
    Message request = turn.message();
    if (!request.type().equals("execute_request")) {
      answer(request, line);
    } else if (turn.givenUp()) {
      answer(request, line, given -> execution.givenUp(), () -> {});
    } else {
      boolean stops =
          Json.flag(request.content(), "stop_on_error", true)
              && !Json.flag(request.content(), "silent", false);
      answer(request, line, execution::run, stops ? () -> giveUp(line, queue) : () -> {});
    }
  }

  private void giveUp(Line line, Queue queue) {
    try {
      line.settle();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    queue.giveUp();
  }

  private void answer(
      Message request, Line line, Function<Message, ObjectNode> answer, Runnable onError) {
    publisher.status("busy", request.header());
    ObjectNode reply = null;
    try {
      if (answer != null) {
        reply = answer.apply(request);
      } else {
        unanswered(request);
      }
    } catch (RuntimeException | Error e) {
      log.failed("A " + request.type(), e);
      reply = Trouble.of(e).reply();
    }
    if (reply != null) {
      if (Json.text(reply, "status").equals("error")) {
        onError.run();
      }
      String type = request.type().replaceFirst("_request$", "_reply");
      line.send(wire.write(request.identities(), type, request.header(), reply));
    }
    publisher.status("idle", request.header());
    if (request.type().equals("shutdown_request")) {
      ender.run();
    }
  }

  /** What wants no reply. A channel for widgets is closed at once: none are served here. */
  private void unanswered(Message request) {
    if (request.type().equals("comm_open")) {
      ObjectNode close = Json.object();
      close.set("comm_id", request.content().path("comm_id"));
      close.set("data", Json.object());
      publisher.publish("comm_close", request.header(), close);
    }
  }

  private ObjectNode info() {
    ObjectNode reply = Json.object();
    reply.put("status", "ok");
    reply.put("protocol_version", Wire.PROTOCOL);
    reply.put("implementation", "leverbook");
    reply.put("implementation_version", Version.number());
    ObjectNode language = reply.putObject("language_info");
    language.put("name", "java");
    language.put("version", System.getProperty("java.version"));
    language.put("mimetype", "text/x-java");
    language.put("file_extension", ".java");
    language.put("pygments_lexer", "java");
    language.put("codemirror_mode", "text/x-java");
    reply.put(
        "banner",
        "Leverbook "
            + Version.number()
            + " on Java "
            + System.getProperty("java.version")
            + ". help() lists the words.\n"
            + Caution.TEXT);
    reply
        .putArray("help_links")
        .addObject()
        .put("text", "The Java language")
        .put("url", "https://docs.oracle.com/en/java/javase/17/");
    return reply;
  }

  private ObjectNode assisted(
      BiFunction<Assistant, ObjectNode, ObjectNode> asked, Message request) {
    return asked.apply(new Assistant(desk.join().session()), request.content());
  }

  private ObjectNode isComplete(Message request) {
    try {
      Desk ready = desk.get(SOON, TimeUnit.MILLISECONDS);
      return new Assistant(ready.session()).isComplete(request.content());
    } catch (TimeoutException | InterruptedException | ExecutionException e) {
      return Assistant.notKnownYet();
    }
  }

  private static ObjectNode comms() {
    ObjectNode reply = Json.object();
    reply.put("status", "ok");
    reply.putObject("comms");
    return reply;
  }

  private ObjectNode interrupt(Message request) {
    execution.stop();
    return Json.object().put("status", "ok");
  }

  private ObjectNode shutdown(Message request) {
    return Json.object()
        .put("status", "ok")
        .put("restart", Json.flag(request.content(), "restart", false));
  }
}
