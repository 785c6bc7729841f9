package commonsheet.chart.vector;

import commonsheet.chart.plot.InkStyle;
import commonsheet.chart.plot.InkStyle.Dash;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Names for the broken lines of one plot, so that lines broken in different ways have different
 * names as long as there are enough of them: what one plot's dashes are called matters less than
 * that its legend can tell them apart.
 */
final class DashNames {
  /** Share of their length by which the dashes of a curve and of its sample may differ. */
  private static final double ALIKE = 0.12;

  /** Points by which they may differ in any case. */
  private static final double CLOSE = 0.15;

  private record Named(List<Double> lengths, Dash name) {}

  private final List<Named> known;

  private DashNames(List<Named> known) {
    this.known = known;
  }

  static DashNames of(List<Look> looks) {
    List<Look> different = new ArrayList<>();
    for (Look look : looks) {
      if (!look.dash().isEmpty()
          && different.stream().noneMatch(o -> isAlike(o.dash(), look.dash()))) {
        different.add(look);
      }
    }
    different.sort(Comparator.comparingDouble(look -> look.dash().get(0)));
    Set<Dash> free = EnumSet.of(Dash.DASHED, Dash.DOTTED, Dash.DASH_DOTTED, Dash.LONG_DASHED);
    List<Named> known = new ArrayList<>();
    List<Look> doubled = new ArrayList<>();
    for (Look look : different) {
      Dash name = DashKind.of(look);
      if (free.remove(name)) {
        known.add(new Named(look.dash(), name));
      } else {
        doubled.add(look);
      }
    }
    for (Look look : doubled) {
      Dash name = another(DashKind.of(look), free);
      free.remove(name);
      known.add(new Named(look.dash(), name));
    }
    return new DashNames(known);
  }

  /** A name nothing else in the plot has, the nearest first; the usual one if none is left. */
  private static Dash another(Dash usual, Set<Dash> free) {
    List<Dash> order =
        usual == Dash.DOTTED
            ? List.of(Dash.DASHED, Dash.DASH_DOTTED, Dash.LONG_DASHED)
            : List.of(Dash.LONG_DASHED, Dash.DASHED, Dash.DASH_DOTTED, Dash.DOTTED);
    return order.stream().filter(free::contains).findFirst().orElse(usual);
  }

  InkStyle style(Look look, InkStyle.Marker marker) {
    return new InkStyle(look.rgb(), name(look), marker, look.width());
  }

  private Dash name(Look look) {
    if (!look.dash().isEmpty()) {
      for (Named named : known) {
        if (isAlike(named.lengths(), look.dash())) {
          return named.name();
        }
      }
    }
    return DashKind.of(look);
  }

  /** Whether two lines are broken in the same way. */
  static boolean isAlike(List<Double> one, List<Double> other) {
    if (one.size() != other.size()) {
      return false;
    }
    for (int i = 0; i < one.size(); i++) {
      double apart = Math.abs(one.get(i) - other.get(i));
      if (apart > CLOSE && apart > ALIKE * Math.max(one.get(i), other.get(i))) {
        return false;
      }
    }
    return true;
  }
}
