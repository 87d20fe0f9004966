package org.leverbook.kernel;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** The requests that wait for their turn, in the order they came. */
final class Queue {

  /**
   * A request that waited.
   *
   * @param message what is asked
   * @param givenUp whether it was given up, because one before it failed
   */
  record Turn(Message message, boolean givenUp) {}

  private record Waiting(Message message, long number) {}

  private final Deque<Waiting> waiting = new ArrayDeque<>();
  private long number;
  private long givenUpTo;
  private boolean closed;

  synchronized void add(Message message) {
    number++;
    waiting.add(new Waiting(message, number));
    notifyAll();
  }

  /** Gives up the cells that wait now; those that come later run. */
  synchronized void giveUp() {
    givenUpTo = number;
  }

  /** The next one, as soon as there is one; empty once the queue is closed. */
  synchronized Optional<Turn> next() throws InterruptedException {
    while (waiting.isEmpty() && !closed) {
      wait();
    }
    if (closed) {
      return Optional.empty();
    }
    Waiting next = waiting.remove();
    return Optional.of(new Turn(next.message(), next.number() <= givenUpTo));
  }

  synchronized void close() {
    closed = true;
    notifyAll();
  }
}
