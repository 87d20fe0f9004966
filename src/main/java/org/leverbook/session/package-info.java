/**
 * One Java session behind every door: script, shell and, later, notebook.
 *
 * <p>Text goes in, an immutable {@link org.leverbook.session.Evaluation} comes out; what the user
 * got wrong is data in it, never an exception. The room knows nothing of lifts: its words arrive as
 * a {@link org.leverbook.session.Preamble}.
 *
 * <p>How a text is evaluated:
 *
 * <ol>
 *   <li>{@code Splitter} cuts it into units: one statement, expression or declaration each. A line
 *       end closes a unit wherever the unit can be closed, so that a script reads like a shell.
 *   <li>The JDK's JShell compiles a unit. {@code StopWeaver} adds a stop check to every method and
 *       loop of the compiled classes, {@code SnippetLoader} loads them.
 *   <li>{@code Engine} runs them on a thread of its own and keeps the result object itself, not a
 *       text of it.
 *   <li>{@code Wording} and {@code Trace} turn what failed into sentences with line, column and
 *       caret in the text that was given.
 * </ol>
 *
 * <p>How a place in a text is understood, at every key: {@code Tokens} cuts the text, {@code
 * Locals} finds the names it declares, {@code Expressions} and {@code Calls} find types by
 * reflection, {@code Place} puts them together: what is typed, on what it is asked, what is wanted.
 * From it come completion ({@code Offers}), hints in the coach's words ({@code Terms}) and
 * documentation ({@code Explanations}, from the texts of our Javadoc that the build writes into the
 * jar). The compiler is asked only where a line is not understood: it takes ten times as long, and
 * knows nothing of lines that are not evaluated yet.
 *
 * <p>Thread rule: {@link org.leverbook.session.Session} may be called from any thread. One text is
 * evaluated at a time; completion and documentation answer while it runs, and {@code stop} may come
 * from anywhere at any time.
 */
package org.leverbook.session;
