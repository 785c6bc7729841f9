package commonsheet.export.report;

import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.compare.Origin;
import commonsheet.compare.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/** The tables of the data package of a report. */
final class PackageTables {
  static final String CELLS = "cells";
  private static final String MEASURES = "measures";
  private static final String MEASURES_KEY = "measure";
  private static final String CELL_ID = "[a-z0-9]+(-[a-z0-9]+)*";

  /** A measure of cells or of packs. */
  private record Named(String name, String unit, String title, String meaning, Measure measure) {}

  private record FigureRow(ReportedCell cell, String measure, String unit, Figure figure) {}

  private final Report report;

  private PackageTables(Report report) {
    this.report = report;
  }

  /** The tables, those first that others refer to. */
  static List<PackageTable<?>> of(Report report) {
    PackageTables tables = new PackageTables(report);
    return List.of(
        tables.cells(),
        tables.measures(),
        tables.figures(),
        CurveTables.curves(report),
        CurveTables.delivered(report));
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

  private PackageTable<FigureRow> figures() {
    return new PackageTable<>(
        "figures",
        "Figures",
        "One row per cell and measure; a figure that is not known has a row with its reason.",
        figureFields(),
        List.of("cell", MEASURES_KEY),
        Map.of("cell", CELLS, MEASURES_KEY, MEASURES),
        report.cells().stream().flatMap(PackageTables::figures).toList());
  }

  private static List<Field<FigureRow>> figureFields() {
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
            r -> String.join("; ", r.figure().notes())));
    fields.add(
        Field.yesNo(
            "unsure",
            "Unsure",
            "Whether it rests on something unsure, or on an assumption.",
            r -> r.figure().unsure()));
    return fields;
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

  static <T> Field<T> cell(Function<T, ReportedCell> cell) {
    return Field.<T>text(
            "cell", "Cell", "Id of the cell's record.", row -> cell.apply(row).record().id())
        .required()
        .with("pattern", CELL_ID);
  }

  private static <E> List<String> labels(E[] values, Function<E, String> label) {
    return Stream.of(values).map(label).toList();
  }
}
