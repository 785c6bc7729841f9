package commonsheet.score;

import commonsheet.record.Cell;
import java.text.Normalizer;
import java.util.Locale;

/** Compares what is said about which cell a sheet describes. */
final class CellFields {
  private CellFields() {}

  /** Right if the texts are the same but for case, width (full or half) and white space. */
  static FieldOutcome compare(TruthField field, Cell cell) {
    String read = cell == null ? null : read(field.name(), cell);
    if (read == null) {
      return new FieldOutcome(Outcome.Kind.MISSED, field, null);
    }
    boolean same = fold(read).equals(fold(field.expected()));
    return new FieldOutcome(same ? Outcome.Kind.RIGHT : Outcome.Kind.WRONG, field, read);
  }

  /** The model that a truth's own cell row gives, or null. */
  static String model(Truth truth) {
    return truth.fields().stream()
        .filter(field -> field.name().equals("cell.model"))
        .map(TruthField::expected)
        .findFirst()
        .orElse(null);
  }

  /** Whether the cell's model has the same letters and digits. */
  static boolean sameModel(String model, Cell cell) {
    return model != null
        && cell != null
        && cell.model() != null
        && lettersAndDigits(model).equals(lettersAndDigits(cell.model()));
  }

  private static String read(String name, Cell cell) {
    return switch (name) {
      case "cell.maker" -> cell.maker();
      case "cell.model" -> cell.model();
      case "cell.designation" -> cell.designation();
      case "cell.chemistry" -> cell.chemistry();
      case "cell.form" -> cell.form();
      case "cell.sizeCode" -> cell.sizeCode();
      default -> throw new IllegalArgumentException(name + " is no member of a cell");
    };
  }

  private static String fold(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC)
        .toLowerCase(Locale.ROOT)
        .replaceAll("\\s", "");
  }

  private static String lettersAndDigits(String text) {
    return fold(text).replaceAll("[^\\p{L}\\p{N}]", "");
  }
}
