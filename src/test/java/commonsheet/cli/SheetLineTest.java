package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import commonsheet.record.Standing;
import java.util.List;
import org.junit.jupiter.api.Test;

class SheetLineTest {
  @Test
  void aLineNamesTheCellAndCountsWhatToLookAt() {
    assertEquals(
        "Tarnlight TL-25 — 1 statement, 1 unsure, 0 findings",
        SheetLine.of(Records.of("tl-25", "a.pdf", Standing.UNSURE)));
  }

  @Test
  void picturePagesAreNamedOneByOne() {
    assertEquals("page 3 is a picture: no words to read", SheetLine.pictures(List.of(3)));
    assertEquals(
        "pages 1, 2 and 7 are pictures: no words to read", SheetLine.pictures(List.of(1, 2, 7)));
  }
}
