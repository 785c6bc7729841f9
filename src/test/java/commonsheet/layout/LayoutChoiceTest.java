package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.layout.LayoutRule.Recognise;
import commonsheet.sheet.Sheet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which rule is used for a sheet, and the reason given. */
class LayoutChoiceTest {
  private static final Sheet SHEET =
      Sheets.of(
          List.of("Cell card", "Ｔhistlemoor Cellwrights, lithium-ion"),
          new String[] {"Trait", "Figure"},
          new String[] {"Juice", "2600 mAh"},
          new String[] {"Push", "3.6 V"});

  @Test
  void widthOfCharactersAndCaseMakeNoDifference() {
    Recognise wanted = new Recognise(List.of("THISTLEMOOR cellwrights"), null, null, null);
    assertEquals("a", choose(List.of(rule("a", wanted)), List.of()).rule().name());
  }

  @Test
  void partOfAWordIsNotTheWord() {
    Recognise wanted = new Recognise(List.of("moor Cell"), null, null, null);
    assertEquals(LayoutRule.GENERAL, choose(List.of(rule("a", wanted)), List.of()).rule());
  }

  @Test
  void theRuleThatAsksForMoreIsUsed() {
    Recognise little = new Recognise(List.of("Cell card"), null, null, null);
    Recognise more = new Recognise(List.of("Cell card"), null, List.of("figure", "trait"), null);
    LayoutLibrary.Choice choice = choose(List.of(rule("a", little), rule("b", more)), List.of());
    assertEquals("b", choice.rule().name());
    assertEquals(
        "its first pages say \"Cell card\" and a table has the headings \"figure\", \"trait\"; a"
            + " fits too",
        choice.why());
  }

  @Test
  void oneOfTheUsersComesBeforeABuiltInOneThatAsksForMore() {
    Recognise little = new Recognise(List.of("Cell card"), null, null, null);
    Recognise more =
        new Recognise(List.of("Cell card", "lithium"), null, null, List.of("Juice", "Push"));
    LayoutLibrary.Choice choice = choose(List.of(rule("z", little)), List.of(rule("a", more)));
    assertEquals("z", choice.rule().name());
  }

  @Test
  void ofTwoThatAskForAsMuchTheFirstByNameIsUsed() {
    Recognise one = new Recognise(null, List.of("leaflet", "Cell card"), null, null);
    assertEquals("a", choose(List.of(rule("b", one), rule("a", one)), List.of()).rule().name());
  }

  @Test
  void theUserIsToldWhyTheirRuleIsNotUsed() {
    Recognise wanted =
        new Recognise(List.of("Cell leaflet"), List.of("x", "y"), List.of("Trait", "Push"), null);
    assertEquals(
        "no rule file recognises it; the general vocabulary serves; not by a, since \"Cell"
            + " leaflet\" does not stand on its first two pages and none of \"x\", \"y\" stands on"
            + " its first two pages and no table has the headings \"Trait\", \"Push\"",
        choose(List.of(rule("a", wanted)), List.of()).why());
  }

  @Test
  void lettersBesideADrawingAreDimensionsOfAPouchCell() throws LayoutException {
    Sheet sheet =
        Sheets.of(
            List.of("Polymer lithium-ion cell"),
            new String[] {"T", "4.3 mm"},
            new String[] {"W", "25.5 mm"},
            new String[] {"L", "36 mm"},
            new String[] {"L1", "37 mm"});
    Explanation explanation = new RecordReader(LayoutLibrary.load(null)).read(sheet).explanation();
    assertEquals("pouch-letters 1", explanation.layout());
    List<String> results = explanation.outcomes().stream().map(Outcome::result).toList();
    assertTrue(results.contains("layout/pouch-letters/thickness"), results.toString());
    assertTrue(results.contains("layout/pouch-letters/width"), results.toString());
    assertTrue(results.contains("layout/pouch-letters/length"), results.toString());
    assertEquals(1, explanation.outcomes().stream().filter(o -> o.label().equals("L1")).count());
    assertEquals(
        3, explanation.outcomes().stream().filter(Outcome::matched).count(), results.toString());
  }

  private static LayoutLibrary.Choice choose(List<LayoutRule> own, List<LayoutRule> builtIn) {
    return new LayoutLibrary(own, builtIn).choose(SHEET);
  }

  private static LayoutRule rule(String name, Recognise recognise) {
    return new LayoutRule(name, 1, "d", recognise, null, null, null, null, null, null);
  }
}
