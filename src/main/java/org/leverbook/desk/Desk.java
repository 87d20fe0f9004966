package org.leverbook.desk;

import java.util.List;
import java.util.function.Consumer;
import org.leverbook.language.Imports;
import org.leverbook.language.Vocabulary;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Preamble;
import org.leverbook.session.Session;
import org.leverbook.session.Value;

/**
 * A session with all words, and what its user did in it. Every door sits at one: script, shell,
 * notebook and kernel evaluate here, so that the same text gives the same values.
 */
public final class Desk implements AutoCloseable {

  private final Session session;

  private Desk(Session session) {
    this.session = session;
  }

  /**
   * A desk with a new session.
   *
   * @return the desk, ready
   */
  public static Desk open() {
    return new Desk(
        Session.open(
            new Preamble(Imports.SOURCE, List.of(Vocabulary.class), List.of(new QuotedTexts()))));
  }

  /**
   * Evaluates a text and hands over each value as it comes.
   *
   * @param text any number of statements, expressions and declarations
   * @param each takes the value of every unit that is a bare expression, on the calling thread
   * @return what came of it
   */
  public Evaluation evaluate(String text, Consumer<Value> each) {
    return session.evaluate(text, each);
  }

  /**
   * The session, for completion, documentation and stopping.
   *
   * @return the same one always
   */
  public Session session() {
    return session;
  }

  @Override
  public void close() {
    session.close();
  }
}
