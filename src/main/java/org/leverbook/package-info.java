/**
 * Leverbook: which lift loads which joint, for whom, and why.
 *
 * <p>The way through the house, one room a sentence; each knows only the rooms above it:
 *
 * <ul>
 *   <li>{@code quantity}: kilograms, centimetres and degrees at the border, SI doubles inside.
 *   <li>{@code data}: typed readers of the published tables under {@code datasets/}.
 *   <li>{@code display}: how a value shows itself, and where files go.
 *   <li>{@code body}: a person of given proportions becomes a tree of segments and joints.
 *   <li>{@code pose}: joint angles put that tree into space.
 *   <li>{@code muscle}: the muscles of a person, where they pull and with what arm.
 *   <li>{@code strength}: what each joint can give.
 *   <li>{@code solve}: what a coach says becomes joint angles.
 *   <li>{@code load}: what pulls or presses on the body.
 *   <li>{@code support}: what holds the body up.
 *   <li>{@code statics}: forces, balance and the moment at every joint.
 *   <li>{@code lever}: one joint as a drawn lever: which pull holds it.
 *   <li>{@code lift}: ready-made movements.
 *   <li>{@code study}: many positions in one table.
 *   <li>{@code figure}: pictures and plots.
 *   <li>{@code article}: text, tables and figures as one page.
 *   <li>{@code notebook}: notebook files and the pages made of them.
 *   <li>{@code language}: the words of every session.
 *   <li>{@code session}: one Java session; {@code desk}: that session with all words, and what its
 *       user did there.
 *   <li>{@code script}, {@code terminal}, {@code kernel}: a file, a shell or Jupyter that speaks
 *       those words to it.
 * </ul>
 */
package org.leverbook;
