package commonsheet.export.sizing;

import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** The content of rows.yaml, which explains its members. */
record RowLayout(List<RowQuantity> columns, Map<String, String> units) {
  private static final RowLayout STANDARD = load("/commonsheet/export/rows.yaml");

  RowLayout {
    columns = List.copyOf(columns);
    units = Map.copyOf(units);
  }

  static RowLayout standard() {
    return STANDARD;
  }

  /** How the unit of a quantity is written at the end of a column name. */
  String suffix(RowQuantity quantity) {
    return '_' + units.get(quantity.unit());
  }

  private static RowLayout load(String path) {
    try (InputStream in = RowLayout.class.getResourceAsStream(path)) {
      return YAMLMapper.builder()
          .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
          .build()
          .readValue(in, RowLayout.class);
    } catch (IOException e) {
      throw new UncheckedIOException("the resource " + path + " is damaged", e);
    }
  }
}
