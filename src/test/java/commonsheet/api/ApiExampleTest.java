package commonsheet.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.sheet.SheetException;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program in docs/api.md is this one, and does what the page says. */
class ApiExampleTest {
  private static final Path SHEETS = Path.of("fixtures", "sheets");

  private static String block(String begin) throws Exception {
    Matcher block =
        Pattern.compile(Pattern.quote(begin) + "\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(Path.of("docs", "api.md")));
    assertTrue(block.find());
    return block.group(1);
  }

  @Test
  void thePageShowsTheProgram() throws Exception {
    String source = "src/test/java/commonsheet/api/ApiExample.java";
    assertEquals(Files.readString(Path.of(source)), block("```java"));
  }

  @Test
  void theProgramPrintsWhatThePageSays(@TempDir Path folder) throws Exception {
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    ApiExample.run(
        List.of(
            SHEETS.resolve("ellerbeck-eb21700-48.pdf"), SHEETS.resolve("wexmoor-wx18650-30.pdf")),
        folder,
        new PrintStream(printed, true, StandardCharsets.UTF_8));
    assertEquals(block("it prints:\n\n```"), printed.toString(StandardCharsets.UTF_8));
  }

  @Test
  void aSheetThatIsNotThereIsNamed(@TempDir Path folder) {
    SheetException refusal =
        assertThrows(
            SheetException.class,
            () -> DatasheetReader.standard().read(folder.resolve("missing.pdf")));
    assertTrue(refusal.getMessage().contains("missing.pdf"), refusal.getMessage());
  }
}
