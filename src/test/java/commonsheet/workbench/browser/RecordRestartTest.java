package commonsheet.workbench.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import commonsheet.record.Standing;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program is ended while a record is open in a browser, and started again. */
class RecordRestartTest {
  @TempDir Path home;

  @Test
  void whatWasSavedIsThereAndCanStillBeUndone() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "harrowmere-hm18650-29e")) {
      RecordScreen before = RecordScreen.of(workbench);
      before.press("c", "c");
      before.awaitSettled(2);
      workbench.restart();

      before.press("c");
      assertThat(before.told()).containsText("start `commonsheet workbench` again");
      assertEquals("s3", before.chosen());
      assertEquals(Standing.READ, RecordFile.read(workbench).statement("s3").standing());

      RecordScreen after = RecordScreen.of(workbench);
      after.awaitSettled(2);
      after.press("Control+z");
      after.awaitSettled(1);
      assertEquals(Standing.READ, RecordFile.read(workbench).statement("s2").standing());
    }
  }
}
