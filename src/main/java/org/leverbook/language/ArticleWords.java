package org.leverbook.language;

/** The words that make an article; {@link Vocabulary} hands them on. */
public abstract sealed class ArticleWords extends ViewWords permits DeskWords {

  ArticleWords() {}
}
