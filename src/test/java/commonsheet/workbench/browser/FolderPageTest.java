package commonsheet.workbench.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list of the folder's records in a real browser. */
class FolderPageTest {
  @TempDir Path home;

  @Test
  void listsTheRecordsOfTheFolder() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "ellerbeck-eb21700-48")) {
      Page page = workbench.page("");
      assertThat(page.getByText("EB21700-48").first()).isVisible();
      assertEquals(List.of(), OpenWorkbench.inaccessible(page));
    }
  }
}
