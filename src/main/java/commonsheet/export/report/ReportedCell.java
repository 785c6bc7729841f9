package commonsheet.export.report;

import commonsheet.compare.Contender;
import commonsheet.compare.DischargeFamily;
import commonsheet.compare.DischargeLine;
import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.export.Printed;
import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One cell of a report.
 *
 * @param rank from 1; the cell's number in tables and charts
 * @param contender what is known of it, and the verdict
 * @param discharges the digitised discharges that its figures come from, by ascending current
 * @param delivered what it gives at currents from the lowest to the highest of them, ascending
 */
public record ReportedCell(
    int rank, Contender contender, List<DischargeLine> discharges, List<Delivered> delivered) {
  private static final Cell UNKNOWN = new Cell(null, null, null, null, null, null, null);

  public ReportedCell {
    discharges = List.copyOf(discharges);
    delivered = List.copyOf(delivered);
  }

  static ReportedCell of(int rank, Contender contender) {
    DischargeFamily family =
        DischargeFamily.of(contender.cell().record(), contender.cell().condition());
    return new ReportedCell(rank, contender, family.lines(), Delivered.across(family));
  }

  CellRecord record() {
    return contender.cell().record();
  }

  Cell cell() {
    return record().cell() == null ? UNKNOWN : record().cell();
  }

  Figure figure(Measure measure) {
    return contender.cell().figure(measure);
  }

  /** Maker and model or, where the sheet names neither, the record's id; without control signs. */
  String name() {
    String name =
        Stream.of(cell().maker(), cell().model())
            .map(Printed::clean)
            .filter(part -> !part.isEmpty())
            .collect(Collectors.joining(" "));
    return name.isEmpty() ? Printed.clean(record().id()) : name;
  }

  /** The model or, where the sheet does not name it, the record's id. */
  String shortName() {
    String model = Printed.clean(cell().model());
    return model.isEmpty() ? Printed.clean(record().id()) : model;
  }
}
