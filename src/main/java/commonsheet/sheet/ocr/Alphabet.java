package commonsheet.sheet.ocr;

import commonsheet.sheet.RecogniserException;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The characters the recognition network tells apart; its first class is "none". */
final class Alphabet {
  private static final String DEGREE = "\u00B0";

  private static final String KEYS = "/models/ppocr_keys_v1.txt";

  /**
   * Letters whose small form is the capital one made smaller, so that print of one height is both.
   */
  private static final String SAME_SHAPE = "cCsSvVwWxXzZ";

  private static final int[] ALONE = {};

  private final List<String> characters;
  private final int[][] alike;

  private Alphabet(List<String> characters) {
    this.characters = characters;
    this.alike = alike(characters);
  }

  /** For each class the others that say the same. */
  private static int[][] alike(List<String> characters) {
    Map<String, List<Integer>> groups = new HashMap<>();
    for (int i = 0; i < characters.size(); i++) {
      groups.computeIfAbsent(meaning(characters.get(i)), m -> new ArrayList<>()).add(i);
    }
    int[][] alike = new int[characters.size()][];
    for (int i = 0; i < alike.length; i++) {
      int own = i;
      List<Integer> group = groups.get(meaning(characters.get(i)));
      alike[i] =
          group.size() == 1
              ? ALONE
              : group.stream().filter(other -> other != own).mapToInt(other -> other).toArray();
    }
    return alike;
  }

  /** Full-width forms mean the common ones, and the sign for degree Celsius begins as a degree. */
  private static String meaning(String character) {
    if (character.length() == 1 && SAME_SHAPE.contains(character)) {
      return character.toLowerCase(Locale.ROOT);
    }
    String plain = Normalizer.normalize(character, Normalizer.Form.NFKC);
    return plain.startsWith(DEGREE) ? DEGREE : plain;
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

  /**
   * Classes whose characters say the same as that of one: the network parts its confidence between
   * them.
   */
  int[] alike(int index) {
    return index < alike.length ? alike[index] : ALONE;
  }

  int size() {
    return characters.size();
  }
}
