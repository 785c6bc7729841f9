package commonsheet.layout;

import commonsheet.sheet.Line;
import commonsheet.sheet.Page;
import commonsheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Footnotes of a sheet by page and marker, and the markers that labels and values carry. */
final class Footnotes {
  private static final Pattern START =
      Pattern.compile("^\\s*(\\*{1,3}\\d{0,2}|[\u203B\u2020\u2021]\\d{0,2}|\\(\\d\\)|[\u00B9\u00B2\u00B3\u2074-\u2079]|(?:Note|NOTE|Anm\\.?|Nota)\\s?\\d)\\s*[:.]?\\s*(?=\\S)");
  private static final Pattern MARK =
      Pattern.compile("(\\*{1,3}\\d{0,2}|[\u203B\u2020\u2021]\\d{0,2}|\\(\\d\\)|[\u00B9\u00B2\u00B3\u2074-\u2079])(?=\\s|$|\\)|:)");
  private static final int LONGEST_LINES = 6;

  private final Map<String, Passage> notes = new HashMap<>();

  static Footnotes of(Sheet sheet) {
    Footnotes footnotes = new Footnotes();
    sheet.pages().forEach(footnotes::read);
    return footnotes;
  }

  private void read(Page page) {
    List<Line> lines = page.lines();
    for (int i = 0; i < lines.size(); i++) {
      Matcher start = START.matcher(lines.get(i).text());
      if (!start.find() || start.group(1).startsWith("(") && !looksLikeNote(lines.get(i).text(), start.end())) {
        continue;
      }
      List<Line> note = new ArrayList<>(List.of(lines.get(i)));
      for (int j = i + 1; j < lines.size() && note.size() < LONGEST_LINES; j++) {
        Line next = lines.get(j);
        boolean close = next.box().y() - lines.get(j - 1).box().bottom() < next.box().height();
        if (!close || START.matcher(next.text()).find()) {
          break;
        }
        note.add(next);
      }
      Passage whole = Passage.of(page.number(), note);
      notes.putIfAbsent(key(page.number(), start.group(1)), whole.part(start.end(), whole.text().length()));
    }
  }

  /** "(1) At 20 °C" is a note, "(1) Open-circuit voltage" a clause: a note goes on with a small word or a figure. */
  private static boolean looksLikeNote(String text, int from) {
    String rest = text.substring(from).trim();
    return rest.matches("(?i)(at|after|when|by|with|for|in|under|measured|discharge|charge|standard|cc|[-+\u00B1\\d]).*");
  }

  private static String key(int page, String marker) {
    return page + " " + marker;
  }

  /** The notes that the markers in these passages point to, on the page or, where it has none, on the next. */
  Passage pointedToBy(List<Passage> passages) {
    Passage found = Passage.EMPTY;
    for (Passage passage : passages) {
      Matcher mark = MARK.matcher(passage.text());
      while (mark.find()) {
        Passage note = notes.get(key(passage.page(), mark.group(1)));
        if (note == null) {
          note = notes.get(key(passage.page() + 1, mark.group(1)));
        }
        if (note != null && !note.text().equals(passage.text())) {
          found = found.then(note);
        }
      }
    }
    return found;
  }
}
