package org.leverbook.session;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.JShell;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.VarSnippet;

/**
 * Drops the hidden variables ({@code $1}, {@code $2} and so on) that hold old results. Each living
 * one makes every later compilation a little slower: after some thousands, five times.
 */
final class Results {

  private static final int KEPT = 5;
  private static final Pattern NAME = Pattern.compile("\\$\\d+");

  private final JShell shell;
  private final Origins origins;
  private final Deque<VarSnippet> recent = new ArrayDeque<>();
  private final Set<String> used = new HashSet<>();

  Results(JShell shell, Origins origins) {
    this.shell = shell;
    this.origins = origins;
  }

  /** A unit is about to be compiled: results that it names stay for good. */
  void noteUse(String code) {
    Matcher name = NAME.matcher(code);
    while (name.find()) {
      used.add(name.group());
    }
  }

  /** A unit was evaluated to this variable; the oldest results make room. Gives a result's name. */
  Optional<String> add(VarSnippet variable) {
    if (variable.subKind() != SubKind.TEMP_VAR_EXPRESSION_SUBKIND) {
      return Optional.empty();
    }
    recent.addLast(variable);
    while (recent.size() > KEPT) {
      VarSnippet oldest = recent.removeFirst();
      if (!used.contains(oldest.name())) {
        shell.drop(oldest);
        origins.remove(oldest.id());
      }
    }
    return Optional.of(variable.name());
  }
}
