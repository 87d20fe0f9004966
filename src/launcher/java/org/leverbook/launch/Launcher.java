package org.leverbook.launch;

import java.lang.reflect.InvocationTargetException;

/**
 * The jar's entry. Compiled for Java 8, so that a Java below 17 says in words that it is too old;
 * everything else waits behind {@code org.leverbook.launch.Start}, which this class reaches by name
 * only after the version check.
 */
public final class Launcher {

  /** The lowest Java feature version that runs Leverbook. */
  static final int LOWEST = 17;

  private Launcher() {}

  /**
   * Checks the Java that runs this and hands over to the command line.
   *
   * @param arguments the command line
   * @throws Throwable whatever the command line throws
   */
  public static void main(String[] arguments) throws Throwable {
    String complaint = complaint(System.getProperty("java.specification.version"), hasCompiler());
    if (complaint != null) {
      System.err.println(complaint);
      System.exit(1);
    }
    try {
      Class.forName("org.leverbook.launch.Start")
          .getMethod("main", String[].class)
          .invoke(null, (Object) arguments);
    } catch (InvocationTargetException e) {
      throw e.getCause();
    }
  }

  /**
   * What is wrong with this Java, or null where nothing is.
   *
   * @param version the value of {@code java.specification.version}, such as 1.8, 11 or 17
   * @param compiler whether the Java compiler is there: a JDK, not only a run-time
   * @return a sentence for the user, or null
   */
  static String complaint(String version, boolean compiler) {
    int feature = Integer.parseInt(version.startsWith("1.") ? version.substring(2) : version);
    if (feature < LOWEST) {
      return "Leverbook needs a JDK "
          + LOWEST
          + " or newer; this is Java "
          + version
          + " ("
          + System.getProperty("java.home")
          + "). Install a JDK "
          + LOWEST
          + " and run the same command with its java.";
    }
    if (!compiler) {
      return "Leverbook needs a full JDK, because it compiles what you type; this Java ("
          + System.getProperty("java.home")
          + ") is a run-time without the compiler. Install a JDK "
          + LOWEST
          + " or newer, for example the package openjdk-17-jdk-headless.";
    }
    return null;
  }

  private static boolean hasCompiler() {
    // Loading the classes would take as long as all else before the second process.
    ClassLoader loader = Launcher.class.getClassLoader();
    return loader.getResource("jdk/jshell/JShell.class") != null
        && loader.getResource("com/sun/tools/javac/api/JavacTool.class") != null;
  }
}
