/**
 * The door for a person at a keyboard: {@link org.leverbook.terminal.Shell}.
 *
 * <p>JLine reads and edits lines; whether a line is finished, how it may go on and what a call
 * takes is asked of the session. What is asked while someone types is asked on a thread of its own,
 * so that no key waits for the compiler. The session starts on a second thread, behind the first
 * prompt. Where the input is no terminal, it is read line by line without prompts.
 *
 * <p>Everything that is not the line being typed goes through one {@code Paper}: answers, prints of
 * the user's code, the bar of long work. So none breaks another.
 */
package org.leverbook.terminal;
