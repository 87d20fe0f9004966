package org.leverbook.session;

/**
 * Something that the user declared.
 *
 * @param kind what it is
 * @param name its name; of an import, what is imported
 * @param type the type of a variable, the signature of a method, the kind of a class; of an import
 *     empty
 * @param source the code that declared it
 * @param value what a variable holds now, or null; of anything else null
 */
public record Belonging(Kind kind, String name, String type, String source, Object value) {

  /** What can be declared. */
  public enum Kind {
    /** Holds a value. */
    VARIABLE,
    /** Can be called. */
    METHOD,
    /** A class, record, enum or interface. */
    CLASS,
    /** Makes other names known. */
    IMPORT
  }
}
