package commonsheet.workbench.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import commonsheet.record.Standing;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two browsers at one record: the second is told, and nothing is overwritten. */
class RecordConflictTest {
  @TempDir Path home;

  @Test
  void theSecondIsToldKeepsWhatWasTypedAndLoadsTheNewState() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "harrowmere-hm18650-29e")) {
      RecordScreen first = RecordScreen.of(workbench);
      RecordScreen second = RecordScreen.of(workbench);
      second.edit("s7");
      second.type("2930 mAh");

      first.press("c");
      first.awaitSettled(1);

      // Told without asking for anything.
      assertThat(second.page.locator(".conflict")).containsText("has changed this record");
      assertThat(second.field("edit-typed")).hasValue("2930 mAh");
      assertEquals(List.of(), OpenWorkbench.inaccessible(second.page));
      second.field("edit-typed").press("Enter");
      assertThat(second.page.locator(".editor .refused")).isVisible();
      assertEquals(Standing.READ, RecordFile.read(workbench).statement("s7").standing());

      second.page.locator(".conflict button").click();
      assertThat(second.row("s1")).containsText("confirmed");
      assertThat(second.field("edit-typed")).hasValue("2930 mAh");
      second.field("edit-typed").press("Enter");
      assertThat(second.row("s7")).containsText("corrected");
      assertEquals(Standing.CONFIRMED, RecordFile.read(workbench).statement("s1").standing());
      assertEquals(2.93, RecordFile.read(workbench).statement("s7").value());
    }
  }

  @Test
  void aKeyPressedOnAnOldStateChangesNothing() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "harrowmere-hm18650-29e")) {
      RecordScreen first = RecordScreen.of(workbench);
      RecordScreen second = RecordScreen.of(workbench);
      first.press("c");
      first.awaitSettled(1);
      second.press("ArrowDown", "c");
      assertThat(second.page.locator(".conflict")).isVisible();
      assertEquals("s2", second.chosen());
      assertEquals(0, second.settled());
      assertEquals(Standing.READ, RecordFile.read(workbench).statement("s2").standing());
    }
  }
}
