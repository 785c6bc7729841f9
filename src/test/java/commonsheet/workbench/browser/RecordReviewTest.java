package commonsheet.workbench.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.CellRecord;
import commonsheet.record.Standing;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A record is reviewed in a real browser from the first value to the approval. */
class RecordReviewTest {
  /** From a freshly read sheet to approval; issue 5. */
  private static final int ACTIONS_FOR_A_RIGHT_VALUE = 2;

  @TempDir Path home;

  @Test
  void aWholeSheetIsReviewedAndApprovedByKeyboardAlone() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "harrowmere-hm18650-29e")) {
      RecordScreen screen = RecordScreen.of(workbench);
      int total = screen.total();
      assertEquals(List.of(), OpenWorkbench.inaccessible(screen.page));

      int actions = 0;
      for (int settled = 1; settled <= total; settled++) {
        screen.press("c");
        actions++;
        screen.awaitSettled(settled);
      }
      assertTrue(actions <= ACTIONS_FOR_A_RIGHT_VALUE * total, actions + " for " + total);
      assertThat(screen.list()).isFocused();

      screen.press("Shift+A");
      assertThat(screen.page.getByRole(com.microsoft.playwright.options.AriaRole.DIALOG))
          .containsText("All " + total + " values and curves are settled");
      assertEquals(List.of(), OpenWorkbench.inaccessible(screen.page));
      screen.press("Enter");
      assertThat(screen.told()).containsText("approved by first reviewer");

      CellRecord record = RecordFile.read(workbench);
      assertEquals("approved", record.review().state());
      assertEquals("first reviewer", record.review().approvedBy());
      assertEquals(
          Set.of(Standing.CONFIRMED),
          Set.copyOf(record.curves().stream().map(each -> each.standing()).toList()));
    }
  }

  @Test
  void keysThatAreHeldDownConfirmOneValueEach() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "harrowmere-hm18650-29e")) {
      RecordScreen screen = RecordScreen.of(workbench);
      screen.press("c", "c", "c");
      screen.awaitSettled(3);
      assertEquals("s4", screen.chosen());
      assertEquals(
          List.of("s1", "s2", "s3"),
          RecordFile.read(workbench).review().steps().stream()
              .flatMap(each -> each.about().stream())
              .toList());
    }
  }

  @Test
  void arrowsGoAlongTheListAndTheFocusIsNotLost() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "harrowmere-hm18650-29e")) {
      RecordScreen screen = RecordScreen.of(workbench);
      screen.press("ArrowDown", "ArrowDown");
      assertEquals("s3", screen.chosen());
      assertThat(screen.list()).hasAttribute("aria-activedescendant", "part-s3");
      screen.press("End", "Home");
      assertEquals("s1", screen.chosen());
      screen.press("Shift+?");
      assertThat(screen.page.getByText("Confirm it, and go to the next one to settle")).isVisible();
      assertEquals(List.of(), OpenWorkbench.inaccessible(screen.page));
      screen.press("Escape");
      assertThat(screen.list()).isFocused();
    }
  }

  @Test
  void lettersDoNothingWhereTheyAreTurnedOff() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "harrowmere-hm18650-29e")) {
      RecordScreen screen = RecordScreen.of(workbench);
      screen.press("Shift+?");
      screen.page.getByText("Single letters act as keys").click();
      screen.press("Escape", "c", "ArrowDown");
      assertEquals("s2", screen.chosen());
      assertEquals(0, screen.settled());
      assertThat(screen.told()).isEmpty();
    }
  }

  @Test
  void whoPreparedARecordApprovesItOnlyBySayingSo() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "sorrelbeck-sb14500-06")) {
      RecordScreen screen = RecordScreen.of(workbench);
      int total = screen.total();
      screen.press("x");
      screen.type("it is not about this cell");
      screen.press("Control+Enter");
      screen.awaitSettled(1);
      assertThat(screen.list()).isFocused();
      screen.press("n");
      for (int settled = 2; settled <= total; settled++) {
        screen.press("c");
        screen.awaitSettled(settled);
      }
      screen.press("Shift+A");
      assertThat(screen.page.getByText("I prepared this myself")).isVisible();
      screen.press("Enter");
      assertEquals("draft", RecordFile.read(workbench).review().state());
      screen.press("Space", "Enter");
      assertThat(screen.told()).containsText("approved by first reviewer");
      assertEquals(Boolean.TRUE, RecordFile.read(workbench).review().ownWork());
    }
  }

  @Test
  void whatWasDoneIsUndoneAndDoneAgain() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "sorrelbeck-sb14500-06")) {
      RecordScreen screen = RecordScreen.of(workbench);
      screen.press("c");
      screen.awaitSettled(1);
      screen.press("Control+z");
      screen.awaitSettled(0);
      screen.press("Control+Shift+Z");
      screen.awaitSettled(1);
      assertThat(screen.row("s1")).containsText("confirmed");
    }
  }

  @Test
  void confirmingGoesOnFromWhatIsSettledAndLeavesItAsItIs() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "sorrelbeck-sb14500-06")) {
      RecordScreen screen = RecordScreen.of(workbench);
      screen.press("x", "Control+Enter");
      screen.awaitSettled(1);
      assertThat(screen.list()).isFocused();
      screen.press("c");
      assertEquals("s2", screen.chosen());
      assertEquals(Standing.REJECTED, RecordFile.read(workbench).statement("s1").standing());
    }
  }

  @Test
  void aCuratorSaysThatTheRecordIsPrepared() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "sorrelbeck-sb14500-06")) {
      RecordScreen screen = RecordScreen.of(workbench);
      screen.page.getByText("I have prepared this for a reviewer").click();
      assertThat(screen.told()).containsText("prepared for a reviewer");
      assertEquals("first reviewer", RecordFile.read(workbench).review().preparedBy());
    }
  }
}
