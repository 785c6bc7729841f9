package commonsheet.export.sizing;

import commonsheet.compare.VoltageTable;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Voltage tables as files, in two forms that hold the same: JSON and CSV. */
public final class VoltageTables {
  /** Behind a record's id in the name of a file, before its ending. */
  static final String NAME = ".voltage-table";

  static final String UNSURE = "unsure";
  private static final String READ = "read";

  private VoltageTables() {}

  /** The text of a file after {@code schemas/voltage-table.schema.json}. */
  public static String json(CellVoltageTable table) {
    return VoltageTableJson.text(table);
  }

  /** The text of a CSV file; docs/export.md names the columns. */
  public static String csv(CellVoltageTable table) {
    return VoltageTableCsv.text(table);
  }

  /**
   * Reads a file of either form, by its ending: CSV for {@code .csv}, JSON for any other.
   *
   * @throws ExportException where it cannot be read or is no voltage table; names the file
   */
  public static CellVoltageTable read(Path file) throws ExportException {
    String text;
    try {
      text = Files.readString(file);
    } catch (NoSuchFileException e) {
      throw new ExportException(file + " does not exist; check the name", e);
    } catch (CharacterCodingException e) {
      throw new ExportException(file + " is not in UTF-8; export it again", e);
    } catch (IOException e) {
      throw new ExportException(file + " cannot be read; check that it is a file you may read", e);
    }
    return file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".csv")
        ? readCsv(text, file.toString())
        : readJson(text, file.toString());
  }

  /**
   * Reads the text of a JSON file.
   *
   * @param name what to call it in messages
   * @throws ExportException where it is no voltage table
   */
  public static CellVoltageTable readJson(String text, String name) throws ExportException {
    return VoltageTableJson.read(text, name);
  }

  /**
   * Reads the text of a CSV file.
   *
   * @param name what to call it in messages
   * @throws ExportException where it is no voltage table
   */
  public static CellVoltageTable readCsv(String text, String name) throws ExportException {
    return VoltageTableCsv.read(text, name);
  }

  static String standing(VoltageTable table) {
    return table.unsure() ? UNSURE : READ;
  }

  /** Holds what the schema cannot say: a full grid over ascending axes, empty at its ends only. */
  static CellVoltageTable checked(CellVoltageTable cell, String name) throws ExportException {
    VoltageTable table = cell.table();
    String fault = null;
    if (!ascends(table.currents()) || table.currents().size() < 2) {
      fault = "needs at least two currents, in ascending order";
    } else if (!ascends(table.charges()) || table.charges().get(0) != 0) {
      fault = "needs capacities in ascending order from 0";
    } else if (table.voltages().size() != table.currents().size()
        || table.voltages().stream().anyMatch(row -> row.size() != table.charges().size())) {
      fault = "needs one row of voltages for each current, with one value for each capacity";
    } else if (table.voltages().stream().anyMatch(row -> !endsOnce(row))) {
      fault = "has a row of voltages with a gap, or without any";
    }
    if (fault != null) {
      throw new ExportException(name + " is no voltage table: it " + fault + "; export it again");
    }
    return cell;
  }

  private static boolean ascends(List<Double> numbers) {
    for (int i = 0; i < numbers.size(); i++) {
      if (numbers.get(i) == null || (i > 0 && numbers.get(i) <= numbers.get(i - 1))) {
        return false;
      }
    }
    return !numbers.isEmpty();
  }

  private static boolean endsOnce(List<Double> row) {
    boolean ended = false;
    for (Double voltage : row) {
      if (ended && voltage != null) {
        return false;
      }
      ended = voltage == null;
    }
    return row.get(0) != null;
  }
}
