package commonsheet.export.sizing;

import commonsheet.compare.VoltageTable;
import commonsheet.export.Caution;
import commonsheet.record.Evidence;
import commonsheet.record.Statement;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The columns of flat rows, always the same and in this order; docs/export.md lists them. */
final class RowFields {
  static final String SCHEMA = "commonsheet/cell-rows/1";
  static final String RESISTANCE = "curve_resistance";
  static final String TABLE = "voltage_table";

  /** More than any chart is read to. */
  private static final MathContext RESISTANCE_DIGITS = new MathContext(5);

  private static final List<Field<CellRow>> ALL = all();

  private RowFields() {}

  static List<Field<CellRow>> standard() {
    return ALL;
  }

  private static List<Field<CellRow>> all() {
    List<Field<CellRow>> fields = new ArrayList<>();
    fields.add(new Field<>("schema", row -> SCHEMA));
    fields.addAll(Field.identity(CellRow::origin));
    RowLayout.standard().columns().forEach(quantity -> stated(fields, quantity));
    resistance(fields);
    table(fields);
    fields.add(new Field<>("missing", CellRow::missing));
    fields.add(new Field<>("unsure", CellRow::unsure));
    fields.addAll(Field.review(CellRow::origin));
    fields.addAll(Field.source(CellRow::origin, CellRow::pages));
    fields.add(new Field<>("caution", row -> Caution.TEXT));
    return List.copyOf(fields);
  }

  private static void stated(List<Field<CellRow>> fields, RowQuantity quantity) {
    String name = quantity.name();
    String unit = RowLayout.standard().suffix(quantity);
    add(fields, name + unit, quantity, Statement::value);
    add(fields, name + "_low" + unit, quantity, Statement::low);
    add(fields, name + "_high" + unit, quantity, Statement::high);
    add(
        fields,
        name + "_statistic",
        quantity,
        s -> s.statistic() == null ? null : s.statistic().label());
    add(fields, name + "_conditions", quantity, Statement::conditions);
    add(fields, name + "_standing", quantity, s -> s.standing().label());
    add(fields, name + "_page", quantity, s -> page(s.evidence()));
    fields.add(new Field<>(name + "_others", row -> row.others(quantity)));
  }

  private static Integer page(Evidence evidence) {
    return evidence == null ? null : evidence.page();
  }

  private static void add(
      List<Field<CellRow>> fields,
      String name,
      RowQuantity quantity,
      Function<Statement, Object> value) {
    fields.add(
        new Field<>(
            name,
            row -> {
              Statement taken = row.taken(quantity);
              return taken == null ? null : value.apply(taken);
            }));
  }

  private static void resistance(List<Field<CellRow>> fields) {
    fields.add(new Field<>(RESISTANCE + "_mOhm", row -> rounded(row.resistance().value())));
    fields.add(new Field<>(RESISTANCE + "_low_mOhm", row -> rounded(row.resistance().low())));
    fields.add(new Field<>(RESISTANCE + "_high_mOhm", row -> rounded(row.resistance().high())));
    fields.add(
        new Field<>(
            RESISTANCE + "_conditions",
            row -> row.resistance().isKnown() ? row.grid().conditions() : null));
    fields.add(new Field<>(RESISTANCE + "_curves", row -> row.resistance().from()));
    fields.add(new Field<>(RESISTANCE + "_notes", row -> row.resistance().notes()));
  }

  private static Double rounded(Double resistance) {
    return resistance == null
        ? null
        : BigDecimal.valueOf(resistance).round(RESISTANCE_DIGITS).doubleValue();
  }

  private static void table(List<Field<CellRow>> fields) {
    ofTable(fields, "_lowest_current_A", table -> table.currents().get(0));
    ofTable(
        fields, "_highest_current_A", table -> table.currents().get(table.currents().size() - 1));
    ofTable(fields, "_cutoff_voltage_V", VoltageTable::cutoffVoltage);
    ofTable(fields, "_temperature_degC", VoltageTable::temperature);
    ofTable(fields, "_standing", VoltageTables::standing);
    fields.add(
        new Field<>(
            TABLE + "_file",
            row -> row.grid().table() == null ? null : row.origin().id() + VoltageTables.NAME));
    fields.add(new Field<>(TABLE + "_why_missing", row -> row.grid().why()));
  }

  private static void ofTable(
      List<Field<CellRow>> fields, String name, Function<VoltageTable, Object> value) {
    fields.add(
        new Field<>(
            TABLE + name,
            row -> row.grid().table() == null ? null : value.apply(row.grid().table())));
  }
}
