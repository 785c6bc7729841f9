package commonsheet.layout;

import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.record.Method;
import commonsheet.sheet.Line;
import commonsheet.sheet.Page;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Turns the lines of a page that stand in no table into entries: numbered clauses, labels with a
 * value after a colon or a gap, and headings with the paragraph below them.
 */
final class Clauses {
  static final Pattern MARKER =
      Pattern.compile(
          "^\\s*(\\d{1,2}([.\uFF0E]\\d{1,2}){1,3}[.\uFF0E)\u3001]?(?=\\s+\\p{L}|\\p{IsHan}|\\p{Lu}\\p{L})"
              + "|\\d{1,2}-\\d{1,2}(?=\\s+\\p{Lu})"
              + "|\\d{1,2}[.\uFF0E)\u3001]-?(?=\\s*\\p{L})|\\d{1,2}(?=\\s+(\\p{Lu}|\\p{IsHan}))|[(\uFF08](\\d{1,2}|[a-h])[)\uFF09]"
              + "|[\u2460-\u2473]|[a-z]\\)|[\u2022\u25CF\u25C6\u25A0\u25AA\u25C7\u25CB\u2023-])\\s*");

  /** A line of a table of contents: dots lead to a page number. */
  static final Pattern CONTENTS =
      Pattern.compile(
          "([.\\u2026\\u00B7]\\s?){5,}\\s*[\\d\\s~\u2013-]{1,9}$|^[\\d.\\s]*[^\\d]*[.\\u2026\\u00B7]{12,}\\s*$");

  /** Dots that lead from a label to its value. */
  private static final Pattern LEADER = Pattern.compile("\\s*([.\\u2026\\u00B7_]\\s?){5,}");

  /** A label longer than this is a sentence. Common practice, no source. */
  private static final int LONGEST_LABEL = 64;

  /** A gap between words wider than this many times the font size parts a label from its value. */
  private static final double WIDE_GAP = 1.6;

  private static final int LONGEST_BODY_LINES = 14;

  /** More words than this behind the figure make the line a sentence. */
  private static final int LONGEST_AFTER = 9;

  /** A line set in by more points than this stands in the column of values. */
  private static final double INDENT = 60;

  private final Vocabulary vocabulary;
  private final Figures parser;
  private final Naming naming;

  Clauses(Vocabulary vocabulary, Figures parser, Naming naming) {
    this.vocabulary = vocabulary;
    this.parser = parser;
    this.naming = naming;
  }

  /** The entries of a page's lines, given the heading the page before ended under. */
  Found entries(Page page, String headingBefore, Set<Line> footnotes) {
    Reading reading = new Reading(page.number(), headingBefore);
    for (Line line : page.lines()) {
      if (!CONTENTS.matcher(line.text()).find() && !footnotes.contains(line)) {
        reading.take(line);
      }
    }
    reading.endClause();
    return new Found(reading.entries, reading.section, reading.headings);
  }

  /** A heading and where it stands, so that tables below it can be told what they are about. */
  record Heading(double y, double x, String text, Passage paragraph, boolean numbered) {}

  /** What a page's lines gave. */
  record Found(List<Entry> entries, String lastSection, List<Heading> headings) {}

  /** The reading of one page's lines; holds the clause under way. */
  private final class Reading {
    private final int page;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Heading> headings = new ArrayList<>();
    private String section;
    private Passage label = Passage.EMPTY;
    private Passage body = Passage.EMPTY;
    private boolean labelHasValue;
    private int bodyLines;
    private double lastBottom;
    private double headingY;
    private double headingX;
    private boolean startsNumbered;
    private Passage intro = Passage.EMPTY;
    private Passage above = Passage.EMPTY;
    private Passage lastLabel = Passage.EMPTY;
    private double lastX;
    private double lastLabelBottom;

    Reading(int page, String section) {
      this.page = page;
      this.section = section;
    }

