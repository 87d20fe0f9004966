/**
 * A quick start: an archive of loaded classes that Java reads instead of loading them anew.
 *
 * <p>Class archives are tied to one build of Java and one list of jars, so they never travel: the
 * first shell that a person opens has one made behind its back ({@link
 * org.leverbook.archive.ArchiveMaker}), and a kernel gets its own when it is registered.
 */
package org.leverbook.archive;
