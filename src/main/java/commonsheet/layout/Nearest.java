package commonsheet.layout;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the name that a mistyped one was meant to be. */
final class Nearest {
  private Nearest() {}

  /** {@code ; did you mean "capacity"?}, or nothing where no name is near. */
  static String hint(String typed, Collection<String> names) {
    return of(typed, names).map(name -> "; did you mean \"" + name + "\"?").orElse("");
  }

  /** The nearest of the names, if no more than a third of its letters differ. */
  static Optional<String> of(String typed, Collection<String> names) {
    String wanted = typed.toLowerCase(Locale.ROOT);
    return names.stream()
        .filter(name -> edits(wanted, name.toLowerCase(Locale.ROOT)) <= (name.length() + 2) / 3)
        .min(
            Comparator.<String>comparingInt(name -> edits(wanted, name.toLowerCase(Locale.ROOT)))
                .thenComparing(Comparator.naturalOrder()));
  }

  /** Letters to add, leave out, replace or swap with their neighbour to make one of the other. */
  private static int edits(String a, String b) {
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          cost[i][j] = i + j;
          continue;
        }
        int other = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        cost[i][j] =
            Math.min(
                cost[i - 1][j - 1] + other, Math.min(cost[i - 1][j] + 1, cost[i][j - 1] + 1));
        if (i > 1 && j > 1 && swapped(a, i, b, j)) {
          cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
        }
      }
    }
    return cost[a.length()][b.length()];
  }

  private static boolean swapped(String a, int i, String b, int j) {
    return a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
  }
}
