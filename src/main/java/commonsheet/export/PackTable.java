package commonsheet.export;

import commonsheet.compare.Contender;
import commonsheet.compare.Figure;
import commonsheet.compare.PackFigures;
import commonsheet.compare.Shortlist;
import commonsheet.compare.Verdict;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The packs built of each cell that carries the current, or nearly does, for a terminal. */
final class PackTable {
  private static final double PERCENT = 100;

  private final Shortlist shortlist;
  private final List<Contender> contenders;
  private final TextTable table;

  PackTable(Shortlist shortlist) {
    this.shortlist = shortlist;
    this.contenders =
        shortlist.contenders().stream()
            .filter(c -> c.verdict() == Verdict.CARRIES || c.verdict() == Verdict.NEAR_MISS)
            .toList();
    List<String> ranks = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (int i = 0; i < contenders.size(); i++) {
      ranks.add(String.valueOf(i + 1));
      names.add(CellName.among(shortlist.contenders(), contenders.get(i)));
    }
    this.table =
        new TextTable(
            List.of(
                new TextTable.Column(List.of(), ranks, true),
                new TextTable.Column(List.of("Packs of"), names, false)));
  }

  /** Writes nothing where no cell comes near. */
  void write(int width, Appendable out) throws IOException {
    if (contenders.isEmpty()) {
      return;
    }
    out.append('\n');
    for (String line : Wrapping.wrap(ShortlistWords.together(shortlist), width)) {
      out.append(line).append('\n');
    }
    column("Nominal capacity", "Ah", PackFigures::nominalCapacity);
    column("Nominal energy", "Wh", PackFigures::nominalEnergy);
    column("Delivered capacity", "Ah", PackFigures::deliveredCapacity);
    column("Delivered energy", "Wh", PackFigures::deliveredEnergy);
    column("Mass of bare cells", "kg", PackFigures::cellMass);
    if (shortlist.requirement().massAllowance() > 0) {
      column("Mass with allowance", "kg", PackFigures::mass);
    }
    column("Lowest voltage", "V", PackFigures::lowVoltage);
    column("Highest voltage", "V", PackFigures::highVoltage);
    column("Of rating, average", "%", p -> percent(p.shareOfRatingAtAverage()));
    column("Of rating, peak", "%", p -> percent(p.shareOfRatingAtPeak()));
    column("Time at average", "h", PackFigures::time);
    if (shortlist.requirement().cruiseSpeed() != null) {
      column("Distance", "km", PackFigures::distance);
    }
    table.write(width, out);
  }

  private void column(String title, String unit, Function<PackFigures, Figure> figure) {
    table.add(
        new TextTable.Column(
            MeasureHead.lines(title, unit),
            contenders.stream().map(c -> FigureText.ofComputed(figure.apply(c.pack()))).toList(),
            true));
  }

  private static Figure percent(Figure share) {
    return share.isKnown()
        ? new Figure(
            share.value() * PERCENT,
            null,
            null,
            share.origin(),
            share.from(),
            share.notes(),
            share.unsure())
        : share;
  }
}