    void take(Line line) {
      Passage passage = Passage.of(page, List.of(line));
      Matcher marker = MARKER.matcher(passage.text());
      boolean numbered = marker.find() && !isValue(passage, marker.end());
      Passage rest = numbered ? passage.part(marker.end(), passage.text().length()) : passage;
      int split = goesOn(passage, numbered) ? 0 : split(rest, line, numbered);
      boolean gap = line.box().y() - lastBottom > 1.2 * line.box().height();
      lastLabelBottom = lastBottom;
      lastBottom = line.box().bottom();
      if (split > 0 && !tellsOfCycles(rest, split)) {
        endClause();
        startsNumbered = numbered;
        if (numbered) {
          intro = Passage.EMPTY;
        }
        label = rest.part(0, split);
        above = goesOnAbove(line) ? lastLabel : Passage.EMPTY;
        lastLabel = above.isBlank() ? label : lastLabel;
        lastX = above.isBlank() ? line.box().x() : lastX;
        body = afterSeparator(rest, split);
        labelHasValue = true;
        bodyLines = 1;
        headingY = line.box().y();
        headingX = line.box().x();
      } else if (isHeading(rest, line, numbered)) {
        endClause();
        intro = Passage.EMPTY;
        startsNumbered = numbered;
        label = rest;
        body = Passage.EMPTY;
        labelHasValue = false;
        section = rest.shown();
        headingY = line.box().y();
        headingX = line.box().x();
        bodyLines = 0;
      } else if (numbered || (gap && labelHasValue) || bodyLines >= LONGEST_BODY_LINES) {
        endClause();
        startsNumbered = numbered;
        label = Passage.EMPTY;
        body = rest;
        labelHasValue = false;
        bodyLines = 1;
        headingY = line.box().y();
        headingX = line.box().x();
      } else {
        body = body.then(rest);
        bodyLines++;
      }
    }

    /**
     * Under the heading "Cycle life", "Capacity ≥ 80 %" is what the cycles leave, no clause of its
     * own.
     */
    private boolean tellsOfCycles(Passage rest, int split) {
      if (!vocabulary.conceptsOf(label.text()).contains("cyclelife")) {
        return false;
      }
      Passage own = rest.part(0, split);
      Passage value = rest.part(split, rest.text().length());
      List<Figure> figures = parser.find(value.text());
      return vocabulary.conceptsOf(own.text()).contains("capacity")
          || figures.stream()
              .anyMatch(f -> f.unit() != null && f.unit().dimension() == Dimension.CYCLES)
          || !naming.namesWith(List.of(own), value, figures, "");
    }

    /** A line that starts with a small letter goes on with a sentence that has not ended. */
    private boolean goesOn(Passage line, boolean numbered) {
      String before = body.text().trim();
      if (numbered || before.isEmpty() || line.text().isBlank()) {
        return false;
      }
      boolean open = ".:;\u3002\uFF1A\uFF1B".indexOf(before.charAt(before.length() - 1)) < 0;
      boolean small = Character.isLowerCase(line.text().trim().charAt(0));
      boolean inValues =
          labelHasValue && line.box().x() - lastX > INDENT && line.text().indexOf(':') < 0;
      return small && (inValues || (open && Naming.isSentence(before + " " + line.text())));
    }

    void endClause() {
      if (!body.isBlank() && (labelHasValue || !label.isBlank() || !section.isBlank())) {
        List<Passage> labels = new ArrayList<>();
        if (!above.isBlank()
            && !naming.namesWith(List.of(label), body, parser.find(body.text()), "")) {
          labels.add(above);
        }
        if (!label.isBlank()) {
          labels.add(label);
        }
        Entry.Value value = new Entry.Value(Role.VALUE, Passage.EMPTY, body, "", Passage.EMPTY);
        entries.add(
            new Entry(
                page,
                labels,
                List.of(value),
                Passage.EMPTY,
                labelHasValue && !startsNumbered ? intro : Passage.EMPTY,
                section,
                Method.TEXT_LINE,
                labelHasValue ? "clause" : "paragraph"));
      }
      if (!labelHasValue) {
        intro = intro.then(body);
      }
      if (!label.isBlank() || !body.isBlank()) {
        headings.add(new Heading(headingY, headingX, section, label.then(body), startsNumbered));
      }
      label = Passage.EMPTY;
      above = Passage.EMPTY;
      body = Passage.EMPTY;
      labelHasValue = false;
    }

    /** A line set far to the right of the labelled line above it goes on with that line's label. */
    private boolean goesOnAbove(Line line) {
      return !lastLabel.isBlank()
          && line.box().x() - lastX > INDENT
          && line.box().y() - lastLabelBottom > -line.box().height()
          && line.box().y() - lastLabelBottom < 1.5 * line.box().height();
    }

