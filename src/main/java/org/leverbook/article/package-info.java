/**
 * What a reader gets in the end: text, tables and figures as one page, with the method, the caution
 * and what it takes to make it again.
 *
 * <p>An {@link org.leverbook.article.Article} is a value like all others; {@code save} writes it as
 * an HTML page that needs no other file, or as Markdown with its pictures beside it. What stands in
 * its method is asked of the values that were put in: each tells its sources or has none. {@link
 * org.leverbook.article.Page} is the frame of every page that Leverbook writes for reading.
 */
package org.leverbook.article;
