package org.leverbook.kernel;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.Pipe;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.leverbook.quantity.Refused;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;
import org.zeromq.ZMQException;

/**
 * One socket that answers, and the thread that alone touches it. Frames to send may come from any
 * thread.
 */
final class Line implements AutoCloseable {

  /** Nothing larger is a message of a notebook, in bytes. */
  private static final long LARGEST = 256L * 1024 * 1024;

  private static final int AT_ONCE = 100;
  private static final long PATIENCE = 1_000;

  private final String name;
  private final Log log;
  private final Consumer<List<byte[]>> taker;
  private final ZMQ.Socket socket;
  private final ZMQ.Poller poller;
  private final Pipe bell;
  private final Queue<List<byte[]>> leaving = new ConcurrentLinkedQueue<>();
  private final Queue<CountDownLatch> waiting = new ConcurrentLinkedQueue<>();
  private final Thread thread;
  private volatile boolean closed;

  /**
   * A line, bound and listening once it is started.
   *
   * @param context the sockets' context
   * @param name what it is called in the log
   * @param address where it listens
   * @param taker takes the frames of each message, on this line's thread
   * @param log hears of what failed
   * @throws Refused if the address is taken
   */
  Line(ZContext context, String name, String address, Consumer<List<byte[]>> taker, Log log) {
    this.name = name;
    this.log = log;
    this.taker = taker;
    this.socket = context.createSocket(SocketType.ROUTER);
    socket.setMaxMsgSize(LARGEST);
    socket.setHWM(0);
    // A client that comes back under its old name takes its place again.
    socket.setRouterHandover(true);
    bind(socket, name, address);
    this.poller = context.createPoller(2);
    try {
      this.bell = Pipe.open();
      bell.source().configureBlocking(false);
      bell.sink().configureBlocking(false);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    poller.register(socket, ZMQ.Poller.POLLIN);
    poller.register(bell.source(), ZMQ.Poller.POLLIN);
    this.thread = new Thread(this::run, "leverbook " + name + " line");
    thread.setDaemon(true);
  }

  /** Binds a socket, or says why not. */
  static void bind(ZMQ.Socket socket, String name, String address) {
    try {
      if (socket.bind(address)) {
        return;
      }
    } catch (ZMQException | IllegalArgumentException | IllegalStateException e) {
      throw taken(name, address, e);
    }
    throw taken(name, address, null);
  }

  private static Refused taken(String name, String address, Exception cause) {
    return new Refused(
        "The kernel cannot listen at "
            + address.replace("tcp://", "")
            + " (its "
            + name
            + " port): another program listens there already, or the address is not this"
            + " machine's. Start the kernel again; Jupyter then picks other ports.",
        cause);
  }

  void start() {
    thread.start();
  }

  /** Sends frames soon. */
  void send(List<byte[]> frames) {
    leaving.add(frames);
    ring();
  }

  /** Waits until what has arrived is handed over, a second at most. Not for this line's thread. */
  void settle() throws InterruptedException {
    CountDownLatch settled = new CountDownLatch(1);
    waiting.add(settled);
    ring();
    settled.await(PATIENCE, TimeUnit.MILLISECONDS);
  }

  private void ring() {
    try {
      // A full pipe rings loudly enough.
      bell.sink().write(ByteBuffer.wrap(new byte[1]));
    } catch (IOException e) {
      if (!closed) {
        log.failed("The bell of the " + name + " line", e);
      }
    }
  }

  private void run() {
    ByteBuffer rings = ByteBuffer.allocate(256);
    while (true) {
      try {
        poller.poll(-1);
        while (bell.source().read(rings.clear()) == rings.capacity()) {
          rings.clear();
        }
        boolean ending = closed;
        List<CountDownLatch> asked = new ArrayList<>(waiting);
        takeAll();
        waiting.removeAll(asked);
        asked.forEach(CountDownLatch::countDown);
        sendAll();
        if (ending) {
          break;
        }
      } catch (IOException | RuntimeException | Error e) {
        if (closed) {
          break;
        }
        log.failed("The " + name + " line", e);
      }
    }
    socket.close();
    poller.close();
    closeBell();
  }

  private void takeAll() {
    for (int i = 0; i < AT_ONCE; i++) {
      byte[] first = socket.recv(ZMQ.DONTWAIT);
      if (first == null) {
        return;
      }
      List<byte[]> frames = new ArrayList<>();
      frames.add(first);
      while (socket.hasReceiveMore()) {
        frames.add(socket.recv());
      }
      try {
        taker.accept(frames);
      } catch (RuntimeException | StackOverflowError e) {
        log.failed("A message on the " + name + " line", e);
      }
    }
    ring();
  }

  private void sendAll() {
    List<byte[]> frames = leaving.poll();
    while (frames != null) {
      for (int i = 0; i < frames.size(); i++) {
        // A client that has gone is no error: what is meant for it is dropped.
        socket.send(frames.get(i), i < frames.size() - 1 ? ZMQ.SNDMORE : 0);
      }
      frames = leaving.poll();
    }
  }

  private void closeBell() {
    try {
      bell.sink().close();
      bell.source().close();
    } catch (IOException e) {
      log.failed("Closing the " + name + " line", e);
    }
  }

  /** Sends what is still to be sent and ends; waits a second for it at most. */
  @Override
  public void close() {
    closed = true;
    ring();
    try {
      thread.join(PATIENCE);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
