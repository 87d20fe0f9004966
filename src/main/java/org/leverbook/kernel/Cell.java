package org.leverbook.kernel;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.leverbook.session.Errand;

/**
 * One request to evaluate, and the way to the reader for all that its code prints and shows, also
 * from threads that go on after its end.
 */
final class Cell implements Errand {

  private final Message request;
  private final int count;
  private final Publisher publisher;
  private final Printed printed;
  private final boolean silent;
  private volatile boolean stopAsked;
  private volatile boolean done;
  private ObjectNode held;

  /**
   * A cell.
   *
   * @param request what it answers
   * @param count the number its result bears
   * @param publisher tells everyone
   */
  Cell(Message request, int count, Publisher publisher) {
    this.request = request;
    this.count = count;
    this.publisher = publisher;
    this.silent = Json.flag(request.content(), "silent", false);
    this.printed = new Printed(this);
  }

  /** What it answers. */
  Message request() {
    return request;
  }

  /** Whether whoever asked can be asked for input. */
  boolean takesInput() {
    return !silent && !done && Json.flag(request.content(), "allow_stdin", true);
  }

  /** The text it prints. */
  Printed printed() {
    return printed;
  }

  /** Tells everyone something that belongs to this cell; a silent one tells nothing. */
  void tell(String type, ObjectNode content) {
    if (!silent) {
      publisher.publish(type, request.header(), content);
    }
  }

  /** Waits while too much is on its way to the readers. */
  void awaitRoom() throws InterruptedException {
    publisher.awaitRoom();
  }

  /**
   * Keeps a value until it is known whether it is the cell's last: the last one is the result, one
   * before it is shown on the way.
   */
  synchronized void hold(ObjectNode data) {
    release();
    held = data;
  }

  @Override
  public void goesOn() {
    release();
  }

  /** Shows the value that is held, as one on the way. */
  synchronized void release() {
    if (held != null) {
      ObjectNode shown = held;
      held = null;
      show("display_data", shown, "");
    }
  }

  /** Tells the value that is held as the result. */
  synchronized Optional<ObjectNode> result() {
    if (held == null) {
      return Optional.empty();
    }
    ObjectNode result = held;
    held = null;
    printed.flush();
    ObjectNode content = Json.object();
    content.put("execution_count", count);
    content.set("data", result);
    content.set("metadata", Json.object());
    tell("execute_result", content);
    return Optional.of(result);
  }

  /**
   * Shows a value on the way.
   *
   * @param type display_data, or update_display_data for one shown before
   * @param data its forms
   * @param place the name of its place; empty where nothing else will stand there
   */
  void show(String type, ObjectNode data, String place) {
    printed.flush();
    ObjectNode content = Json.object();
    content.set("data", data);
    content.set("metadata", Json.object());
    ObjectNode transients = content.putObject("transient");
    if (!place.isEmpty()) {
      transients.put("display_id", place);
    }
    tell(type, content);
  }

  /** Someone asked it to stop. */
  void askToStop() {
    stopAsked = true;
  }

  boolean stopAsked() {
    return stopAsked;
  }

  /** It has been answered; threads of its may go on. */
  void finish() {
    done = true;
  }

  boolean isDone() {
    return done;
  }
}
