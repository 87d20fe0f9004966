package org.leverbook.session;

import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.locks.ReentrantLock;
import jdk.jshell.JShell;
import jdk.jshell.VarSnippet;
import jdk.jshell.execution.DirectExecutionControl;

/**
 * Runs compiled units on threads of its own and keeps what they return or throw.
 *
 * <p>The JDK's engines hand back a text of the result, and stop code by means that differ between
 * Java 17 and 25; this one does neither.
 */
final class Engine extends DirectExecutionControl {

  /** Code that has not ended this long after a stop is left behind, in milliseconds. */
  private static final long PATIENCE = 3_000;

  private static final long POLL = 100;

  private final SnippetLoader loader;
  private final ReentrantLock compiling;
  private final Object monitor = new Object();

  private volatile Workers workers;
  private boolean evaluating;
  private volatile boolean stopAsked;
  private volatile long askedAt;
  private volatile boolean leftBehind;
  private volatile Fullness fullness;
  private volatile Fullness behind;
  private Object result;
  private Throwable failure;
  private boolean started;
  private boolean ended;
  private Field field;

  /**
   * An engine.
   *
   * @param loader where compiled code goes
   * @param compiling the lock held while a unit is compiled; given back while it runs
   */
  Engine(SnippetLoader loader, ReentrantLock compiling) {
    super(loader);
    this.loader = loader;
    this.compiling = compiling;
    this.workers = new Workers(loader);
    Memory.watch(this);
  }

  /** A text is about to be evaluated: a stop is meant for it from here on. */
  void begin() {
    synchronized (monitor) {
      evaluating = true;
      stopAsked = false;
      leftBehind = false;
      fullness = null;
      loader.ask(false);
    }
  }

  /** The text is done: a stop that comes late finds nothing to stop. */
  void end() {
    synchronized (monitor) {
      evaluating = false;
      loader.ask(false);
    }
    if (stopAsked) {
      // Parts of a stopped parallel stream may still run or wait: they go with their threads.
      workers.discard(loader);
      workers = new Workers(loader);
    }
  }

  /** Forgets what the last unit gave, before the next. */
  void clear() {
    result = null;
    failure = null;
    started = false;
    ended = false;
  }

  /** Whether the unit's code came to its end, or had none to run. */
  boolean ranThrough() {
    return ended || !started;
  }

  @Override
  protected String invoke(Method method) throws Exception {
    started = true;
    if (stopAsked) {
      throw new StoppedException();
    }
    boolean held = compiling.isHeldByCurrentThread();
    if (held) {
      compiling.unlock();
    }
    try {
      Errand errand = Errands.own();
      if (errand != null) {
        errand.goesOn();
      }
      Ran ran = await(workers.submit(() -> Errands.running(errand, () -> Ran.of(method))));
      result = ran.result();
      failure = ran.failure();
      ended = failure == null;
    } finally {
      if (held) {
        compiling.lock();
      }
    }
    if (ended) {
      return "";
    }
    if (stopAsked) {
      throw new StoppedException();
    }
    // The caller sorts and converts what was thrown.
    throw new InvocationTargetException(failure);
  }

  /**
   * What a unit's code gave.
   *
   * @param result what it returned
   * @param failure what it threw, or null
   */
  private record Ran(Object result, Throwable failure) {
    static Ran of(Method method) {
      try {
        return new Ran(method.invoke(null), null);
      } catch (InvocationTargetException e) {
        return new Ran(null, e.getCause());
      } catch (IllegalAccessException | StackOverflowError | OutOfMemoryError e) {
        // The last two on the way into the code or out of it.
        return new Ran(null, e);
      }
    }
  }

  private Ran await(Future<Ran> running) throws ExecutionException, StoppedException {
    boolean interrupted = false;
    try {
      while (true) {
        try {
          return running.get(POLL, TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
          Memory.glance();
          if (stopAsked && System.nanoTime() - askedAt > PATIENCE * 1_000_000) {
            leftBehind = true;
            throw new StoppedException();
          }
        } catch (InterruptedException e) {
          interrupted = true;
          askToStop();
        } catch (OutOfMemoryError e) {
          // This thread met it before the code that fills the memory did.
          Memory.ranOut();
          full(Fullness.whole());
        }
      }
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  /** Keeps where the value is; the JDK's engines would turn it into a text. */
  @Override
  public String varValue(String className, String varName) throws InternalException {
    try {
      field = findClass(className).getDeclaredField(varName);
      // The field is public, its class is not.
      field.setAccessible(true);
      return "";
    } catch (ReflectiveOperationException e) {
      throw new InternalException(e.toString());
    }
  }

  /**
   * Where a variable's value is: the compiler tells it to nobody but the engine.
   *
   * @param shell whose variable, and whose engine this is
   * @param variable which
   * @return null where its code was never loaded
   * @throws IllegalArgumentException if it was declared with something that is not there yet
   */
  Field fieldOf(JShell shell, VarSnippet variable) {
    field = null;
    shell.varValue(variable);
    return field;
  }

  @Override
  public void stop() {
    askToStop();
  }

  /**
   * Asks the running text to stop.
   *
   * @return whether there was one
   */
  boolean askToStop() {
    synchronized (monitor) {
      if (!evaluating) {
        return false;
      }
      if (!stopAsked) {
        stopAsked = true;
        askedAt = System.nanoTime();
      }
      loader.ask(true);
      workers.interrupt();
      return true;
    }
  }

  /** Memory is full: what runs is asked to stop. */
  void full(Fullness found) {
    synchronized (monitor) {
      if (evaluating) {
        fullness = fullness == null ? found : fullness;
        askToStop();
      } else if (loader.runsBeside(workers)) {
        behind = found;
        loader.ask(true);
      }
    }
  }

  /** Has the code look now and then whether it may go on; null for no more. */
  void look(Runnable each) {
    loader.look(each);
  }

  /** How full the memory was for which the text was stopped; null where it was not. */
  Fullness fullness() {
    return fullness;
  }

  /** How full the memory was for which code behind was stopped since this was asked last. */
  Optional<Fullness> fullBehind() {
    Optional<Fullness> told = Optional.ofNullable(behind);
    behind = null;
    return told;
  }

  @Override
  public void close() {
    Memory.forget(this);
    super.close();
    workers.discard(loader);
  }

  boolean stopAsked() {
    return stopAsked;
  }

  boolean leftBehind() {
    return leftBehind;
  }

  Object result() {
    return result;
  }

  Throwable failure() {
    return failure;
  }
}
