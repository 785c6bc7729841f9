package commonsheet.workbench.desk;

import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.workbench.http.Given;
import commonsheet.workbench.http.Refusal;
import java.util.List;

/** Where a value stands, as a page gives it. */
final class GivenPlace {
  private static final int NUMBERS = 4;

  /** Larger than any paper, in points: 10 m. */
  private static final double FARTHEST = 28_350;

  private GivenPlace() {}

  /**
   * The place on the sheet as evidence.
   *
   * @param place {page, box, text}, or null for none
   * @param typed what the person typed, for a place without words
   * @return null where none is given
   */
  static Evidence of(Given place, String typed) {
    if (place == null) {
      return null;
    }
    List<Double> box = place.numbers("box");
    int page = place.whole("page");
    boolean sound =
        box.size() == NUMBERS
            && box.stream().allMatch(n -> Math.abs(n) <= FARTHEST)
            && box.get(2) > 0
            && box.get(3) > 0
            && page > 0;
    if (!sound) {
      throw new Refusal(
          Refusal.Kind.UNUSABLE, "This is no place on a page; draw the box on the sheet again.");
    }
    String words = place.text("text");
    String text = words == null || words.isBlank() ? typed : words;
    if (text == null || text.isBlank()) {
      throw new Refusal(Refusal.Kind.UNUSABLE, "Say which words stand at that place.");
    }
    return new Evidence(page, box, text.strip(), Method.TYPED_IN, null, null, null, null, null);
  }
}
