package commonsheet.workbench.place;

import static org.junit.jupiter.api.Assertions.assertEquals;

import commonsheet.sheet.Box;
import commonsheet.sheet.Page;
import commonsheet.sheet.PageKind;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordSearchTest {
  /** Words of 50 points each, side by side; {@code /} begins a new line. */
  private static Page page(int number, String text) {
    List<Word> words = new ArrayList<>();
    double x = 0;
    double y = 0;
    for (String each : text.split(" ")) {
      if (each.equals("/")) {
        x = 0;
        y += 20;
      } else {
        words.add(new Word(each, new Box(x, y, 50, 10), 10, false, 0, 0, false, 1));
        x += 60;
      }
    }
    return new Page(number, 600, 800, words, List.of(), List.of(), List.of(), PageKind.WORDS);
  }

  private static List<String> found(String text, Page... pages) {
    return WordSearch.of(text).in(List.of(pages)).stream().map(WordSearch.Hit::text).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "capacity, Capacity",
    "NOMINAL CAPACITY, Nominal Capacity",
    "nominal  cap, Nominal Capacity",
    "3350 mAh, 3350mAh",
    "2.5V, 2.5 V",
    "2.5 V, 2.5 V",
    "pacit, Capacity",
    "容量, ３３５０標準容量",
    "3350標準, ３３５０標準容量",
  })
  void findsWhatAReaderMeans(String text, String words) {
    assertEquals(List.of(words), found(text, page(1, "Nominal Capacity 3350mAh / 2.5 V ３３５０標準容量")));
  }

  @ParameterizedTest
  @CsvSource({"ty33", "nominalcapacity", "cap acity", "'  '", "''"})
  void doesNotFindWhatIsNotSaid(String text) {
    assertEquals(List.of(), found(text, page(1, "magic Nominal Capacity battery 33Ah")));
  }

  @Test
  void phraseOverTwoLinesHasABoxOnEach() {
    List<WordSearch.Hit> hits =
        WordSearch.of("discharge current").in(List.of(page(4, "Maximum discharge / current 10A")));
    assertEquals(1, hits.size());
    assertEquals(4, hits.get(0).page());
    assertEquals(List.of(new Box(60, 0, 50, 10), new Box(0, 20, 50, 10)), hits.get(0).boxes());
  }

  @Test
  void placesComeInTheOrderOfThePages() {
    List<WordSearch.Hit> hits =
        WordSearch.of("mass").in(List.of(page(1, "Mass 45g"), page(2, "mass Mass")));
    assertEquals(List.of(1, 2, 2), hits.stream().map(WordSearch.Hit::page).toList());
  }
}
