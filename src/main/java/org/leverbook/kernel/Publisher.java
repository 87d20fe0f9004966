package org.leverbook.kernel;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/**
 * Tells everyone what happens, in order. One thread owns the socket; messages may come from any.
 *
 * <p>The socket of the protocol drops what a reader does not take in time. This one waits for a
 * slow reader instead; one that takes nothing for five seconds no longer holds up the others, who
 * then get what is told at a pace that any reader keeps.
 */
final class Publisher implements AutoCloseable {

  /** From here on those who print or show wait, in bytes. */
  private static final long ENOUGH = 16L * 1024 * 1024;

  private static final int MESSAGES_A_READER_MAY_LAG = 1_000;
  private static final int PATIENCE = 5_000;
  private static final int LITTLE_PATIENCE = 100;
  private static final long FORGIVEN = 10_000_000_000L;

  /** The pace beside a reader that takes nothing, in bytes a millisecond; a message takes one. */
  private static final long PACE = 10_000;

  private final Wire wire;
  private final Log log;
  private final ZMQ.Socket socket;
  private final Thread thread;
  private final Deque<List<byte[]>> queue = new ArrayDeque<>();
  private long waiting;
  private boolean closed;
  private boolean dropping;
  private long dropped;

  Publisher(ZContext context, String address, Wire wire, Log log) {
    this.wire = wire;
    this.log = log;
    this.socket = context.createSocket(SocketType.PUB);
    socket.setSndHWM(MESSAGES_A_READER_MAY_LAG);
    Line.bind(socket, "iopub", address);
    this.thread = new Thread(this::run, "leverbook iopub line");
    thread.setDaemon(true);
  }

  void start() {
    thread.start();
  }

  /**
   * Tells something.
   *
   * @param type the kind of message
   * @param parent the header of the request it belongs to
   * @param content what it says
   */
  void publish(String type, JsonNode parent, JsonNode content) {
    byte[] topic = ("kernel." + type).getBytes(StandardCharsets.US_ASCII);
    // Writing and signing under the lock keeps the numbers of the messages in their order.
    synchronized (queue) {
      List<byte[]> frames = wire.write(List.of(topic), type, parent, content);
      queue.add(frames);
      waiting += size(frames);
      queue.notifyAll();
    }
  }

  /** Tells what the kernel is doing: starting, busy or idle. */
  void status(String state, JsonNode parent) {
    ObjectNode content = Json.object();
    content.put("execution_state", state);
    publish("status", parent, content);
  }

  /** Waits while too much is on its way, so that a flood fills no memory. */
  void awaitRoom() throws InterruptedException {
    synchronized (queue) {
      while (waiting > ENOUGH && !closed) {
        queue.wait();
      }
    }
  }

  private static long size(List<byte[]> frames) {
    return frames.stream().mapToLong(frame -> frame.length).sum();
  }

  private void run() {
    try {
      List<byte[]> frames = next();
      while (frames != null) {
        try {
          send(frames);
        } catch (InterruptedException | RuntimeException | Error e) {
          log.failed("The iopub line", e);
        }
        synchronized (queue) {
          waiting -= size(frames);
          queue.notifyAll();
        }
        frames = next();
      }
    } finally {
      socket.close();
    }
  }

  private List<byte[]> next() {
    synchronized (queue) {
      while (queue.isEmpty() && !closed) {
        try {
          queue.wait();
        } catch (InterruptedException e) {
          // Nobody has a reason to interrupt this thread; it ends by being closed.
          log.say("The iopub line was interrupted, and goes on.");
        }
      }
      return queue.poll();
    }
  }

  private void send(List<byte[]> frames) throws InterruptedException {
    if (!dropping || System.nanoTime() - dropped > FORGIVEN) {
      socket.setXpubNoDrop(true);
      socket.setSendTimeOut(dropping ? LITTLE_PATIENCE : PATIENCE);
      if (sent(frames)) {
        dropping = false;
        return;
      }
      log.say("A reader takes nothing any more: what it misses is left out.");
      dropping = true;
      dropped = System.nanoTime();
      socket.setXpubNoDrop(false);
    }
    sent(frames);
    Thread.sleep(1 + size(frames) / PACE);
  }

  private boolean sent(List<byte[]> frames) {
    for (int i = 0; i < frames.size(); i++) {
      boolean more = i < frames.size() - 1;
      if (!socket.send(frames.get(i), more ? ZMQ.SNDMORE : 0)) {
        return false;
      }
    }
    return true;
  }

  /** Sends what is still to be sent and ends; waits a second for it at most. */
  @Override
  public void close() {
    synchronized (queue) {
      closed = true;
      queue.notifyAll();
    }
    try {
      thread.join(1_000);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
