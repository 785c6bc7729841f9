package commonsheet.layout;

import commonsheet.record.Method;
import commonsheet.sheet.Cell;
import commonsheet.sheet.Line;
import commonsheet.sheet.Page;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.Table;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Footnotes of a sheet by page and marker, and the markers that labels and values carry. */
final class Footnotes {
  private static final String SIGN =
      "\\*{1,3}\\d{0,2}|\\d\\)|[\u203B\u2020\u2021]\\d{0,2}|\\(\\d\\)|[\u00B9\u00B2\u00B3\u2074-\u2079]\\)?|\u6CE8\\s?[:\uFF1A]?\\s?[\\d\u2460-\u2473]|[\u2460-\u2473]|(?:Note|NOTE|Anm\\.?|Nota|Remark|REMARK)s?\\s?\\(?\\d?\\)?(?=\\s*[:\uFF1A])|(?:Note|NOTE|Anm\\.?|Nota)\\s?\\d";
  private static final Pattern START =
      Pattern.compile("^\\s*(" + SIGN + ")\\s*[:.\uFF1A]?\\s*(?=\\S)");
  private static final Pattern MARK = Pattern.compile("(" + SIGN + ")(?=\\s|$|[):.,\uFF1A])");

  /** A further note in the same line, after a space or the end of a sentence. */
  private static final Pattern FURTHER =
      Pattern.compile(
          "(?<=[\\s.\u3002\uFF1B;])\u6CE8?(\\*\\d|\\(\\d\\)|[\u2460-\u2473]|[\u00B9\u00B2\u00B3\u2074-\u2079])[:\uFF1A]?\\s*"
              + "(?=\\p{Lu}|\\p{IsHan}|\\d)");

  private static final Pattern TRAILING =
      Pattern.compile("(?<=[\\p{L}\\]])\\s?(\\(?\\d\\))(?=\\s|$)");
  private static final int LONGEST_LINES = 6;

  private final Map<String, Passage> notes = new LinkedHashMap<>();
  private final Set<String> marks = new HashSet<>();
  private final Map<Integer, Set<Line>> lines = new HashMap<>();

  static Footnotes of(Sheet sheet) {
    Footnotes footnotes = new Footnotes();
    for (Page page : sheet.pages()) {
      footnotes.noteMarks(page);
      footnotes.read(page, page.lines());
      for (Table table : page.tables()) {
        for (int row = 0; row < table.rows(); row++) {
          footnotes.readRow(page, table, row);
        }
      }
    }
    return footnotes;
  }

  /** The lines of a page that are footnotes. */
  Set<Line> lines(int page) {
    return lines.getOrDefault(page, Set.of());
  }

  /** Which numbers in brackets stand at the end of labels: "Typical capacity 1)". */
  private void noteMarks(Page page) {
    for (Table table : page.tables()) {
      for (Cell cell : table.cells()) {
        Matcher trailing = TRAILING.matcher(cell.text());
        while (trailing.find()) {
          marks.add(key(page.number(), trailing.group(1)));
        }
      }
    }
  }

  /**
   * A row whose first cell begins like a note is one, over all its cells; a cell may hold several
   * notes.
   */
  private void readRow(Page page, Table table, int row) {
    int inRow = row;
    List<Cell> cells =
        table.cells().stream().filter(c -> c.row() == inRow && !c.isEmpty()).toList();
    if (cells.isEmpty()
        || cells.get(0).column() > 0
        || !START.matcher(cells.get(0).text()).find()) {
      return;
    }
    if (cells.size() == 1) {
      read(page, cells.get(0).lines());
    } else if (cells.stream().allMatch(c -> c.lines().size() == 1)) {
      List<Word> words = cells.stream().flatMap(c -> c.lines().get(0).words().stream()).toList();
      read(page, List.of(new Line(words)));
    }
  }

