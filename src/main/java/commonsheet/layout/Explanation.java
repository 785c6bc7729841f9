package commonsheet.layout;

import java.util.List;

/**
 * How a reading came about.
 *
 * @param layout name and version of the layout chosen
 * @param why why this layout was chosen, one sentence
 * @param languages codes of the languages read
 * @param outcomes every labelled place seen, in the order of the sheet, with what became of it
 */
public record Explanation(
    String layout, String why, List<String> languages, List<Outcome> outcomes) {
  public Explanation {
    languages = List.copyOf(languages);
    outcomes = List.copyOf(outcomes);
  }
}
