/**
 * Notebooks as files and as pages: text, code and what it gave, in the open notebook format
 * (nbformat 4.5), read and written so that only what changed differs; and the same as one HTML page
 * or as Markdown. Knows no session: who runs a notebook hands its results to a {@link
 * org.leverbook.notebook.Recording}. Start at {@link org.leverbook.notebook.Notebook}.
 */
package org.leverbook.notebook;
