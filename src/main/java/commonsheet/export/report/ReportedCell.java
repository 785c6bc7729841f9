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

/** One cell of a report. */
public final class ReportedCell {
  private static final Cell UNKNOWN = new Cell(null, null, null, null, null, null, null);

  private final int rank;
  private final Contender contender;

  /** What charts show of it: made when first asked for, since charts show few of many cells. */
  private Shown shown;

  private record Shown(List<DischargeLine> discharges, List<Delivered> delivered) {
    Shown {
      discharges = List.copyOf(discharges);
      delivered = List.copyOf(delivered);
    }
  }

  private ReportedCell(int rank, Contender contender, Shown shown) {
    this.rank = rank;
    this.contender = contender;
    this.shown = shown;
  }

  /**
   * A cell with the curves of its record.
   *
   * @param rank from 1; the cell's number in tables and charts
   * @param contender what is known of it, and the verdict
   */
  static ReportedCell of(int rank, Contender contender) {
    return new ReportedCell(rank, contender, null);
  }

  /** A cell with other curves than those of its record. */
  static ReportedCell of(
      int rank, Contender contender, List<DischargeLine> discharges, List<Delivered> delivered) {
    return new ReportedCell(rank, contender, new Shown(discharges, delivered));
  }

  /** From 1; the cell's number in tables and charts. */
  public int rank() {
    return rank;
  }

  /** What is known of it, and the verdict. */
  public Contender contender() {
    return contender;
  }

  /** The digitised discharges that its figures come from, by ascending current. */
  public List<DischargeLine> discharges() {
    return shown().discharges();
  }

  /** What it gives at currents from the lowest to the highest of them, ascending. */
  public List<Delivered> delivered() {
    return shown().delivered();
  }

  private synchronized Shown shown() {
    if (shown == null) {
      DischargeFamily family =
          DischargeFamily.of(contender.cell().record(), contender.cell().condition());
      List<DischargeLine> lines = family.lines();
      shown = new Shown(lines, Delivered.across(family, lines));
    }
    return shown;
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
