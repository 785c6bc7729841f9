package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.sheet.Sheet;
import commonsheet.sheet.SheetException;
import commonsheet.sheet.SheetReader;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A starting point is a rule already, and a safe one. */
class StarterRuleTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "harrowmere-hm18650-29e",
        "marrowfen-mp554350",
        "quellmoor-qz21700-40p",
        "xuhu-xh505068",
        "zephrane-zp21700-50"
      })
  void aStarterOfAFixtureIsValidShortAndRecognisesItsSheet(String name)
      throws SheetException, LayoutException {
    Sheet sheet = SheetReader.read(Path.of("fixtures", "sheets", name + ".pdf"));
    holdsFor(sheet);
  }

  @Test
  void awkwardTextsStayTextsOfYaml() throws LayoutException {
    Sheet sheet =
        Sheets.of(
            List.of("\"Cells\": {50 %} #1 \\ — no: yes", "- x: &a *b !c"),
            new String[] {"Trait: \"a\"", "[Figure]"},
            new String[] {"#Juice, {x}", "2600 mAh # \u0007"},
            new String[] {"null", "3.6 V"});
    String starter = holdsFor(sheet);
    assertTrue(starter.contains("\\\"Cells\\\""), starter);
  }

  @Test
  void aSheetThatSaysNothingHasAStarterToo() throws LayoutException {
    holdsFor(Sheets.of(List.of()));
  }

  @Test
  void aLongSheetIsCutShort() throws LayoutException {
    String[][] rows = new String[60][];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = new String[] {"Whim " + (char) ('a' + i % 26) + "q" + i, i + 1 + " V"};
    }
    String starter = holdsFor(Sheets.of(List.of("Whims"), rows));
    assertTrue(starter.contains(" more that explain shows"), starter);
  }

  @Test
  void aQuantityIsFilledInOnlyWhereThereIsNoOther() throws LayoutException {
    Sheet sheet =
        Sheets.of(
            List.of("Whims"),
            new String[] {"Trait", "Figure"},
            new String[] {"Heft", "46 g"},
            new String[] {"Girth", "18 mm"},
            new String[] {"Juice", "2600"});
    String starter = holdsFor(sheet);
    assertTrue(starter.contains("[\"Heft\"], quantity: mass} # 46 g\n"), starter);
    assertTrue(starter.contains("[\"Girth\"], quantity: choose} # 18 mm: diameter, "), starter);
    assertTrue(starter.contains("[\"Juice\"], quantity: choose} # 2600\n"), starter);
  }

  @Test
  void aLineLeftAtChooseIsNotTaken() {
    String rule =
        """
        name: a
        version: 1
        description: d
        recognise: {allOf: [x]}
        labels:
          - {say: ["Girth"], quantity: choose}
        """;
    List<RuleProblem> problems =
        RuleFile.checked("a", rule, new RuleSchema(), new RuleMeaning()).problems();
    assertEquals(6, problems.get(0).line());
    assertTrue(
        problems.get(0).sentence().startsWith("\"quantity\" cannot be \"choose\"; choose from"),
        problems.toString());
  }

  /** Valid, at most 40 lines, used for its own sheet, and the same when made again with it. */
  private static String holdsFor(Sheet sheet) throws LayoutException {
    Reading reading = new RecordReader(LayoutLibrary.load(null)).read(sheet);
    String starter = StarterRule.of(sheet, reading);
    assertTrue(starter.lines().count() <= 40, starter);
    RuleFile file = RuleFile.checked("starter", starter, new RuleSchema(), new RuleMeaning());
    assertEquals(List.of(), file.problems(), starter);
    LayoutRule rule = file.rule().orElseThrow();
    LayoutLibrary library = new LayoutLibrary(List.of(rule), List.of());
    if (!sheet.pages().get(0).words().isEmpty()) {
      Reading again = new RecordReader(library).read(sheet);
      assertEquals(rule.name() + " 1", again.explanation().layout(), starter);
      assertEquals(starter, StarterRule.of(sheet, again));
      assertEquals(
          reading.explanation().outcomes(), again.explanation().outcomes(), "it changes nothing");
    }
    return starter;
  }
}
