package commonsheet.export.report;

import commonsheet.compare.DischargeLine;
import commonsheet.quantity.QuantityCatalogue;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The tables of the data package that charts are drawn from. */
final class CurveTables {
  /** A point of a discharge, from 1. */
  record PointRow(ReportedCell cell, DischargeLine line, int point) {}

  /** What a cell gives at a current. */
  record DeliveredRow(ReportedCell cell, Delivered given) {}

  private CurveTables() {}

  /** The digitised discharges, point by point. */
  static PackageTable<PointRow> curves(Report report) {
    return new PackageTable<>(
        "curves",
        "Discharge curves",
        "The digitised discharges that the figures come from, down to the cut-off.",
        pointFields(),
        List.of("cell", "curve", "point"),
        Map.of("cell", PackageTables.CELLS),
        report.cells().stream().flatMap(CurveTables::points).toList());
  }

  private static List<Field<PointRow>> pointFields() {
    return List.of(
        PackageTables.cell(PointRow::cell),
        Field.<PointRow>text("curve", "Curve", "Id of the record's curve.", r -> r.line().curve())
            .required(),
        Field.<PointRow>integer("point", "Point", "Along the curve, from 1.", PointRow::point)
            .required(),
        Field.<PointRow>number(
                "current", "A", "Current", "Constant discharge current.", r -> r.line().current())
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
  }

  private static Stream<PointRow> points(ReportedCell cell) {
    return cell.discharges().stream()
        .flatMap(
            line ->
                IntStream.rangeClosed(1, line.charge().size())
                    .mapToObj(point -> new PointRow(cell, line, point)));
  }

  /** What each cell gives at constant currents. */
  static PackageTable<DeliveredRow> delivered(Report report) {
    List<Field<DeliveredRow>> fields = new ArrayList<>();
    fields.add(PackageTables.cell(DeliveredRow::cell));
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
        Map.of("cell", PackageTables.CELLS),
        report.cells().stream()
            .flatMap(cell -> cell.delivered().stream().map(d -> new DeliveredRow(cell, d)))
            .toList());
  }
}
