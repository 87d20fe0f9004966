package org.leverbook.kernel;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import org.jline.utils.Signals;
import org.leverbook.desk.Desk;
import org.leverbook.display.OwnFolder;
import org.leverbook.language.Leaving;
import org.leverbook.quantity.Refused;
import org.zeromq.ZContext;

/** A kernel that listens, from its start until someone asks it to end. One in a process. */
public final class Kernel implements AutoCloseable {

  private final Log log = new Log(System.err);
  private final ZContext context = new ZContext();
  private final Queue queue = new Queue();
  private final CountDownLatch ended = new CountDownLatch(1);
  private final CompletableFuture<Desk> desk;
  private final Publisher publisher;
  private final Line shell;
  private final Line control;
  private final Line stdin;
  private final Line heartbeat;
  private final TypedInput input;
  private final Stand stand;
  private final Wire wire;
  private final Execution execution;
  private final Requests requests;
  private final Thread worker;

  private Kernel(Connection connection, Path stateFolder, CompletableFuture<Desk> desk) {
    this.desk = desk;
    this.wire = new Wire(new Seal(connection.secret()), log);
    context.setLinger(500);
    try {
      this.publisher = new Publisher(context, connection.address(connection.iopub()), wire, log);
      this.shell = line("shell", connection.address(connection.shell()), this::onShell);
      this.control = line("control", connection.address(connection.control()), this::onControl);
      this.stdin = line("stdin", connection.address(connection.stdin()), this::onStdin);
      this.heartbeat = line("heartbeat", connection.address(connection.heartbeat()), this::onBeat);
    } catch (Refused e) {
      context.close();
      throw e;
    }
    this.input = new TypedInput(this::ask);
    this.stand = new Stand(input, log);
    input.readers(stand::cell);
    History history = new History(new HistoryFile(stateFolder.resolve("notebook-history"), log));
    this.execution = new Execution(desk, publisher, stand, input, history);
    this.requests = new Requests(wire, publisher, desk, execution, history, log, ended::countDown);
    this.worker = new Thread(this::work, "leverbook requests");
    worker.setDaemon(true);
  }

  /**
   * Starts a kernel: its sockets are bound and it answers, while the session gets ready behind.
   *
   * @param connection where it listens
   * @return the kernel
   * @throws Refused if one of the ports is taken
   */
  public static Kernel start(Connection connection) {
    return start(connection, OwnFolder.STATE.of(System.getenv(), System.getProperties()));
  }

  /** The same, with the history in a given folder. */
  static Kernel start(Connection connection, Path stateFolder) {
    Leaving.forget();
    CompletableFuture<Desk> desk = new CompletableFuture<>();
    CompletableFuture<Kernel> started = new CompletableFuture<>();
    Thread opener = new Thread(() -> open(desk, started), "leverbook start");
    opener.setDaemon(true);
    opener.start();
    Kernel kernel;
    try {
      kernel = new Kernel(connection, stateFolder, desk);
    } catch (Refused e) {
      desk.thenAccept(Desk::close);
      throw e;
    }
    kernel.publisher.start();
    kernel.publisher.status("starting", Json.object());
    for (Line each : List.of(kernel.heartbeat, kernel.control, kernel.stdin, kernel.shell)) {
      each.start();
    }
    kernel.worker.start();
    started.complete(kernel);
    return kernel;
  }

  private Line line(String name, String address, java.util.function.Consumer<List<byte[]>> taker) {
    return new Line(context, name, address, taker, log);
  }

  /** Opens the session beside the sockets, and does once what its user will do first. */
  private static void open(CompletableFuture<Desk> desk, CompletableFuture<Kernel> started) {
    try {
      Desk opened = Desk.open();
      desk.complete(opened);
      WarmUp.of(opened.session(), () -> started.join().execution.isBusy());
    } catch (RuntimeException | Error e) {
      desk.completeExceptionally(e);
      started.thenAccept(kernel -> kernel.log.failed("The start of the session", e));
    }
  }

  private void onShell(List<byte[]> frames) {
    wire.read("shell", frames).ifPresent(queue::add);
  }

  private void onControl(List<byte[]> frames) {
    wire.read("control", frames).ifPresent(request -> requests.answer(request, control));
  }

  private void onStdin(List<byte[]> frames) {
    wire.read("stdin", frames)
        .filter(message -> message.type().equals("input_reply"))
        .ifPresent(message -> input.answer(Json.text(message.content(), "value")));
  }

  private void ask(Cell cell, ObjectNode asked) {
    Message request = cell.request();
    stdin.send(wire.write(request.identities(), "input_request", request.header(), asked));
  }

  private void onBeat(List<byte[]> frames) {
    heartbeat.send(frames);
  }

  private void work() {
    while (true) {
      try {
        Optional<Queue.Turn> next = queue.next();
        if (next.isEmpty()) {
          return;
        }
        requests.answer(next.get(), shell, queue);
      } catch (InterruptedException e) {
        // A stop that came too late for its cell.
        continue;
      } catch (RuntimeException | Error e) {
        log.failed("A request", e);
      }
    }
  }

  /**
   * Makes the process's interrupt signal stop the running cell, and ends the kernel when the
   * process that started it is gone, where that one is known.
   *
   * @param environment the environment variables
   */
  public void heed(Map<String, String> environment) {
    Signals.register("INT", execution::stop);
    String parent = environment.getOrDefault("JPY_PARENT_PID", "");
    if (parent.matches("[1-9]\\d{0,17}") && !parent.equals("1")) {
      ProcessHandle.of(Long.parseLong(parent))
          .ifPresent(process -> process.onExit().thenRun(ended::countDown));
    }
  }

  /**
   * Waits until someone asks the kernel to end.
   *
   * @throws InterruptedException if the waiting thread is interrupted
   */
  public void awaitEnd() throws InterruptedException {
    ended.await();
  }

  /** Ends: what is to be sent is sent, within a second; code that runs is left behind. */
  @Override
  public void close() {
    ended.countDown();
    queue.close();
    execution.stop();
    for (Line each : List.of(shell, control, stdin, heartbeat)) {
      each.close();
    }
    publisher.close();
    stand.close();
    context.close();
  }

  /** Ends the session too, once what runs there has stopped. */
  void closeSession() {
    desk.thenAccept(Desk::close);
  }
}
