package org.leverbook.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.execution.LoaderDelegate;
import jdk.jshell.spi.ExecutionControl.ClassBytecodes;
import jdk.jshell.spi.ExecutionControl.ClassInstallException;
import jdk.jshell.spi.ExecutionControl.InternalException;

/** Loads the compiled code of one session, with stop checks woven in. */
final class SnippetLoader extends ClassLoader implements LoaderDelegate {

  private static final Pattern DECLARED = Pattern.compile(".*\\$JShell\\$\\w+?\\$([A-Z].*)");
  private static final String CHECK = StopWeaver.CHECK.replace('/', '.');

  private final Map<String, byte[]> waiting = new ConcurrentHashMap<>();
  private final Map<String, Class<?>> declared = new ConcurrentHashMap<>();
  private final Map<String, Errand> errands = new ConcurrentHashMap<>();
  private final Method ask;
  private final Method abandon;
  private final Method look;

  SnippetLoader() {
    super("leverbook session", SnippetLoader.class.getClassLoader());
    try {
      Class<?> own = loadClass(CHECK);
      ask = own.getMethod("ask", boolean.class);
      abandon = own.getMethod("abandon", Thread.class);
      look = own.getMethod("look", Runnable.class);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Asks all code loaded here to stop, or lets it run again. */
  void ask(boolean stop) {
    call(ask, stop);
  }

  /** Keeps asking one thread to stop. */
  void abandon(Thread thread) {
    call(abandon, thread);
  }

  /** Has code loaded here look now and then whether it may go on; null for no more. */
  void look(Runnable each) {
    call(look, each);
  }

  /** Whether threads that code loaded here has started are alive. */
  boolean runsBeside(Workers workers) {
    return Thread.getAllStackTraces().keySet().stream()
        .anyMatch(thread -> thread.getContextClassLoader() == this && !workers.own(thread));
  }

  private static void call(Method method, Object argument) {
    try {
      method.invoke(null, argument);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public void load(ClassBytecodes[] classes) throws ClassInstallException {
    boolean[] loaded = new boolean[classes.length];
    Errand errand = Errands.own();
    for (ClassBytecodes each : classes) {
      if (errand != null) {
        errands.put(each.name(), errand);
      }
      waiting.put(each.name(), StopWeaver.woven(each.bytecodes()));
    }
    for (int i = 0; i < classes.length; i++) {
      try {
        remember(loadClass(classes[i].name()));
        loaded[i] = true;
      } catch (ClassNotFoundException | LinkageError e) {
        throw new ClassInstallException(e.toString(), loaded);
      }
    }
  }

  /** Keeps the newest class of a name that the user declared: it lies in the unit's wrapper. */
  private void remember(Class<?> type) {
    Matcher name = DECLARED.matcher(type.getName());
    if (name.matches()) {
      declared.put(name.group(1).replace('$', '.'), type);
    }
  }

  /** The class of the session with this name, as in {@code Lap} or {@code Lap.Split}. */
  Optional<Class<?>> declared(String name) {
    return Optional.ofNullable(declared.get(name));
  }

  /** Whether a type as it is written names a class of the session. */
  boolean declares(String written) {
    return declared.keySet().stream().anyMatch(written::contains);
  }

  /** What the text was evaluated for that a class was compiled from. */
  Optional<Errand> errand(Class<?> loaded) {
    return Optional.ofNullable(errands.get(loaded.getName()));
  }

  @Override
  public void classesRedefined(ClassBytecodes[] classes) {
    // Redefinition is refused by the engine; the compiler then gives the class a new name.
  }

  @Override
  public void addToClasspath(String path) throws InternalException {
    throw new InternalException("the class path is fixed when the session starts");
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    if (!name.equals(CHECK)) {
      return super.loadClass(name, resolve);
    }
    synchronized (getClassLoadingLock(name)) {
      Class<?> own = findLoadedClass(name);
      return own != null ? own : defined(name, ownCheck());
    }
  }

  @Override
  public Class<?> findClass(String name) throws ClassNotFoundException {
    byte[] classFile = waiting.remove(name);
    if (classFile == null) {
      Class<?> own = findLoadedClass(name);
      if (own == null) {
        throw new ClassNotFoundException(name);
      }
      return own;
    }
    return defined(name, classFile);
  }

  private Class<?> defined(String name, byte[] classFile) {
    return defineClass(name, classFile, 0, classFile.length);
  }

  private static byte[] ownCheck() {
    try (InputStream in =
        SnippetLoader.class.getResourceAsStream("/" + StopWeaver.CHECK + ".class")) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
