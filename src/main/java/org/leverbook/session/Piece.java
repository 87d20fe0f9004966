package org.leverbook.session;

import java.util.Optional;

/**
 * A statement, expression or declaration that took effect.
 *
 * @param text its text as it was given, with the comments before it; the texts of a whole input,
 *     one after the other, are that input again
 * @param code the code alone
 * @param line the line on which it begins, from 1
 * @param end where the text behind it begins, in UTF-16 units
 * @param result the name under which the value of a bare expression can be asked for, as in {@code
 *     $7}; empty where there is none
 * @param change what it changed among the user's declarations
 */
public record Piece(
    String text, String code, int line, int end, Optional<String> result, Change change) {}
