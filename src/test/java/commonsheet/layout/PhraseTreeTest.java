package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which phrases of the vocabulary a text holds, whatever its print. */
class PhraseTreeTest {
  private final PhraseTree tree = new PhraseTree();

  private static PhraseTree with(String... phrases) {
    PhraseTree tree = new PhraseTree();
    for (String phrase : phrases) {
      tree.add(phrase, List.of(phrase));
    }
    return tree;
  }

  private static List<String> found(PhraseTree tree, String text) {
    return tree.find(text).stream().flatMap(hit -> hit.means().stream()).toList();
  }

  private static Set<String> sorted(PhraseTree tree, String text) {
    return new TreeSet<>(found(tree, text));
  }

  // ---- tokens ----

  @ParameterizedTest
  @CsvSource({
    "'Nominal  Capacity:', nominal capacity",
    "'Ｍａｘ．', max",
    "'标称 电压', 标 称 电 压",
    "'C5A', c 5 a",
    "'Item #', item #",
    "'10 μΩ', 10",
    "'décharge', décharge"
  })
  void printMakesNoDifference(String printed, String key) {
    assertEquals(key, Tokens.key(printed));
  }

  @Test
  void aWordBrokenAtTheEndOfALineIsOne() {
    assertEquals("discharge current", Tokens.key("dis-\ncharge current"));
  }

  @Test
  void aHyphenBeforeACapitalPartsWords() {
    assertEquals("cut off", Tokens.key("Cut-\nOff"));
  }

  @Test
  void tokensKnowTheirPlaces() {
    String text = "(Max.) capacity";
    Tokens.Token second = Tokens.of(text).get(1);
    assertEquals("capacity", text.substring(second.start(), second.end()));
  }

  // ---- phrases ----

  @Test
  void theLongestPhraseWins() {
    PhraseTree phrases = with("cycle", "cycle life", "life");
    assertEquals(List.of("cycle life", "cycle"), found(phrases, "Cycle life: 500 cycle"));
  }

  @Test
  void aPhraseDoesNotReachIntoALongerWord() {
    assertEquals(List.of(), found(with("charge"), "discharge"));
  }

  @Test
  void theFirstToNameAPhraseDecides() {
    tree.add("limit", List.of("first"));
    tree.add("limit", List.of("second"));
    assertEquals(List.of("first"), found(tree, "limit"));
  }

  @Test
  void whatIsNoPhraseIsPassedOver() {
    assertEquals(List.of("voltage"), found(with("voltage", "rated voltage cell"), "rated voltage"));
  }

  @Test
  void anEmptyPhraseIsNone() {
    tree.add("…", List.of("nothing"));
    assertEquals(List.of(), tree.find("… 3.7 V"));
  }

  // ---- compounds ----

  @Test
  void aWordOfTwoKnownOnesMeansBoth() {
    assertEquals(
        Set.of("shipping", "voltage"), sorted(with("shipping", "voltage"), "Shippingvoltage"));
  }

  @Test
  void germanCompoundsAreTakenApart() {
    PhraseTree german = with("entlade", "schluss", "spannung");
    assertEquals(
        Set.of("entlade", "schluss", "spannung"), sorted(german, "Entladeschlussspannung"));
  }

  @Test
  void germanJoinsWordsWithAnS() {
    assertEquals(Set.of("lagerung", "dauer"), sorted(with("lagerung", "dauer"), "Lagerungsdauer"));
  }

  @Test
  void aCompoundMustBeKnownWhole() {
    assertEquals(List.of(), found(with("voltage", "over"), "overvoltagexyz"));
  }

  @Test
  void shortWordsMakeNoCompound() {
    assertEquals(List.of(), found(with("cap", "acity", "max"), "maxcap"));
  }

  // ---- ideographs ----

  @Test
  void ideographsNeedNoSpaces() {
    assertEquals(List.of("标称", "电压"), found(with("标称", "电压"), "电池标称电压"));
  }

  @Test
  void aSingleIdeographSaysAThingOnlyAlone() {
    PhraseTree width = with("宽");
    assertEquals(List.of("宽"), found(width, "宽 34 mm"));
    assertEquals(List.of("宽"), found(width, "(宽)"));
    assertEquals(List.of(), found(width, "宽温电池"));
    assertEquals(List.of(), found(width, "放宽"));
  }

  // ---- misprints ----

  @ParameterizedTest
  @CsvSource({
    "Capcity, capacity",
    "Capapcity, capacity",
    "Capatity, capacity",
    "Capacitiy, capacity",
    "Dicharge, discharge",
    "Votlage, voltage"
  })
  void aWordOneLetterOffIsMeant(String printed, String meant) {
    assertEquals(List.of(meant), found(with("capacity", "discharge", "voltage"), printed));
  }

  @ParameterizedTest
  @CsvSource({"charge, discharge", "Capcty, capacity", "volage, voltages"})
  void twoLettersOffIsAnotherWord(String printed, String known) {
    assertEquals(List.of(), found(with(known), printed));
  }

  @Test
  void aShortWordIsNeverAMisprint() {
    assertEquals(List.of(), found(with("mass"), "mast"));
  }

  @Test
  void aMisprintNearTwoWordsMeansNeither() {
    Spelling spelling = new Spelling();
    spelling.learn("storage");
    spelling.learn("stowage");
    assertNull(spelling.meant("stoage"));
    assertEquals("storage", spelling.meant("storge"));
  }

  @Test
  void aWordOfItsOwnIsNoMisprintOfAnother() {
    assertTrue(found(with("charged", "charges"), "charges").equals(List.of("charges")));
  }
}
