package commonsheet.layout;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** The vocabularies and terms that come with the program. */
final class Resources {
  private static final ObjectMapper YAML =
      new ObjectMapper(new YAMLFactory()).enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES);

  /** A vocabulary file: the words of one language. */
  record Language(
      String language,
      List<Vocabulary.Phrases> phrases,
      List<Vocabulary.Heading> columns,
      List<Vocabulary.Phrases> identity) {}

  private Resources() {}

  static Language language(String code) {
    return read("vocabulary/" + code + ".yaml", Language.class);
  }

  static Terms terms() {
    return read("terms.yaml", Terms.class);
  }

  static Identity.IdentityWords identityWords() {
    return read("identity.yaml", Identity.IdentityWords.class);
  }

  private static <T> T read(String name, Class<T> type) {
    try (InputStream in = Resources.class.getResourceAsStream("/commonsheet/layout/" + name)) {
      if (in == null) {
        throw new IllegalStateException(
            "the program's own file " + name + " is missing; build it again");
      }
      return YAML.readValue(in, type);
    } catch (IOException e) {
      throw new UncheckedIOException(
          "the program's own file " + name + " cannot be read; build it again", e);
    }
  }
}
