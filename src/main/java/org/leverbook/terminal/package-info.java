/**
 * The door for a person at a keyboard: {@link org.leverbook.terminal.Shell}.
 *
 * <p>JLine reads and edits lines; whether a line is finished, and how it may go on, is asked of the
 * session. The session starts on a second thread, behind the first prompt. Where the input is no
 * terminal, it is read line by line without prompts.
 */
package org.leverbook.terminal;
