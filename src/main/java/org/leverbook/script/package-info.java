/**
 * The door without a person: a script is run from its first line to its last, its values are
 * printed, its files written, and the first error ends it with file, line and reason.
 */
package org.leverbook.script;
