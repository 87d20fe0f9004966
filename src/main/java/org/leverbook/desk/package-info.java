/**
 * What a person does at a session beside computing: {@link org.leverbook.desk.Desk} opens one with
 * all words, and every door (script, shell, notebook, kernel) evaluates there.
 *
 * <p>The desk keeps a record of every input, piece by piece: what took effect, what it changed, and
 * what it was before. From it inputs are taken back, run again, and saved as a script. A word that
 * asks for any of that runs in the middle of a text, so the desk carries it out between that
 * statement and the next.
 */
package org.leverbook.desk;
