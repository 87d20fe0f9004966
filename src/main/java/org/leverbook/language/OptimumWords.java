package org.leverbook.language;

/** The words for the best setting; {@link Vocabulary} hands them on. */
public abstract sealed class OptimumWords extends ClaimWords permits Vocabulary {

  OptimumWords() {}
}
