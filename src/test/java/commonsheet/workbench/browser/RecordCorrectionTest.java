package commonsheet.workbench.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.options.AriaRole;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Values are corrected, returned, and their findings answered, in a real browser. */
class RecordCorrectionTest {
  @TempDir Path home;

  @Test
  void aValueIsTypedInAnyUnitAndTheReadingIsKept() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "harrowmere-hm18650-29e")) {
      RecordScreen screen = RecordScreen.of(workbench);
      screen.edit("s7");
      assertEquals(List.of(), OpenWorkbench.inaccessible(screen.page));
      screen.type("2930 mAh");
      screen.press("Enter");

      assertThat(screen.told()).containsText("Saved: Capacity, typical");
      assertThat(screen.list()).isFocused();
      assertThat(screen.row("s7")).containsText("2.93");
      assertThat(screen.row("s7")).containsText("corrected");
      assertThat(screen.chosenPanel()).containsText("was typical 2.9");
      Statement statement = RecordFile.read(workbench).statement("s7");
      assertEquals(2.93, statement.value());
      assertEquals(2.9, statement.original().value());
      assertEquals("Capacity *2 Typ. 2900mAh", statement.evidence().text());
      assertEquals(Standing.CORRECTED, statement.standing());
    }
  }

  @Test
  void conditionsAreChangedAddedAndTakenAway() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "harrowmere-hm18650-29e")) {
      RecordScreen screen = RecordScreen.of(workbench);
      Statement before = RecordFile.read(workbench).statement("s3");
      assertEquals(25, before.conditions().get("temperature"));
      screen.edit("s3");
      screen.page.getByLabel("Take away Temperature").click();
      screen.page.getByText("Add a condition").click();
      screen.page.getByLabel("Condition", exactly()).selectOption("duration");
      screen.page.getByLabel("Value of", beginning()).fill("10 min");
      screen
          .page
          .getByText("Save", new com.microsoft.playwright.Page.GetByTextOptions().setExact(true))
          .click();

      assertThat(screen.row("s3")).containsText("corrected");
      Statement after = RecordFile.read(workbench).statement("s3");
      assertEquals(null, after.conditions().get("temperature"));
      assertEquals(600, after.conditions().get("duration"));
      assertEquals(before.value(), after.value());
    }
  }

  @Test
  void whatIsRefusedStaysInTheFormAndAfterAReload() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "harrowmere-hm18650-29e")) {
      RecordScreen screen = RecordScreen.of(workbench);
      screen.edit("s7");
      screen.type("quite a lot");
      screen.press("Enter");
      assertThat(screen.page.locator(".editor .refused")).containsText("quite a lot");
      assertThat(screen.field("edit-typed")).hasValue("quite a lot");
      screen.page.reload();
      assertThat(screen.field("edit-typed")).hasValue("quite a lot");
      screen.press("Escape");
      screen.page.getByRole(AriaRole.DIALOG).getByText("Give it up").click();
      assertThat(screen.list()).isFocused();
      assertEquals(0, screen.settled());
    }
  }

  @Test
  void aReturnedValueStandsAsUnsureWithTheRemark() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "harrowmere-hm18650-29e")) {
      RecordScreen screen = RecordScreen.of(workbench);
      screen.press("r");
      screen.type("which charge is meant?");
      screen.press("Control+Enter");
      assertThat(screen.row("s1")).containsText("unsure");
      assertThat(screen.row("s1")).containsText("which charge is meant?");
      assertThat(screen.list()).isFocused();
    }
  }

  @Test
  void aFindingThatComesUpIsAcceptedForAReason() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "harrowmere-hm18650-29e")) {
      RecordScreen screen = RecordScreen.of(workbench);
      screen.edit("s6");
      screen.type("2950 mAh");
      screen.press("Enter");
      assertThat(screen.row("s6")).containsText("corrected");
      int open =
          (int)
              RecordFile.read(workbench).findings().stream().filter(each -> each.isOpen()).count();
      assertTrue(open > 0, "a minimum above the typical capacity is found");
      assertThat(screen.chosenPanel().locator(".finding").first()).isVisible();
      assertEquals(List.of(), OpenWorkbench.inaccessible(screen.page));

      screen.press("f");
      screen.type("the maker confirmed it");
      screen.press("Control+Enter");
      assertThat(screen.chosenPanel()).containsText("first reviewer lets it stand");
      assertThat(screen.chosenPanel()).containsText("the maker confirmed it");
      assertThat(screen.list()).isFocused();
    }
  }

  @Test
  void whichCellItIsCanBePutRight() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "harrowmere-hm18650-29e")) {
      RecordScreen screen = RecordScreen.of(workbench);
      screen.page.getByTitle("Correct: Model").click();
      screen.page.getByRole(AriaRole.DIALOG).getByLabel("Model").fill("HM18650-29F");
      screen.press("Enter");
      assertThat(screen.page.getByRole(AriaRole.HEADING).first()).containsText("HM18650-29F");
      assertEquals("HM18650-29F", RecordFile.read(workbench).cell().model());
    }
  }

  private static com.microsoft.playwright.Page.GetByLabelOptions exactly() {
    return new com.microsoft.playwright.Page.GetByLabelOptions().setExact(true);
  }

  private static com.microsoft.playwright.Page.GetByLabelOptions beginning() {
    return new com.microsoft.playwright.Page.GetByLabelOptions().setExact(false);
  }
}
