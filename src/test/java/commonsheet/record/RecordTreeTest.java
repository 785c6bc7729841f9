package commonsheet.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Records made of trees are those that Jackson's own mapper makes of them. */
class RecordTreeTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final RecordTree RECORDS = new RecordTree(MAPPER);

  static List<Variant> valid() throws IOException {
    return Variant.all().stream().filter(Variant::valid).toList();
  }

  @Test
  void theSampleIsAsTheMapperMakesIt() throws IOException {
    assertSame(Samples.full());
  }

  @ParameterizedTest
  @MethodSource("valid")
  void everyValidVariantIsAsTheMapperMakesIt(Variant variant) throws IOException {
    assertSame(variant.apply(Samples.full()));
  }

  private static void assertSame(String json) throws IOException {
    JsonNode tree = MAPPER.readTree(json);
    CellRecord expected = MAPPER.treeToValue(tree, CellRecord.class);
    CellRecord made = RECORDS.record(tree);
    assertEquals(expected, made);
    assertEquals(expected.hashCode(), made.hashCode());
    assertEquals(RecordJson.write(expected), RecordJson.write(made));
  }
}