    private Passage afterSeparator(Passage rest, int split) {
      int from = split;
      String text = rest.text();
      Matcher leader = LEADER.matcher(text).region(split, text.length());
      if (leader.lookingAt()) {
        from = leader.end();
      }
      while (from < text.length()
          && (text.charAt(from) == ':'
              || text.charAt(from) == '\uFF1A'
              || text.charAt(from) == '='
              || text.charAt(from) == '.'
              || Character.isWhitespace(text.charAt(from)))) {
        from++;
      }
      return rest.part(from, text.length());
    }
  }

  /** "2.75 V. The residual capacity" begins with a value, not with the number of a clause. */
  private boolean isValue(Passage line, int markerEnd) {
    List<Figure> figures = parser.find(line.text());
    return !figures.isEmpty()
        && figures.get(0).start() < markerEnd
        && figures.get(0).unit() != null
        && figures.get(0).end() - markerEnd <= 4;
  }

  /** Where the label of a line ends; 0 where it has none. */
  private int split(Passage rest, Line line, boolean numbered) {
    String text = rest.text();
    Matcher leader = LEADER.matcher(text);
    if (leader.find()
        && leader.start() > 2
        && leader.end() < text.length()
        && known(text.substring(0, leader.start()))) {
      return leader.start();
    }
    int colon = firstColon(text);
    if (colon > 0
        && colon <= LONGEST_LABEL
        && known(text.substring(0, colon))
        && colon + 1 < text.trim().length()) {
      return colon;
    }
    int runIn = numbered ? runInHeading(text) : 0;
    if (runIn > 0) {
      return runIn;
    }
    int gap = wideGap(rest, line);
    if (gap > 0 && gap <= LONGEST_LABEL && known(text.substring(0, gap))) {
      return gap;
    }
    return beforeFigure(text);
  }

  /** "Cycle life. Charge with 1 C to …": a short label, a full stop, a sentence. */
  private int runInHeading(String text) {
    int stop = text.indexOf(". ");
    boolean sentence =
        stop > 3 && stop + 2 < text.length() && Character.isUpperCase(text.charAt(stop + 2));
    return sentence
            && Tokens.of(text.substring(0, stop)).size() <= 5
            && known(text.substring(0, stop))
        ? stop
        : 0;
  }

  private static int firstColon(String text) {
    int depth = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      depth += c == '(' || c == '\uFF08' ? 1 : c == ')' || c == '\uFF09' ? -1 : 0;
      if (depth <= 0 && (c == ':' || c == '\uFF1A' || c == '=')) {
        return i;
      }
    }
    return -1;
  }

  private boolean known(String label) {
    return vocabulary.coverage(label, vocabulary.hits(label)) >= 0.5;
  }

  private int wideGap(Passage rest, Line line) {
    List<Word> words = line.words();
    int shift = line.text().length() - rest.text().length();
    int end = 0;
    for (int i = 0; i + 1 < words.size(); i++) {
      end += words.get(i).text().length();
      Word word = words.get(i);
      double gap = words.get(i + 1).box().x() - word.box().right();
      if (gap > WIDE_GAP * Math.max(4, word.size()) && end - shift > 2) {
        return end - shift;
      }
      end++;
    }
    return 0;
  }

  /** "Nominal voltage 3.7 V": nothing but known words, then a figure with a unit. */
  private int beforeFigure(String text) {
    for (Figure figure : parser.find(text)) {
      if (figure.unit() != null) {
        String before = text.substring(0, figure.start());
        List<Hit> hits = vocabulary.hits(before);
        boolean label =
            before.trim().length() > 2
                && before.length() <= LONGEST_LABEL
                && !hits.isEmpty()
                && vocabulary.coverage(before, hits) >= 0.8;
        boolean sentence = Tokens.of(text.substring(figure.end())).size() > LONGEST_AFTER;
        return label && !sentence ? figure.start() : 0;
      }
    }
    return 0;
  }

  private boolean isHeading(Passage rest, Line line, boolean numbered) {
    String text = rest.text().trim();
    if (text.isEmpty()
        || text.length() > LONGEST_LABEL
        || (text.endsWith(".") && !numbered)
        || text.endsWith(",")) {
      return false;
    }
    boolean figures = parser.find(text).stream().anyMatch(f -> f.unit() != null);
    boolean bold = line.words().stream().allMatch(Word::bold);
    if (figures && !bold) {
      return false;
    }
    return (numbered && Tokens.of(text).size() <= 14)
        || bold
        || (known(text) && Tokens.of(text).size() >= 2 && Tokens.of(text).size() <= 8);
  }
}
