package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong in a rule file is said with its line and with what was probably meant. */
class RuleFaultsTest {
  private static final String GOOD =
      """
      name: %s
      version: 1
      description: d
      recognise: {allOf: [x]}
      """;

  @TempDir private Path folder;

  @TestFactory
  List<DynamicTest> everyFaultIsSaidWithItsLine() throws IOException {
    String cases = Files.readString(Path.of("src/test/resources/layout/faults.txt"));
    List<DynamicTest> tests = new ArrayList<>();
    for (String part : cases.split("(?m)^== ", -1)) {
      int body = part.indexOf('\n');
      int message = part.indexOf("\n-- ");
      if (message >= 0) {
        String title = part.substring(0, body);
        String yaml = part.substring(body + 1, message + 1);
        String expected = part.substring(message + 4).strip();
        tests.add(DynamicTest.dynamicTest(title, () -> assertEquals(expected, fault(yaml))));
      }
    }
    assertTrue(tests.size() > 20, "the file of cases was not taken apart");
    return tests;
  }

  @Test
  void aFolderThatDoesNotExistIsNamed() {
    Path missing = folder.resolve("nowhere");
    LayoutException fault = assertThrows(LayoutException.class, () -> LayoutLibrary.load(missing));
    assertEquals(
        missing + " does not exist; name a folder of layout rule files", fault.getMessage());
  }

  @Test
  void aFileInPlaceOfTheFolderIsNamed() throws IOException {
    Path file = Files.writeString(folder.resolve("a.yaml"), GOOD.formatted("a"));
    LayoutException fault = assertThrows(LayoutException.class, () -> LayoutLibrary.load(file));
    assertEquals(file + " is no folder; name a folder of layout rule files", fault.getMessage());
  }

  @Test
  void twoRulesOfOneNameAreRefused() throws IOException {
    Files.writeString(folder.resolve("a.yaml"), GOOD.formatted("same"));
    Files.writeString(folder.resolve("b.yml"), GOOD.formatted("same"));
    assertEquals(
        "b.yml: a layout rule named \"same\" is in a.yaml already; give this one another name",
        loaded());
  }

  @Test
  void theNameOfABuiltInRuleIsTaken() throws IOException {
    Files.writeString(folder.resolve("a.yaml"), GOOD.formatted("pouch-letters"));
    assertEquals(
        "a.yaml: a layout rule named \"pouch-letters\" is in the program itself already; give this"
            + " one another name",
        loaded());
  }

  @Test
  void bytesThatAreNoTextAreSaidToBeNone() throws IOException {
    Files.write(folder.resolve("a.yaml"), new byte[] {'n', 'a', (byte) 0xE4, ':'});
    assertEquals("a.yaml is no text in UTF-8; save it as such", loaded());
  }

  @Test
  void filesOfOtherKindsAreLeftAlone() throws IOException, LayoutException {
    Files.writeString(folder.resolve("README.md"), "# Our rules");
    Files.writeString(folder.resolve(".a.yaml.swp"), "x");
    Files.createDirectory(folder.resolve("old.yaml"));
    Files.writeString(folder.resolve("B.YAML"), GOOD.formatted("b"));
    LayoutLibrary.load(folder);
  }

  private String fault(String yaml) throws IOException {
    Files.writeString(folder.resolve("rule.yaml"), yaml);
    return loaded();
  }

  private String loaded() {
    LayoutException fault = assertThrows(LayoutException.class, () -> LayoutLibrary.load(folder));
    return fault.getMessage().replace(folder + "/", "");
  }
}
