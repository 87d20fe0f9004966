package org.leverbook.language;

/** The words for claims; {@link Vocabulary} hands them on. */
public abstract sealed class ClaimWords extends DoubtWords permits OptimumWords {

  ClaimWords() {}
}
