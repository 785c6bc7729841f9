package commonsheet.export.report;

import commonsheet.compare.DischargeLine;
import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.compare.Origin;
import commonsheet.compare.Verdict;
import commonsheet.quantity.QuantityCatalogue;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The tables of the data package of a report. */
final class PackageTables {
  private static final String CELLS = "cells";
  private static final String MEASURES = "measures";
  private static final String CELL_ID = "[a-z0-9]+(-[a-z0-9]+)*";

  /** A measure of cells or of packs. */
  private record Named(String name, String unit, String title, String meaning, Measure measure) {}

  private record FigureRow(ReportedCell cell, String measure, String unit, Figure figure) {}

  private record PointRow(ReportedCell cell, DischargeLine line, int point) {}

  private record DeliveredRow(ReportedCell cell, Delivered given) {}

  private final Report report;

  private PackageTables(Report report) {
    this.report = report;
  }

  /** The tables, those first that others refer to. */
  static List<PackageTable<?>> of(Report report) {
    PackageTables tables = new PackageTables(report);
    return List.of(
        tables.cells(), tables.measures(), tables.figures(), tables.curves(), tables.delivered());
  }

  private PackageTable<ReportedCell> cells() {
    List<Field<ReportedCell>> fields = new ArrayList<>();
    fields.add(cell(Function.<ReportedCell>identity()).with("unique", true));
    fields.add(
        Field.<ReportedCell>integer(
                "rank", "Rank", "Place in the shortlist, from 1.", ReportedCell::rank)
            .required()
            .with("unique", true));
    for (CellTexts.Column column : CellTexts.ALL) {
      Field<ReportedCell> field =
          Field.text(column.name(), column.title(), column.description(), column.text());
      fields.add(
          column.name().equals("verdict")
              ? field.required().with("enum", labels(Verdict.values(), Verdict::label))
              : field);
    }
    fields.add(
        Field.number(
            "margin",
            "1",
            "Margin",
            "The rating over what is asked, less 1; empty where either is not known.",
            cell -> cell.contender().margin()));
    return new PackageTable<>(
        CELLS,
        "Cells",
        "Every cell compared, in order of rank, with verdict, sheet and state of approval.",
        fields,
        List.of("cell"),
        Map.of(),
        report.cells());
  }

  private PackageTable<Named> measures() {
    List<Field<Named>> fields =
        List.of(
            Field.<Named>text(MEASURES_KEY, "Measure", "Name of the measure.", Named::name)
                .required()
                .with("unique", true),
            Field.<Named>text("title", "Title", "For people.", Named::title).required(),
            Field.<Named>text("unit", "Unit", "UCUM code.", Named::unit).required(),
            Field.text("meaning", "Meaning", "What is meant, in a few words.", Named::meaning),
            Field.text(
                "emmo",
                "EMMO term",
                "IRI of the term that means exactly this, where there is one.",
                n -> n.measure() == null ? null : MeasureTerms.emmo(n.measure())),
            Field.text(
                "qudt_kind",
                "QUDT quantity kind",
                "IRI.",
                n -> n.measure() == null ? null : MeasureTerms.qudt(n.measure())),
            Field.text("qudt_unit", "QUDT unit", "IRI.", n -> Unit.of(n.unit()).qudt()));
    List<Named> rows = new ArrayList<>();
    for (Measure m : Measure.values()) {
      rows.add(new Named(m.label(), m.unit(), m.title(), m.meaning(), m));
    }
    if (report.hasPacks()) {
      for (PackMeasure m : PackMeasure.values()) {
        rows.add(new Named(m.label(), m.unit(), m.title(), "of all packs together", null));
      }
    }
    return new PackageTable<>(
        MEASURES,
        "Measures",
        "What the figures are, with units and terms.",
        fields,
        List.of(MEASURES_KEY),
        Map.of(),
        rows);
  }

  private static final String MEASURES_KEY = "measure";

  private PackageTable<FigureRow> figures() {
    List<Field<FigureRow>> fields = new ArrayList<>();
    fields.add(cell(FigureRow::cell));
    fields.add(
        Field.<FigureRow>text(MEASURES_KEY, "Measure", "Name of the measure.", FigureRow::measure)
            .required());
    fields.addAll(FigureFields.of("", null, "the measure", FigureRow::figure));
    fields.add(
        Field.<FigureRow>text("unit", "Unit", "UCUM code of value, low and high.", FigureRow::unit)
            .required());
    fields.add(
        Field.<FigureRow>text(
                "origin",
                "Origin",
                "Where the figure comes from.",
                r -> r.figure().origin().label())
            .required()
            .with("enum", labels(Origin.values(), Origin::label)));
    fields.add(
        Field.text(
            "from",
            "From",
            "Ids of the record's curves and statements it comes from, separated by semicolons.",
            r -> String.join("; ", r.figure().from())));
    fields.add(
        Field.text(
            "notes",
            "Notes",
            "How it was got, why it is unsure, or why it is absent.",
            r -> String.join(" ", r.figure().notes())));
    fields.add(
        Field.yesNo(
            "unsure",
            "Unsure",
            "Whether it rests on something unsure, or on an assumption.",
            r -> r.figure().unsure()));
    return new PackageTable<>(
        "figures",
        "Figures",
        "One row per cell and measure; a figure that is not known has a row with its reason.",
        fields,
        List.of("cell", MEASURES_KEY),
        Map.of("cell", CELLS, MEASURES_KEY, MEASURES),
        report.cells().stream().flatMap(PackageTables::figures).toList());
  }

