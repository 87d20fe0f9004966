package org.leverbook.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What was given beside what is taken, laid so that as much as possible fits: which arguments are
 * of the wrong kind, which are too many, which are missing.
 *
 * @param form what is taken
 * @param count how many arguments were given
 * @param cost how badly it fits
 * @param parameterAt for each argument the place of its parameter, or -1
 * @param missing places of parameters that nothing was given for
 * @param extra arguments that nothing takes
 * @param wrong arguments of the wrong kind
 */
record Alignment(
    CallForm form,
    int count,
    int cost,
    int[] parameterAt,
    List<Integer> missing,
    List<Integer> extra,
    List<Integer> wrong) {

  private static final int UNKNOWN = 1;
  private static final int WRONG = 4;
  private static final int GAP = 5;

  static Alignment of(
      List<Call.Argument> arguments, List<String> given, CallForm form, FittingTypes types) {
    int n = arguments.size();
    int m = form.many() ? Math.max(n, form.parameters().size() - 1) : form.parameters().size();
    int[][] cost = new int[n + 1][m + 1];
    int[][] fit = new int[n][m];
    for (int i = n; i >= 0; i--) {
      for (int j = m; j >= 0; j--) {
        if (i < n && j < m) {
          fit[i][j] = fit(arguments.get(i), given.get(i), form.at(j).orElseThrow().type(), types);
          int both = fit[i][j] + cost[i + 1][j + 1];
          cost[i][j] = Math.min(both, GAP + Math.min(cost[i + 1][j], cost[i][j + 1]));
        } else {
          cost[i][j] = GAP * (n - i + m - j);
        }
      }
    }
    return walked(form, cost, fit, n, m);
  }

  private static Alignment walked(CallForm form, int[][] cost, int[][] fit, int n, int m) {
    int[] parameterAt = new int[n];
    List<Integer> missing = new ArrayList<>();
    List<Integer> extra = new ArrayList<>();
    List<Integer> wrong = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < n || j < m) {
      if (i < n && j < m && cost[i][j] == fit[i][j] + cost[i + 1][j + 1]) {
        parameterAt[i] = j;
        if (fit[i][j] > UNKNOWN) {
          wrong.add(i);
        }
        i++;
        j++;
      } else if (i < n && cost[i][j] == GAP + cost[i + 1][j]) {
        parameterAt[i] = -1;
        extra.add(i++);
      } else {
        missing.add(Math.min(j++, form.parameters().size() - 1));
      }
    }
    return new Alignment(
        form,
        n,
        cost[0][0],
        parameterAt,
        Collections.unmodifiableList(missing),
        Collections.unmodifiableList(extra),
        Collections.unmodifiableList(wrong));
  }

  private static int fit(Call.Argument argument, String given, String asked, FittingTypes types) {
    int takes = Kinds.rule(asked);
    if (argument.isRule()) {
      boolean counts = argument.ruleTakes() < 0 || argument.ruleTakes() == takes;
      return takes < 0 ? Kinds.isOpen(asked) ? 0 : WRONG : counts ? 0 : WRONG - 1;
    }
    if (given.isEmpty()) {
      return UNKNOWN;
    }
    return types.fits(given, asked).map(fits -> fits ? 0 : WRONG).orElse(UNKNOWN);
  }

  /** The parameter that an argument was laid beside. */
  CallForm.Parameter parameterOf(int argument) {
    return form.at(parameterAt[argument]).orElseThrow();
  }
}
