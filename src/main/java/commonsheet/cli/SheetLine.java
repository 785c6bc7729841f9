package commonsheet.cli;

import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Standing;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The words in which {@code read} tells what came of a sheet. */
final class SheetLine {
  private SheetLine() {}

  /** Such as {@code Tarn Cells T-2500 — 27 statements, 3 unsure, 8 curves, 2 findings}. */
  static String of(CellRecord record) {
    long unsure = record.statements().stream().filter(s -> s.standing() == Standing.UNSURE).count();
    return cell(record.cell())
        + " — "
        + count(record.statements().size(), "statement")
        + ", "
        + unsure
        + " unsure, "
        + (record.curves().isEmpty() ? "" : count(record.curves().size(), "curve") + ", ")
        + count(record.findings().size(), "finding");
  }

  /** Such as {@code page 3 is a picture: no words to read}. */
  static String pictures(List<Integer> pages) {
    return pages(pages)
        + (pages.size() == 1 ? " is a picture" : " are pictures")
        + ": no words to read";
  }

  /** A number with its noun, such as {@code 1 finding}. */
  static String count(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }

  private static String cell(Cell cell) {
    String name =
        cell == null
            ? ""
            : Stream.of(cell.maker(), cell.model())
                .filter(part -> part != null && !part.isBlank())
                .collect(Collectors.joining(" "));
    return name.isEmpty() ? "a cell without a name" : name;
  }

  private static String pages(List<Integer> numbers) {
    String list = numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    int lastComma = list.lastIndexOf(", ");
    return numbers.size() == 1
        ? "page " + list
        : "pages " + list.substring(0, lastComma) + " and " + list.substring(lastComma + 2);
  }
}
