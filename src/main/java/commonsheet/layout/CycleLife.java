package commonsheet.layout;

import commonsheet.layout.Sentences.Direction;
import commonsheet.quantity.Bound;
import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.record.Conditions;
import commonsheet.record.Statistic;
import java.util.ArrayList;
import java.util.List;

/** Cycle life told in sentences: "the capacity at the 300th cycle is at least 80 %". */
final class CycleLife {
  /**
   * Fewer cycles are a preparation of the test, or a check within it. Common practice, no source.
   */
  private static final double FEWEST_CYCLES = 50;

  private final Figures parser;
  private final Sentences sentences;
  private final Candidates candidates;

  CycleLife(Figures parser, Sentences sentences, Candidates candidates) {
    this.parser = parser;
    this.sentences = sentences;
    this.candidates = candidates;
  }

  List<Candidate> read(Entry entry) {
    List<Passage> texts = new ArrayList<>();
    entry.values().forEach(v -> texts.add(v.text()));
    texts.add(entry.conditions());
    entry.values().forEach(v -> texts.add(v.conditions()));
    List<Told> told = new ArrayList<>();
    texts.forEach(t -> told.addAll(sentences.read(t.text(), Direction.DISCHARGE)));
    entry.labels().forEach(l -> told.addAll(sentences.read(l.text(), Direction.DISCHARGE)));
    for (Passage text : texts) {
      for (Figure figure : parser.find(text.text())) {
        if (isCount(figure)) {
          Statistic statistic = figure.bound() == Bound.AT_LEAST ? Statistic.MINIMUM : null;
          return List.of(
              candidates.of(entry, entry.layoutRule(), text, "cycleLife", statistic, figure, told));
        }
      }
    }
    return List.of();
  }

  /**
   * "At least 75 % after 300 cycles" is a cycle life, whichever of its two numbers the sheet gives
   * as the value. A time beside it speaks of storage.
   */
  static Candidate counted(Candidate share) {
    Double cycles = share.conditions().get(Conditions.CYCLES);
    boolean isShare =
        share.quantity().equals("capacityRetention")
            && share.value() != null
            && share.conditions().get(Conditions.DURATION) == null;
    if (!isShare || cycles == null || cycles < FEWEST_CYCLES) {
      return share;
    }
    Conditions left =
        share.conditions().without(Conditions.CYCLES).with(Conditions.RETENTION, share.value());
    return share.ofQuantity("cycleLife", new Candidate.Amount(cycles, null, null)).with(left);
  }

  private static boolean isCount(Figure figure) {
    return figure.unit() != null
        && figure.unit().dimension() == Dimension.CYCLES
        && figure.value() != null
        && figure.value() >= FEWEST_CYCLES;
  }
}
