package org.leverbook.session;

/**
 * One way to go on at the cursor.
 *
 * @param from where the text to be replaced begins, in UTF-16 units; it ends at the cursor
 * @param text what to put there; a method ends with its opening bracket
 * @param signature the method's parameters and type in one line; empty where not asked or unknown
 * @param about what it is, in one line; empty where not asked or unknown
 */
public record Completion(int from, String text, String signature, String about) {}
