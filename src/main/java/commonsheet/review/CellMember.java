package commonsheet.review;

import commonsheet.record.Cell;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** What a record says of which cell it is about, one by one. */
public enum CellMember {
  MAKER("maker"),
  MODEL("model"),
  DESIGNATION("designation"),
  CHEMISTRY("chemistry"),
  FORM("form"),
  SIZE_CODE("sizeCode");

  private static final String PREFIX = "cell.";

  private final String name;

  CellMember(String name) {
    this.name = name;
  }

  /** Such as {@code cell.model}. */
  public String label() {
    return PREFIX + name;
  }

  /** Whether a word names a member of the cell rather than a statement. */
  public static boolean isMeant(String word) {
    return word.startsWith(PREFIX);
  }

  /**
   * The member of a name.
   *
   * @throws ReviewException if there is none
   */
  public static CellMember named(String label) throws ReviewException {
    for (CellMember member : values()) {
      if (member.label().equals(label)) {
        return member;
      }
    }
    String known = Arrays.stream(values()).map(CellMember::label).collect(Collectors.joining(", "));
    throw new ReviewException("\"" + label + "\" is none of " + known);
  }

  /** What a cell says, or null. */
  public String of(Cell cell) {
    return all(cell).get(ordinal());
  }

  /** The cell with another text here. */
  public Cell set(Cell cell, String text) {
    List<String> texts = all(cell);
    texts.set(ordinal(), text);
    return new Cell(
        texts.get(0),
        texts.get(1),
        texts.get(2),
        texts.get(3),
        texts.get(4),
        texts.get(5),
        cell.evidence());
  }

  private static List<String> all(Cell cell) {
    return Arrays.asList(
        cell.maker(),
        cell.model(),
        cell.designation(),
        cell.chemistry(),
        cell.form(),
        cell.sizeCode());
  }
}
