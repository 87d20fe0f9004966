/**
 * What a person does at a session beside computing: {@link org.leverbook.desk.Desk} opens one with
 * all words, and every door (script, shell, notebook, kernel) evaluates there.
 */
package org.leverbook.desk;
