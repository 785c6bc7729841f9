package commonsheet.review;

import commonsheet.record.Cell;
import commonsheet.record.Evidence;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What a record says of which cell it is about, one by one. */
public enum CellMember {
  MAKER("maker", "Maker"),
  MODEL("model", "Model"),
  DESIGNATION("designation", "Designation"),
  CHEMISTRY("chemistry", "Chemistry"),
  FORM("form", "Form"),
  SIZE_CODE("sizeCode", "Size code");

  private static final String PREFIX = "cell.";

  private final String name;
  private final String title;

  CellMember(String name, String title) {
    this.name = name;
    this.title = title;
  }

  /** Its name in the cell, such as {@code model}. */
  public String member() {
    return name;
  }

  /** What people are shown, such as {@code Size code}. */
  public String title() {
    return title;
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

  /**
   * The cell with another text here.
   *
   * @param text null where the sheet does not say it; then its evidence goes too
   */
  public Cell set(Cell cell, String text) {
    List<String> texts = all(cell);
    texts.set(ordinal(), text);
    Map<String, Evidence> evidence = new TreeMap<>(cell.evidence());
    if (text == null) {
      evidence.remove(name);
    }
    return new Cell(
        texts.get(0),
        texts.get(1),
        texts.get(2),
        texts.get(3),
        texts.get(4),
        texts.get(5),
        evidence);
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
