package commonsheet.layout;

import commonsheet.quantity.Bound;
import commonsheet.quantity.Figure;
import commonsheet.record.Statistic;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Which statistic a figure is: what stands nearest to it decides. */
final class Statistics {
  private static final List<String> ORDER =
      List.of("minimum", "maximum", "typical", "nominal", "rated", "standard");

  private final Terms terms;

  Statistics(Terms terms) {
    this.terms = terms;
  }

  /**
   * From the figure's own bound or word, else its column, else the words before it, else the labels
   * from the inside out.
   */
  Statistic of(String quantity, Figure figure, Role column, List<Set<String>> fromInside) {
    Terms.StatisticRule rule = terms.statistics(quantity);
    if (rule.fixed() != null) {
      return Statistic.valueOf(rule.fixed().toUpperCase(Locale.ROOT));
    }
    Statistic own = own(figure);
    if (own != null && rule.allowed().contains(own.label())) {
      return own;
    }
    Statistic byColumn = column(column);
    if (byColumn != null && rule.fromColumn().contains(byColumn.label())) {
      return byColumn;
    }
    for (Set<String> concepts : fromInside) {
      for (String name : ORDER) {
        if (concepts.contains(name) && rule.fromLabel().contains(name)) {
          return Statistic.valueOf(name.toUpperCase(Locale.ROOT));
        }
      }
    }
    return null;
  }

  /**
   * The statistics that a label lists in order: "Capacity (min./typ.)"; empty where it lists none.
   */
  List<Statistic> listedIn(List<Passage> labels, Vocabulary vocabulary) {
    List<Statistic> listed = new ArrayList<>();
    for (Passage label : labels) {
      for (Hit hit : vocabulary.hits(label.text())) {
        ORDER.stream()
            .filter(hit::means)
            .map(name -> Statistic.valueOf(name.toUpperCase(Locale.ROOT)))
            .forEach(listed::add);
      }
    }
    return listed.size() > 1 ? listed : List.of();
  }

  /** Whether several values without a word of their own go with the statistics listed. */
  boolean isListed(List<Figure> values, List<Statistic> listed) {
    return values.size() > 1
        && values.size() == listed.size()
        && values.stream().allMatch(f -> f.qualifier() == null && f.bound() == Bound.NONE);
  }

  private static Statistic own(Figure figure) {
    if (figure.bound() == Bound.AT_LEAST) {
      return Statistic.MINIMUM;
    }
    if (figure.bound() == Bound.AT_MOST) {
      return Statistic.MAXIMUM;
    }
    return figure.qualifier() == null ? null : Statistic.valueOf(figure.qualifier().name());
  }

  static Statistic column(Role role) {
    return switch (role) {
      case MINIMUM -> Statistic.MINIMUM;
      case TYPICAL -> Statistic.TYPICAL;
      case NOMINAL -> Statistic.NOMINAL;
      case RATED -> Statistic.RATED;
      case MAXIMUM -> Statistic.MAXIMUM;
      default -> null;
    };
  }
}
