package commonsheet.export.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import commonsheet.export.Cells;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.quantity.QuantityKind;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import systems.uom.ucum.format.UCUMFormat;

/**
 * What a cell says as linked data, as an independent reader understands it. IRIs of EMMO are from
 * domain-electrochemistry (commit 588dffa7), domain-battery and core, CC BY 4.0; of QUDT from its
 * public repository (commit 8b9168d2).
 */
class LinkedCellTest {
  private static final String CELL = "<urn:commonsheet:cell:tarn-cells-heron-26";
  private static final String TYPE = "> <http://www.w3.org/1999/02/22-rdf-syntax-ns#type> <";
  private static final String ELECTRO =
      "https://w3id.org/emmo/domain/electrochemistry#electrochemistry_";
  private static final String EMMO = "https://w3id.org/emmo#EMMO_";
  private static final String QUDT = "> <http://qudt.org/schema/qudt/";
  private static final String DOUBLE = "\"^^<http://www.w3.org/2001/XMLSchema#double> .";

  @TempDir Path folder;
  private static List<String> heron;

  /** Read once, since starting the reader takes a while. */
  private List<String> heron() throws Exception {
    if (heron == null) {
      heron = said(Cells.heron());
    }
    return heron;
  }

  private List<String> said(CellRecord record) throws Exception {
    Optional<String> why = JsonLdReader.whyUnavailable();
    assumeTrue(why.isEmpty(), () -> "not read as JSON-LD: " + why.orElseThrow());
    Path file = folder.resolve(record.id() + ".jsonld");
    return JsonLdReader.quads(Files.writeString(file, SizingExport.jsonLd(record)));
  }

  @ParameterizedTest
  @CsvSource({
    "s1, d3c0078e_c1d3_461e_873d_e5c3adf441c5, minimum capacity",
    "s2, 34d6cdd9_d3a7_4302_a54d_9dbd8a3b5e68, typical capacity",
    "s4, 639b844a_e801_436b_985d_28926129ead6, nominal voltage (IEV 482-03-31)",
    "s5, 6dcd5baf_58cd_43f5_a692_51508e036c88, upper voltage limit",
    "s6, 534dd59c_904c_45d9_8550_ae9d2eb6bbc9, lower voltage limit (IEV 482-03-30)",
    "s9, 39d8a6ee_cd55_4855_8b5b_d42bef95ac78, maximum continuous charging current",
    "s12, ba7ac581_0e13_4815_b888_013c378932f5, maximum continuous discharging current",
    "s14, 3e54f9e3_a31d_4821_9bfb_ef953a42c35b, maximum pulse discharging current",
    "s15, 964cd426_f3cf_4a52_8c5d_0490cf48edb5, AC internal resistance",
    "s16, 7b3eb826_b968_493a_8396_cc3a5f09ecb3, DC internal resistance",
    "s20-low, b90b1ad7_b9a8_44df_ad45_bfd25aac2e49, minimum charging temperature",
    "s20-high, 4a354510_4dc2_4803_8845_f4024a1a7260, maximum charging temperature",
    "s21-low, 2a1de79f_e927_45a2_9619_3799a0d61e9b, minimum discharging temperature",
    "s21-high, de612af2_a029_4a02_8090_4a75ab13271d, maximum discharging temperature",
    "s24, ae782b14_88ce_4cdd_9418_12aca00be937, cycle life",
  })
  void statementsHaveTheirTermsOfElectrochemistry(String id, String term, String name)
      throws Exception {
    String quad = CELL + '#' + id + TYPE + ELECTRO + term + "> .";
    assertTrue(heron().contains(quad), name);
  }

  /** EMMO's way to give a number: hasProperty, hasNumericalPart, hasNumberValue, a unit. */
  @Test
  void aPropertyHasItsNumberAsEmmoGivesIt() throws Exception {
    List<String> quads = heron();
    String property = CELL + "> <" + EMMO + "e1097637_70d2_4895_973f_2396f04fa204> ";
    assertTrue(quads.contains(property + CELL + "#s2> ."));
    assertTrue(
        quads.contains(CELL + "#s17" + TYPE + EMMO + "ed4af7ae_63a2_497e_bb88_2309619ea405> ."));
    String numerical = CELL + "#s2> <" + EMMO + "8ef3cd6d_ae58_4a8d_9fc0_ad8f49015cd0> ";
    String part = quads.stream().filter(q -> q.startsWith(numerical)).findFirst().orElseThrow();
    String blank = part.substring(numerical.length(), part.length() - 2);
    String number = "> \"2.6E0" + DOUBLE;
    assertTrue(
        quads.contains(blank + " <" + EMMO + "faf79f53_749d_40b2_807c_d34244c192f4" + number));
    assertTrue(
        quads.contains(
            CELL
                + "#s2> <"
                + EMMO
                + "bed1d005_b04e_4a90_94cf_02bc678a8569> <http://qudt.org/vocab/unit/A-HR> ."));
  }

