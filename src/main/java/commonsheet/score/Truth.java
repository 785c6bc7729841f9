package commonsheet.score;

import java.nio.file.Path;
import java.util.List;

/**
 * All that a sheet says of one cell, as a careful person reads it: complete for the quantities of
 * the record model, so that a statement not listed here is not on the sheet.
 *
 * @param sheet name of the truth file without {@code .truth.csv}
 * @param model which of the sheet's models this truth describes; null where the sheet has one
 * @param rows the statements
 * @param fields maker, model and the like, as far as the sheet names them
 */
public record Truth(String sheet, String model, List<TruthRow> rows, List<TruthField> fields) {
  /** How the names of truth files end. */
  public static final String SUFFIX = ".truth.csv";

  public Truth {
    rows = List.copyOf(rows);
    fields = List.copyOf(fields);
  }

  /**
   * Reads a truth file: UTF-8 CSV with the columns {@code
   * quantity,statistic,value,low,high,unit,conditions,page,text}.
   *
   * @throws TruthException if the file cannot be read, or a row does not make sense
   */
  public static Truth load(Path file) throws TruthException {
    return load(file, null);
  }

  /** The same, for the truth of one model of a sheet that describes several. */
  static Truth load(Path file, String model) throws TruthException {
    return new TruthReader(file).read(model);
  }

  /** Nothing at all: what a record that the truths do not know is scored against. */
  static Truth none(String sheet) {
    return new Truth(sheet, null, List.of(), List.of());
  }
}
