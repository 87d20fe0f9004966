package org.leverbook.language;

/** The words for how sure an answer is; {@link Vocabulary} hands them on. */
public abstract sealed class DoubtWords extends CompareWords permits ClaimWords {

  DoubtWords() {}
}
