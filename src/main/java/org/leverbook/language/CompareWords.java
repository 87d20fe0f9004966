package org.leverbook.language;

/** The words for comparisons; {@link Vocabulary} hands them on. */
public abstract sealed class CompareWords extends PeopleWords permits DoubtWords {

  CompareWords() {}
}