  private static Stream<FigureRow> figures(ReportedCell cell) {
    Stream<FigureRow> own =
        Stream.of(Measure.values())
            .map(m -> new FigureRow(cell, m.label(), m.unit(), cell.figure(m)));
    if (cell.contender().pack() == null) {
      return own;
    }
    return Stream.concat(
        own,
        Stream.of(PackMeasure.values())
            .map(m -> new FigureRow(cell, m.label(), m.unit(), m.of(cell.contender().pack()))));
  }

  private PackageTable<PointRow> curves() {
    List<Field<PointRow>> fields =
        List.of(
            cell(PointRow::cell),
            Field.<PointRow>text(
                    "curve", "Curve", "Id of the record's curve.", r -> r.line().curve())
                .required(),
            Field.<PointRow>integer("point", "Point", "Along the curve, from 1.", PointRow::point)
                .required(),
            Field.<PointRow>number(
                    "current",
                    "A",
                    "Current",
                    "Constant discharge current.",
                    r -> r.line().current())
                .required()
                .with("minimum", 0),
            Field.number(
                "temperature",
                "Cel",
                "Temperature",
                "Empty where the chart does not say.",
                r -> r.line().temperature()),
            Field.<PointRow>number(
                    "charge",
                    "A.h",
                    "Charge given",
                    "Charge given up to this point.",
                    r -> r.line().charge().get(r.point() - 1))
                .required()
                .meaning(QuantityCatalogue.standard().get("capacity").emmo()),
            Field.<PointRow>number(
                    "voltage",
                    "V",
                    "Voltage",
                    "Voltage under the current.",
                    r -> r.line().voltage().get(r.point() - 1))
                .required(),
            Field.yesNo(
                "unsure",
                "Unsure",
                "Whether the curve, or the current taken for its rate, is in doubt.",
                r -> r.line().unsure()));
    return new PackageTable<>(
        "curves",
        "Discharge curves",
        "The digitised discharges that the figures come from, down to the cut-off.",
        fields,
        List.of("cell", "curve", "point"),
        Map.of("cell", CELLS),
        report.cells().stream().flatMap(PackageTables::points).toList());
  }

  private static Stream<PointRow> points(ReportedCell cell) {
    return cell.discharges().stream()
        .flatMap(
            line ->
                IntStream.rangeClosed(1, line.charge().size())
                    .mapToObj(point -> new PointRow(cell, line, point)));
  }

  private PackageTable<DeliveredRow> delivered() {
    List<Field<DeliveredRow>> fields = new ArrayList<>();
    fields.add(cell(DeliveredRow::cell));
    fields.add(
        Field.<DeliveredRow>number(
                "current", "A", "Current", "Constant discharge current.", r -> r.given().current())
            .required()
            .with("minimum", 0));
    fields.add(
        Field.yesNo(
            "digitised",
            "Digitised",
            "Whether a curve of this current is on the sheet; else it lies between two.",
            r -> r.given().digitised()));
    fields.addAll(
        FigureFields.of("capacity_", "A.h", "delivered capacity", r -> r.given().capacity()));
    fields.addAll(FigureFields.of("energy_", "W.h", "delivered energy", r -> r.given().energy()));
    fields.add(
        Field.yesNo(
            "unsure",
            "Unsure",
            "Whether one of the two rests on something unsure.",
            r -> r.given().capacity().unsure() || r.given().energy().unsure()));
    return new PackageTable<>(
        "delivered",
        "Delivered over current",
        "What each cell gives at constant currents between its digitised ones, to the cut-off.",
        fields,
        List.of("cell", "current"),
        Map.of("cell", CELLS),
        report.cells().stream()
            .flatMap(cell -> cell.delivered().stream().map(d -> new DeliveredRow(cell, d)))
            .toList());
  }

  private static <T> Field<T> cell(Function<T, ReportedCell> cell) {
    return Field.<T>text(
            "cell", "Cell", "Id of the cell's record.", row -> cell.apply(row).record().id())
        .required()
        .with("pattern", CELL_ID);
  }

  private static <E> List<String> labels(E[] values, Function<E, String> label) {
    return Stream.of(values).map(label).toList();
  }
}
