package commonsheet.layout;

import commonsheet.quantity.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts what stands in a cell into the pieces that each say one thing: "Charge: 0 to 45 °C" and
 * "Discharge: −20 to 60 °C" on two lines are two; a sentence over three lines is one.
 */
final class Segments {
  /**
   * A line with more words than this and no label of its own is part of a sentence. Common
   * practice, no source.
   */
  private static final int LONGEST_ITEM_WORDS = 9;

  private final Figures parser;
  private final Vocabulary vocabulary;
  private final Chunks chunks;

  Segments(Figures parser, Vocabulary vocabulary) {
    this.parser = parser;
    this.vocabulary = vocabulary;
    this.chunks = new Chunks(parser, vocabulary);
  }

  /** The pieces of a cell, top to bottom, each line parted where it says several things. */
  List<Passage> of(Passage passage) {
    return byLines(passage).stream().flatMap(p -> chunks.of(p).stream()).toList();
  }

  private List<Passage> byLines(Passage passage) {
    List<Passage> lines = passage.lines();
    if (lines.size() < 2) {
      return passage.isBlank() ? List.of() : List.of(passage);
    }
    List<Passage> segments = new ArrayList<>();
    Passage waiting = Passage.EMPTY; // lines without a figure, not yet known whose they are
    for (Passage line : lines) {
      Kind kind =
          waiting.isBlank() && !segments.isEmpty() && unclosed(last(segments))
              ? Kind.CONTINUES
              : kind(line, lines);
      if (kind == Kind.NO_FIGURE) {
        waiting = waiting.then(line);
      } else if (kind == Kind.STARTS_WITH_FIGURE || segments.isEmpty()) {
        boolean continues =
            endsOpen(waiting.isBlank() ? last(segments) : waiting) && !segments.isEmpty();
        if (continues && waiting.isBlank()) {
          extendLast(segments, line);
        } else {
          segments.add(waiting.then(line));
        }
        waiting = Passage.EMPTY;
      } else if (kind == Kind.CONTINUES) {
        extendLast(segments, waiting.then(line));
        waiting = Passage.EMPTY;
      } else {
        extendLast(segments, waiting);
        segments.add(line);
        waiting = Passage.EMPTY;
      }
    }
    if (segments.isEmpty()) {
      return List.of(passage);
    }
    extendLast(segments, waiting);
    return segments;
  }

  private enum Kind {
    NO_FIGURE,
    STARTS_WITH_FIGURE,
    HAS_OWN_LABEL,
    CONTINUES
  }

  private Kind kind(Passage line, List<Passage> lines) {
    String text = line.text();
    List<Figure> figures = parser.find(text);
    if (figures.isEmpty()) {
      return Kind.NO_FIGURE;
    }
    String before = text.substring(0, figures.get(0).start()).trim();
    if (text.trim().startsWith("(") || (text.trim().startsWith("\uFF08") && before.length() < 2)) {
      return Kind.CONTINUES;
    }
    if (isSentence(lines) && !before.endsWith(":") && !before.endsWith("\uFF1A")) {
      return Kind.CONTINUES;
    }
    if (before.isEmpty() || before.matches("[\\p{Punct}\\u2022\\u25CF\\u25C6\\u25A0\\s]+")) {
      return Kind.STARTS_WITH_FIGURE;
    }
    return vocabulary.hits(before).isEmpty()
            && !before.endsWith(":")
            && Tokens.of(before).size() > 1
        ? Kind.CONTINUES
        : Kind.HAS_OWN_LABEL;
  }

  private static boolean isSentence(List<Passage> lines) {
    long words = lines.stream().mapToLong(l -> Tokens.of(l.text()).size()).sum();
    return words > (long) LONGEST_ITEM_WORDS * lines.size();
  }

  /** Whether a passage ends with a sign or an open bracket, so that the next line must go on. */
  private static boolean endsOpen(Passage passage) {
    String text = passage.text().trim();
    return !text.isEmpty()
        && "\u2264\u2265<>\u00B1(~-+/,\u2266\u2267".indexOf(text.charAt(text.length() - 1)) >= 0;
  }

  private static boolean unclosed(Passage passage) {
    String text = passage.text();
    long opened = text.chars().filter(c -> c == '(' || c == '\uFF08').count();
    long closed = text.chars().filter(c -> c == ')' || c == '\uFF09').count();
    return opened > closed;
  }

  private static Passage last(List<Passage> segments) {
    return segments.isEmpty() ? Passage.EMPTY : segments.get(segments.size() - 1);
  }

  private static void extendLast(List<Passage> segments, Passage more) {
    if (more.isBlank()) {
      return;
    }
    if (segments.isEmpty()) {
      segments.add(more);
    } else {
      segments.set(segments.size() - 1, last(segments).then(more));
    }
  }
}
