/**
 * The words preloaded in every session: {@link org.leverbook.language.Vocabulary}. Thin: a word
 * only calls the rooms above.
 */
package org.leverbook.language;
