/**
 * Before the command line: whether this Java is new enough, and a quick start.
 *
 * <p>{@code Launcher}, in a source folder of its own, is compiled for Java 8 so that an old Java
 * can say that it is too old. {@link org.leverbook.launch.Start} then starts the command line,
 * where possible in a process that reads an archive of loaded classes.
 */
package org.leverbook.launch;
