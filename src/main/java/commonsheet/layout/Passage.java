package commonsheet.layout;

import commonsheet.sheet.Box;
import commonsheet.sheet.Line;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece of text that still knows where each of its words stands on the page. Lines are parted by
 * line feeds.
 */
final class Passage {
  /** A word and where it begins in the text. */
  private record Placed(int start, int end, Word word) {}

  private static final String SUPERSCRIPTS =
      "\u2070\u00B9\u00B2\u00B3\u2074\u2075\u2076\u2077\u2078\u2079";

  static final Passage EMPTY = new Passage(0, "", List.of());

  private final int page;
  private final String text;
  private final List<Placed> words;

  private Passage(int page, String text, List<Placed> words) {
    this.page = page;
    this.text = text;
    this.words = words;
  }

  static Passage of(int page, List<Line> lines) {
    StringBuilder text = new StringBuilder();
    List<Placed> placed = new ArrayList<>();
    for (Line line : lines) {
      if (!text.isEmpty()) {
        text.append('\n');
      }
      boolean first = true;
      for (Word word : line.words()) {
        if (!first) {
          text.append(' ');
        }
        first = false;
        String printed = marker(word);
        placed.add(new Placed(text.length(), text.length() + printed.length(), word));
        text.append(printed);
      }
    }
    return new Passage(page, text.toString(), List.copyOf(placed));
  }

  /** A raised figure beside a word is a footnote's marker; it must not pass for a number. */
  private static String marker(Word word) {
    if (word.raised() <= 0
        || word.text().length() != 1
        || !Character.isDigit(word.text().charAt(0))) {
      return withoutLigatures(word.text());
    }
    return String.valueOf(SUPERSCRIPTS.charAt(word.text().charAt(0) - '0'));
  }

  private static String withoutLigatures(String text) {
    if (text.chars().noneMatch(c -> c >= 0xFB00 && c <= 0xFB04)) {
      return text;
    }
    return text.replace("\uFB00", "ff")
        .replace("\uFB01", "fi")
        .replace("\uFB02", "fl")
        .replace("\uFB03", "ffi")
        .replace("\uFB04", "ffl");
  }

  static Passage ofWords(int page, List<Word> words) {
    return words.isEmpty() ? EMPTY : of(page, List.of(new Line(words)));
  }

  int page() {
    return page;
  }

  String text() {
    return text;
  }

  boolean isBlank() {
    return text.isBlank();
  }

  /** The text on one line, for showing. */
  String shown() {
    return text.replaceAll("\\s+", " ").trim();
  }

  Passage part(int start, int end) {
    List<Placed> inside = new ArrayList<>();
    for (Placed p : words) {
      if (p.end > start && p.start < end) {
        inside.add(new Placed(Math.max(0, p.start - start), Math.min(end, p.end) - start, p.word));
      }
    }
    return new Passage(page, text.substring(start, end), inside);
  }

  /** This passage followed by another of the same page on a new line. */
  Passage then(Passage other) {
    if (isBlank()) {
      return other;
    }
    if (other.isBlank()) {
      return this;
    }
    List<Placed> all = new ArrayList<>(words);
    int shift = text.length() + 1;
    other.words.forEach(p -> all.add(new Placed(p.start + shift, p.end + shift, p.word)));
    return new Passage(page, text + "\n" + other.text, all);
  }

  List<Passage> lines() {
    List<Passage> lines = new ArrayList<>();
    int start = 0;
    while (start <= text.length()) {
      int end = text.indexOf('\n', start);
      if (end < 0) {
        end = text.length();
      }
      if (end > start) {
        lines.add(part(start, end));
      }
      start = end + 1;
    }
    return lines;
  }

  /** The box around the words that [start, end) touches; null where it touches none. */
  Box box(int start, int end) {
    List<Box> boxes =
        words.stream().filter(p -> p.end > start && p.start < end).map(p -> p.word.box()).toList();
    return boxes.isEmpty() ? null : Box.around(boxes);
  }

  Box box() {
    return box(0, text.length());
  }

  /**
   * The least confidence among the words that [start, end) touches; null where all are the file's
   * own text.
   */
  Double recognisedConfidence(int start, int end) {
    return words.stream()
        .filter(p -> p.end > start && p.start < end && p.word.recognised())
        .map(p -> p.word.confidence())
        .min(Double::compare)
        .orElse(null);
  }

  /** Whether the two hold the same printed word, as a passage and a part of it do. */
  boolean sharesWords(Passage other) {
    return words.stream().anyMatch(p -> other.words.stream().anyMatch(o -> o.word == p.word));
  }

  @Override
  public String toString() {
    return shown();
  }
}