  /** "max. 18 mΩ" is no resistance of 18 mΩ: it is a bound of it. */
  @Test
  void aLimitIsABoundAndNoValue() throws Exception {
    List<String> quads = heron();
    assertTrue(quads.contains(CELL + "#s15" + QUDT + "upperBound> \"1.8E1" + DOUBLE));
    assertTrue(quads.stream().noneMatch(q -> q.startsWith(CELL + "#s15" + QUDT + "numericValue")));
    // What is called a maximum is one by its name.
    assertTrue(quads.contains(CELL + "#s12" + QUDT + "numericValue> \"2.0E1" + DOUBLE));
  }

  /** In EG-604050's record statements s2 and s5 are in doubt and the mass was rejected. */
  @Test
  void whatIsInDoubtIsNoProperty() throws Exception {
    List<String> quads = said(Cells.egret());
    String cell = "<urn:commonsheet:cell:eg-604050> ";
    String property = "<" + EMMO + "e1097637_70d2_4895_973f_2396f04fa204> ";
    assertTrue(quads.contains(cell + property + "<urn:commonsheet:cell:eg-604050#s1> ."));
    assertFalse(quads.contains(cell + property + "<urn:commonsheet:cell:eg-604050#s2> ."));
    assertTrue(
        quads.contains(
            cell + "<urn:commonsheet:term:unsureProperty> <urn:commonsheet:cell:eg-604050#s2> ."));
    assertTrue(quads.stream().noneMatch(q -> q.contains("\"mass\"")));
  }

  @Test
  void tellsTheSheetAndThePlaceOnIt() throws Exception {
    CellRecord heron = Cells.heron();
    CellRecord known =
        Cells.withSheet(heron, "2cf24dba5fb0a30e26e83b2ac5b9e29e1b161e5c1fa7425e73043362938b9824");
    List<String> quads = said(known);
    // SHA-256 of "hello"; RFC 6920 names a file by it in base64url.
    String sheet = "<ni:///sha-256;LPJNul-wow4m6DsqxbninhsWHlwfp0JecwQzYpOLmCQ>";
    assertTrue(
        quads.contains(CELL + "> <http://www.w3.org/ns/prov#wasDerivedFrom> " + sheet + " ."));
    assertTrue(
        quads.stream()
            .anyMatch(q -> q.endsWith("<http://www.w3.org/ns/oa#hasSource> " + sheet + " .")));
    assertTrue(quads.stream().anyMatch(q -> q.endsWith(" \"page=3\" .")), "the page");
  }

  @Test
  void hostileTextStaysText() throws Exception {
    List<String> quads = said(Cells.bittern());
    assertTrue(
        quads.stream()
            .anyMatch(
                q -> q.endsWith("<https://schema.org/name> \"=Fen|Energy* Co., \\\"Ltd\\\"\" .")));
  }

  @Test
  void aRecordThatSaysNothingIsStillACell() throws Exception {
    assertTrue(
        said(Cells.blank())
            .contains(
                "<urn:commonsheet:cell:blank"
                    + TYPE
                    + "https://w3id.org/emmo/domain/battery#battery_68ed592a_7924_45d0_a108_94d6275d57f0> ."));
  }

  /** Every term that is used is defined, so that no reader drops one. */
  @Test
  void everyTermStandsInTheContext() throws Exception {
    LinkedTerms terms = LinkedTerms.standard();
    JsonNode context = new ObjectMapper().valueToTree(LinkedTerms.context());
    Stream.of(
            terms.statements().values().stream().flatMap(t -> t.values().stream()),
            terms.ranges().values().stream().flatMap(List::stream),
            terms.conditions().values().stream(),
            terms.cases().values().stream())
        .flatMap(s -> s)
        .forEach(term -> assertTrue(context.has(term), term));
    assertEquals(List.copyOf(terms.conditionUnits().keySet()).size(), Conditions.NAMES.size());
    assertTrue(terms.conditionUnits().keySet().containsAll(Conditions.NAMES));
    for (QuantityKind kind : QuantityCatalogue.standard().all()) {
      assertTrue(terms.units().containsKey(kind.unit()), kind.unit());
    }
  }

  /** The factors to SI units that QUDT gives (its conversionMultiplier) are those of UCUM. */
  @ParameterizedTest
  @CsvSource({
    "A.h, A-HR, C, 3600",
    "W.h, W-HR, J, 3600",
    "V, V, V, 1",
    "A, A, A, 1",
    "mOhm, MilliOHM, Ohm, 0.001",
    "g, GM, kg, 0.001",
    "mm, MilliM, m, 0.001",
    "W.h/kg, W-HR-PER-KiloGM, J/kg, 3600",
    "W.h/L, W-HR-PER-L, J/m3, 3600000",
    "s, SEC, s, 1",
    "h-1, PER-HR, s-1, 0.000277777777777778",
  })
  void unitsAreThoseOfUcum(String ucum, String qudt, String si, double factor) throws Exception {
    assertEquals("unit:" + qudt, LinkedTerms.standard().unit(ucum));
    UCUMFormat format = UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);
    Unit<?> unit = format.parse(ucum);
    double converted = unit.getConverterToAny(format.parse(si)).convert(1.0);
    assertEquals(factor, converted, 1e-12 * Math.max(1, factor));
  }
}
