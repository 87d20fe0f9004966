package org.leverbook.session;

/**
 * A complaint in words.
 *
 * @param message whole sentences
 * @param at the place in the unit's code that it is about
 */
record Told(String message, int at) {}
