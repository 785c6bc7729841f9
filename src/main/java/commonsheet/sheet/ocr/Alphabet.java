package commonsheet.sheet.ocr;

import commonsheet.sheet.RecogniserException;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The characters the recognition network tells apart; its first class is "none". */
final class Alphabet {
  private static final String KEYS = "/models/ppocr_keys_v1.txt";

  private final List<String> characters;

  private Alphabet(List<String> characters) {
    this.characters = characters;
  }

  static Alphabet load() {
    List<String> characters = new ArrayList<>();
    characters.add("");
    try (InputStream in = Alphabet.class.getResourceAsStream(KEYS)) {
      if (in == null) {
        throw new RecogniserException("the jar has no list of characters; fetch it again", null);
      }
      new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
          .lines()
          .forEach(characters::add);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    characters.add(" ");
    return new Alphabet(List.copyOf(characters));
  }

  /** The character of a class. */
  String character(int index) {
    return index < characters.size() ? characters.get(index) : "";
  }

  int size() {
    return characters.size();
  }
}
