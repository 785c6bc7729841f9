package commonsheet.api;

import commonsheet.compare.Condition;
import commonsheet.compare.Contender;
import commonsheet.compare.Figure;
import commonsheet.compare.Load;
import commonsheet.compare.Measure;
import commonsheet.compare.Requirement;
import commonsheet.compare.Shortlist;
import commonsheet.export.sizing.CellVoltageTable;
import commonsheet.export.sizing.ExportFolder;
import commonsheet.export.sizing.ExportFormat;
import commonsheet.export.sizing.SizingExport;
import commonsheet.export.sizing.VoltageTables;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordStore;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;

/** Reads sheets, compares their cells under a survey boat's load, and exports them. */
public final class ApiExample {
  private ApiExample() {}

  public static void run(List<Path> sheets, Path folder, PrintStream out) throws Exception {
    // Read each sheet; a sheet may describe several cells.
    DatasheetReader reader = DatasheetReader.standard();
    RecordStore store = new RecordStore(folder.resolve("records"));
    for (Path sheet : sheets) {
      for (CellRecord record : reader.read(sheet).records()) {
        store.write(record);
      }
    }

    // Load the records again, as they may be corrected and approved in between.
    List<CellRecord> records = store.readAll();

    // Two packs of 4 cells in series: 15.6 A on average, 30 A at the peak, shared by two cells.
    Requirement boat = new Requirement(15.6, 30, 2, 4, 1, Requirement.USUAL_FACTOR, 0, null);
    Condition condition = Condition.usual(Load.constant(15.6).sharedAmong(boat.sharing()));
    Shortlist shortlist = Shortlist.of(records, condition, boat, Measure.DELIVERED_SPECIFIC_ENERGY);
    for (Contender contender : shortlist.contenders()) {
      Figure energy = contender.cell().figure(Measure.DELIVERED_ENERGY);
      String delivered =
          energy.isKnown()
              ? String.format(Locale.ROOT, "%.1f Wh, %s", energy.value(), energy.origin().label())
              : String.join("; ", energy.notes());
      out.printf(
          "%s: %s, %s%n", contender.cell().record().id(), contender.verdict().label(), delivered);
    }

    // Export, and read a look-up grid back.
    SizingExport export = SizingExport.of(records, condition.cutoffVoltage(), null);
    Path exported = folder.resolve("export");
    new ExportFolder(exported).write(export.files(EnumSet.of(ExportFormat.JSON)));
    for (CellVoltageTable table : export.tables()) {
      String name = table.origin().id() + ".voltage-table.json";
      CellVoltageTable read = VoltageTables.read(exported.resolve(name));
      out.printf("%s: voltage at %s A%n", read.origin().id(), read.table().currents());
    }
  }
}
