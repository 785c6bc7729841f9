package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * Where a value stands on the sheet and how it was obtained.
 *
 * @param page page number, from 1; null for what does not stand on the sheet itself
 * @param box x, y, width, height in points (1/72 in) from the top left of the page as displayed
 * @param text the words as printed
 * @param method how the value was obtained
 * @param rule the vocabulary entry or layout rule that named the quantity, such as {@code
 *     table/capacity}
 * @param words whether the words are the PDF's own text or recognised
 * @param confidence 0 to 1, for recognised words only
 * @param note what the reader did beyond copying, such as the capacity a C-rate was multiplied by
 * @param from ids of the statements and curves a derived value came from
 * @param file name of the file that hand-placed or measured points come from, without its folder
 * @param sha256 of that file
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Evidence(
    Integer page,
    List<Double> box,
    String text,
    Method method,
    String rule,
    WordSource words,
    Double confidence,
    String note,
    List<String> from,
    String file,
    String sha256) {
  public Evidence {
    box = box == null ? List.of() : List.copyOf(box);
    from = from == null ? List.of() : List.copyOf(from);
  }

  /** Evidence of what was read from the sheet or comes from what was read. */
  public Evidence(
      Integer page,
      List<Double> box,
      String text,
      Method method,
      String rule,
      WordSource words,
      Double confidence,
      String note,
      List<String> from) {
    this(page, box, text, method, rule, words, confidence, note, from, null, null);
  }

  /** Evidence of a value computed from statements and curves. */
  public static Evidence derived(String rule, String note, List<String> from) {
    return new Evidence(null, null, null, Method.DERIVED, rule, null, null, note, from);
  }

  /** Evidence of points that come from a file of the user's, by its name and SHA-256. */
  public static Evidence ofFile(String file, String sha256, Method method, String note) {
    return new Evidence(null, null, null, method, null, null, null, note, null, file, sha256);
  }
}
