package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * Where a value stands on the sheet and how it was obtained.
 *
 * @param page page number, from 1; null for a value that comes from other statements
 * @param box x, y, width, height in points (1/72 in) from the top left of the page as displayed
 * @param text the words as printed
 * @param method how the value was obtained
 * @param rule the vocabulary entry or layout rule that named the quantity, such as {@code
 *     table/capacity}
 * @param words whether the words are the PDF's own text or recognised
 * @param confidence 0 to 1, for recognised words only
 * @param note what the reader did beyond copying, such as the capacity a C-rate was multiplied by
 * @param from ids of the statements a derived value came from
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
    List<String> from) {
  public Evidence {
    box = box == null ? List.of() : List.copyOf(box);
    from = from == null ? List.of() : List.copyOf(from);
  }
}