  private void read(Page page, List<Line> block) {
    for (int i = 0; i < block.size(); i++) {
      String text = Passage.of(page.number(), List.of(block.get(i))).text();
      Matcher start = START.matcher(text);
      if (!start.find() || !isNote(page, text, start)) {
        continue;
      }
      List<Line> note = new ArrayList<>(List.of(block.get(i)));
      for (int j = i + 1; j < block.size() && note.size() < LONGEST_LINES; j++) {
        Line next = block.get(j);
        boolean close =
            next.box().y() - block.get(j - 1).box().bottom() < next.box().height()
                && next.box().x() - block.get(i).box().x() < 60
                && next.box().x() - block.get(i).box().x() > -10;
        if (!close
            || Clauses.MARKER.matcher(next.text()).find()
            || START.matcher(Passage.of(page.number(), List.of(next)).text()).find()) {
          break;
        }
        note.add(next);
      }
      lines.computeIfAbsent(page.number(), p -> new HashSet<>()).addAll(note);
      keep(Passage.of(page.number(), note), start.group(1), start.end());
    }
  }

  /**
   * A sign of its own always begins a note; a number in brackets only where a label carries it or
   * the words are a note's.
   */
  private boolean isNote(Page page, String text, Matcher start) {
    char first = start.group(1).charAt(0);
    boolean number = first == '(' || Character.isDigit(first);
    return !number
        || marks.contains(key(page.number(), start.group(1)))
        || looksLikeNote(text, start.end());
  }

  /** A line may hold several notes: "*1 At 20 °C. *2 At 25 °C." */
  private void keep(Passage whole, String marker, int from) {
    Matcher further = FURTHER.matcher(whole.text());
    String current = marker;
    int start = from;
    while (further.find(start)) {
      if (sameSeries(further.group(1), marker)) {
        put(whole.part(start, further.start()), current);
        current = further.group(1);
      }
      start = further.end();
    }
    put(whole.part(start, whole.text().length()), current);
  }

  /** "*1" and "*2", "①" and "注②": signs of one kind. */
  private static boolean sameSeries(String a, String b) {
    char last = b.charAt(b.length() - 1);
    return a.charAt(0) == b.charAt(0)
        || (Character.getType(a.charAt(a.length() - 1)) == Character.getType(last)
            && !Character.isDigit(last));
  }

  private void put(Passage note, String marker) {
    notes.putIfAbsent(key(note.page(), marker), note);
  }

  /**
   * "(1) At 20 °C" is a note, "(1) Open-circuit voltage" a clause: a note goes on with a small word
   * or a figure.
   */
  private static boolean looksLikeNote(String text, int from) {
    String rest = text.substring(from).trim();
    return rest.matches(
        "(?i)((at|after|when|by|with|for|in|under|measured|discharged|charged|based|ac|cc|bei|nach|mit|a|con|tras)\\b|[-+\u2212\u00B1\\d]).*");
  }

  private static String key(int page, String marker) {
    return page + " " + marker.replaceAll("[\\s):\uFF1A\u6CE8]", "");
  }

  /**
   * The notes that the markers in these passages point to, on the page or, where it has none, on
   * the next.
   */
  Passage pointedToBy(List<Passage> passages) {
    Passage found = Passage.EMPTY;
    for (Passage passage : passages) {
      Matcher mark = MARK.matcher(passage.text());
      while (mark.find()) {
        Passage note = notes.get(key(passage.page(), mark.group(1)));
        if (note == null) {
          note = notes.get(key(passage.page() + 1, mark.group(1)));
        }
        if (note != null) {
          found = found.then(note);
        }
      }
    }
    return found;
  }

  /** The notes as entries without a label, for what they mention. */
  List<Entry> entries() {
    return notes.values().stream()
        .map(
            note ->
                new Entry(
                    note.page(),
                    List.of(),
                    List.of(new Entry.Value(Role.VALUE, Passage.EMPTY, note, "", Passage.EMPTY)),
                    Passage.EMPTY,
                    Passage.EMPTY,
                    "",
                    Method.TEXT_LINE,
                    "footnote"))
        .toList();
  }
}
