/**
 * Who can oppose a moment: the muscles of a person, their arms, and how they share what joints
 * need.
 */
package org.leverbook.muscle;
