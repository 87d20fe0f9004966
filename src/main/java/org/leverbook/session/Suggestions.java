package org.leverbook.session;

import java.util.List;
import java.util.Optional;

/** Knows what may stand inside a quoted text, as the name of a file or of a lift. */
public interface Suggestions {

  /**
   * What may stand at a place.
   *
   * @param where the place
   * @return the texts that may; all of them, also those that do not go on with what is typed
   */
  List<Suggestion> at(Quoted where);

  /**
   * A quoted text that is being typed as an argument of a call.
   *
   * @param owner the class that declares what is called; empty where it is not known
   * @param called the name of what is called
   * @param argument which argument it is, from 0
   * @param parameter the name of that parameter; empty where it is not known
   * @param begun what is typed so far, without the opening quote
   */
  record Quoted(
      Optional<Class<?>> owner, String called, int argument, String parameter, String begun) {}

  /**
   * One text.
   *
   * @param text the whole of it, without quotes
   * @param about what it is, in one line; may be empty
   * @param fits whether it is what is most likely meant; those that fit are offered first
   */
  record Suggestion(String text, String about, boolean fits) {}
}
