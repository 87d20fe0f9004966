/**
 * The door for notebooks: a kernel that speaks the Jupyter messaging protocol, version 5.4, over
 * ZeroMQ, and evaluates at a {@link org.leverbook.desk.Desk}.
 *
 * <p>How a request goes its way:
 *
 * <ol>
 *   <li>{@code Line} owns a socket, on a thread of its own, and hands over the frames that came.
 *   <li>{@code Wire} checks their signature, reads them as a {@code Message}, or drops them with a
 *       line in the log.
 *   <li>What came on the control line is answered there and then; what came on the shell line waits
 *       in {@code Queue} for its turn.
 *   <li>{@code Requests} says busy, finds the answer, sends it, says idle. {@code Execution} runs
 *       cells, {@code Assistant} completes and explains, {@code History} remembers.
 *   <li>What a cell prints and shows goes out by its {@code Cell}, so that also a thread that
 *       outlives it speaks under the cell that started it.
 * </ol>
 *
 * <p>Thread rule: a socket belongs to its {@code Line} or to {@code Publisher}; everyone else puts
 * frames into their queues. {@link org.leverbook.kernel.KernelFolder} tells an installed Jupyter of
 * the kernel.
 */
package org.leverbook.kernel;
