package commonsheet.layout;

import commonsheet.record.Cell;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.WordSource;
import commonsheet.sheet.Box;
import commonsheet.sheet.Line;
import commonsheet.sheet.Page;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.Table;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds out which cell a sheet is about, and which document it is: names, codes and words in fixed
 * roles.
 */
final class Identity {
  /**
   * A cell's name as makers write it: letters and digits, at least four of them digits or a known
   * size.
   */
  private static final Pattern CODE =
      Pattern.compile(
          "(?<![\\p{L}\\d])(?=[\\p{Alnum}\\-/.]*\\d{3})(?=[\\p{Alnum}\\-/.]*[A-Za-z])[A-Za-z\\d][A-Za-z\\d\\-/.+]{3,24}(?![\\p{Alpha}\\d])");

  private static final Pattern LETTER_AND_DIGIT =
      Pattern.compile("[A-Za-z]\\S*\\d|\\d\\S*[A-Za-z]|\\p{Lu} \\d{3}");

  /** A name, with a space after its letters where it has one: "LM 18650-26". */
  private static final Pattern NAME =
      Pattern.compile(
          "(?<![\\p{L}\\d])\\p{Lu}{1,6} \\d{3,}[\\p{L}\\d\\-/]*"
              + "|[\\p{L}\\d][\\p{L}\\d\\-/.+_]*\\d[\\p{L}\\d\\-/.+_]*");

  private static final Pattern STANDARD_CODE =
      Pattern.compile(
          "(?i)(IEC|UL|UN|ISO|JIS|GB|DIN|EN|AWG|QC|ROHS|REACH|CE|JST|SMD|SOT|EAR|BS|MIL|ASTM|IATA).*\\d.*");

  private static final Pattern QUANTITY_CODE =
      Pattern.compile("(?i)[\\d.]+(mah|ah|wh|v|ma|mm|a|g|c|kg|w|hz|khz|min|h)\\b.*");

  private static final Pattern DESIGNATION =
      Pattern.compile("\\bI[CNMVTF]?[RP]\\d{1,3}/\\d{1,3}(/\\d{1,3})?\\b");

  /** Words further apart than this many times the font size do not belong together. */
  private static final double WIDE_GAP = 2.5;

  private static final String NAME_WORD = "[\\p{Lu}\\d][\\p{L}\\d&'\u2019\\-]*\\.?";

  private static final Pattern COMPANY =
      Pattern.compile(
          "(?<![\\p{L}\\d])("
              + NAME_WORD
              + "(?:[ \\t]+(?:"
              + NAME_WORD
              + "|&|\\([\\p{L} ]+\\))){0,6}?[ \\t,]+"
              + "(?:(?i:co\\.?\\s*,?\\s*(?:ltd|limited)\\.?|company,?\\s+(?:ltd\\.?|limited)|ltd\\.?|limited|inc\\.?|corporation|corp\\.?"
              + "|gmbh(?:\\s*&\\s*co\\.?\\s*kg)?|s\\.p\\.a\\.|s\\.r\\.l\\.|s\\.a\\.s?\\.?|s\\.l\\.|b\\.v\\.|k\\.k\\.|llc|pty)|AG|AS|ASA|AB|Oy|SA|SAS|BV|KG))(?![\\p{L}\\d])");

  private static final Pattern MADE_BY =
      Pattern.compile(
          "(?i:made|manufactured|produced|supplied|provided)(?i: to (?:the )?\\p{L}+)?(?i:"
              + " by)\\s+((?:"
              + NAME_WORD
              + "[ \\t]*){1,5})");

  private final Vocabulary vocabulary;
  private final IdentityWords words;

  Identity(Vocabulary vocabulary, IdentityWords words) {
    this.vocabulary = vocabulary;
    this.words = words;
  }

  /** Text and the place it stands. */
  record Found(String text, int page, Box box, Method method) {}

  Cell cell(Sheet sheet) {
    Map<String, Evidence> evidence = new HashMap<>();
    Optional<Found> model =
        labelled(sheet, "model").filter(f -> hasCode(f.text())).map(Identity::codeOnly);
    if (model.isEmpty()) {
      model = codeInTitle(sheet);
    }
    Optional<Found> maker = labelled(sheet, "maker").filter(f -> f.text().length() < 80);
    if (maker.isEmpty()) {
      maker = company(sheet);
    }
    Optional<Found> chemistry = chemistry(sheet);
    Optional<Found> form = phrase(sheet, List.copyOf(words.forms().keySet()));
    Optional<String> formName = form.map(this::formOf);
    Optional<Found> size = model.flatMap(this::size).or(() -> sizeWord(sheet));
    Optional<Found> designation = matching(sheet, DESIGNATION);
    put(evidence, "model", model);
    put(evidence, "maker", maker);
    put(evidence, "chemistry", chemistry);
    put(evidence, "form", form);
    put(evidence, "sizeCode", size);
    put(evidence, "designation", designation);
    return new Cell(
        text(maker),
        text(model),
        text(designation),
        text(chemistry),
        formName.orElse(null),
        text(size),
        evidence);
  }

  /** The form that a phrase stands for, however it is spelt on the sheet. */
  private String formOf(Found found) {
    PhraseTree tree = new PhraseTree();
    words.forms().forEach((phrase, form) -> tree.add(phrase, List.of(form)));
    return tree.find(found.text()).get(0).means().get(0);
  }

  private static String text(Optional<Found> found) {
    return found.map(Found::text).orElse(null);
  }

  private static void put(Map<String, Evidence> evidence, String member, Optional<Found> found) {
    found.ifPresent(
        f ->
            evidence.put(
                member,
                new Evidence(
                    f.page(),
                    f.box() == null
                        ? null
                        : List.of(
                            r(f.box().x()),
                            r(f.box().y()),
                            r(f.box().width()),
                            r(f.box().height())),
                    f.text(),
                    f.method(),
                    "identity/" + member,
                    WordSource.TEXT,
                    null,
                    null,
                    null)));
  }

  private static double r(double points) {
    return Math.round(points * 10) / 10.0;
  }

  /**
   * The different names that the sheet gives its model; a longer form of a name is no other name.
   */
  List<Found> modelNames(Sheet sheet) {
    List<Found> names = new ArrayList<>();
    for (Page page : sheet.pages()) {
      List<Found> here = new ArrayList<>();
      page.lines().forEach(line -> inLine(page.number(), line, "model").ifPresent(here::add));
      page.tables().forEach(t -> inTable(page.number(), t, "model").ifPresent(here::add));
      for (Found found : here) {
        Found name = codeOnly(found);
        if (hasCode(found.text())
            && names.stream().noneMatch(n -> sameName(n.text(), name.text()))) {
          names.add(name);
        }
      }
    }
    return names;
  }

  private static boolean sameName(String a, String b) {
    String one = a.replaceAll("[^\\p{L}\\d]", "").toUpperCase(Locale.ROOT);
    String other = b.replaceAll("[^\\p{L}\\d]", "").toUpperCase(Locale.ROOT);
    return one.contains(other) || other.contains(one);
  }

  /**
   * What stands beside a label such as "Model" or "Manufacturer", in a line or a table row; the
   * first on the sheet.
   */
  Optional<Found> labelled(Sheet sheet, String member) {
    for (Page page : sheet.pages()) {
      List<Line> lines = new ArrayList<>(page.lines());
      for (Line line : lines) {
        Optional<Found> found = inLine(page.number(), line, member);
        if (found.isPresent()) {
          return found;
        }
      }
      for (Table table : page.tables()) {
        Optional<Found> found = inTable(page.number(), table, member);
        if (found.isPresent()) {
          return found;
        }
      }
      if (page.number() == 1 && !page.running().isEmpty()) {
        Optional<Found> found = inRunning(page, member);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Found> inRunning(Page page, String member) {
    for (Word word : page.running()) {
      Optional<Found> found = inLine(page.number(), new Line(List.of(word)), member);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private Optional<Found> inLine(int page, Line line, String member) {
    Passage passage = Passage.of(page, List.of(line));
    String text = passage.text();
    int colon = text.indexOf(':') >= 0 ? text.indexOf(':') : text.indexOf('\uFF1A');
    if (colon < 0 && member.equals("model")) {
      return codeAfterLabel(page, passage);
    }
    if (colon <= 0 || colon > 40 || !names(text.substring(0, colon), member)) {
      return Optional.empty();
    }
    String value = upToGap(line, text.substring(colon + 1).trim());
    return value.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Found(value, page, passage.box(colon + 1, text.length()), Method.TEXT_LINE));
  }

  /** A wide gap ends what stands beside a label. */
  private static String upToGap(Line line, String value) {
    Word last = null;
    StringBuilder kept = new StringBuilder();
    for (Word word : line.words()) {
      if (last != null
          && word.box().x() - last.box().right() > WIDE_GAP * Math.max(4, word.size())
          && value.startsWith(kept.toString().trim())
          && !kept.isEmpty()) {
        return kept.toString().trim();
      }
      boolean begun =
          !kept.isEmpty() || (value.startsWith(word.text()) && line.text().indexOf(value) >= 0);
      if (begun) {
        kept.append(kept.isEmpty() ? "" : " ").append(word.text());
      }
      last = word;
    }
    return value;
  }

  /** "MODEL FX-42": no colon, but a code follows at once. */
  private Optional<Found> codeAfterLabel(int page, Passage line) {
    List<Hit> hits = vocabulary.identityHits(line.text());
    if (hits.isEmpty() || hits.get(0).start() != 0 || !hits.get(0).means("model")) {
      return Optional.empty();
    }
    int from = hits.get(0).end();
    String rest = line.text().substring(from).trim();
    String first = rest.isEmpty() ? "" : rest.split("\\s+")[0];
    return hasCode(first) && isName(first)
        ? Optional.of(
            new Found(first, page, line.box(from, line.text().length()), Method.TEXT_LINE))
        : Optional.empty();
  }

  private Optional<Found> inTable(int page, Table table, String member) {
    for (var cell : table.cells()) {
      if (!cell.isEmpty() && names(cell.text(), member)) {
        Optional<commonsheet.sheet.Cell> beside =
            table.at(cell.row(), cell.column() + cell.columns());
        if (beside.isPresent() && !beside.get().isEmpty()) {
          return Optional.of(
              new Found(
                  beside.get().text().replace('\n', ' ').trim(),
                  page,
                  beside.get().box(),
                  Method.TABLE_CELL));
        }
      }
    }
    return Optional.empty();
  }

  private boolean names(String label, String member) {
    List<Hit> hits = vocabulary.identityHits(label);
    return hits.stream().anyMatch(h -> h.means(member)) && vocabulary.coverage(label, hits) >= 0.7;
  }

  /** A model's name has a letter and a digit. */
  private static boolean hasCode(String text) {
    return text.length() < 60
        && text.chars().anyMatch(Character::isDigit)
        && LETTER_AND_DIGIT.matcher(text).find()
        && !QUANTITY_CODE.matcher(text).matches();
  }

  /** "LP402535 (bare cell)" names LP402535. */
  private static Found codeOnly(Found found) {
    Matcher code = NAME.matcher(found.text());
    return code.find() ? new Found(code.group(), found.page(), found.box(), found.method()) : found;
  }

  /** The code that stands largest or most often on the first page and in running headers. */
  private Optional<Found> codeInTitle(Sheet sheet) {
    Map<String, Double> weight = new HashMap<>();
    Map<String, Found> place = new HashMap<>();
    for (Page page : sheet.pages()) {
      for (Word word : page.words()) {
        Matcher code = CODE.matcher(word.text());
        if (code.find() && isName(code.group())) {
          String name = code.group().replaceAll("[.,:;\\-/]+$", "");
          double w =
              page.number() == 1 ? word.size() + (word.box().y() < page.height() / 3 ? 12 : 4) : 2;
          weight.merge(name, w, Double::sum);
          place.putIfAbsent(name, new Found(name, page.number(), word.box(), Method.TEXT_LINE));
        }
      }
    }
    return weight.entrySet().stream()
        .max(
            Comparator.comparingDouble(Map.Entry<String, Double>::getValue)
                .thenComparing(Map.Entry::getKey))
        .map(e -> place.get(e.getKey()));
  }

  private static boolean isName(String code) {
    return !STANDARD_CODE.matcher(code).matches()
        && !QUANTITY_CODE.matcher(code).matches()
        && !code.matches("\\d{4}-\\d{2}.*")
        && !code.contains("..")
        && !code.toLowerCase(Locale.ROOT).contains("www");
  }

  private Optional<Found> size(Found model) {
    for (String size : words.sizes()) {
      int at = model.text().indexOf(size);
      boolean alone =
          at >= 0
              && (at == 0 || !Character.isDigit(model.text().charAt(at - 1)))
              && (at + size.length() == model.text().length()
                  || !Character.isDigit(model.text().charAt(at + size.length())));
      if (alone) {
        return Optional.of(new Found(size, model.page(), model.box(), model.method()));
      }
    }
    return Optional.empty();
  }

  /** A size printed by itself, such as "21700", on the first two pages. */
  private Optional<Found> sizeWord(Sheet sheet) {
    for (Page page : sheet.pages().subList(0, Math.min(2, sheet.pages().size()))) {
      for (Word word : page.words()) {
        String text = word.text().replaceAll("[,.;:()]", "");
        if (text.length() == 5 && words.sizes().contains(text)) {
          return Optional.of(new Found(text, page.number(), word.box(), Method.TEXT_LINE));
        }
      }
    }
    return Optional.empty();
  }

  /**
   * A company by its suffix, by "made by", or by the words that battery makers carry in their
   * names.
   */
  private Optional<Found> company(Sheet sheet) {
    List<Page> first = sheet.pages().subList(0, Math.min(1, sheet.pages().size()));
    Optional<Found> found = firstMatch(first, COMPANY);
    if (found.isEmpty()) {
      found = firstMatch(sheet.pages(), COMPANY);
    }
    if (found.isEmpty()) {
      found = firstMatch(sheet.pages(), MADE_BY);
    }
    return found.isPresent() ? found : nameLine(first);
  }

  /** "Lithium Ion Cell IRONWOOD SYSTEMS, INC.": what is sold stands before who sells it. */
  private String withoutPreface(String name) {
    String rest = name;
    while (rest.contains(" ") && isPreface(rest.substring(0, rest.indexOf(' ')))) {
      rest = rest.substring(rest.indexOf(' ') + 1).trim();
    }
    return rest;
  }

  private boolean isPreface(String word) {
    String plain = word.toLowerCase(Locale.ROOT);
    return plain.equals("cell") || plain.equals("battery") || words.notInNames().contains(plain);
  }

  private Optional<Found> firstMatch(List<Page> pages, Pattern pattern) {
    for (Page page : pages) {
      for (Line line : allLines(page)) {
        Matcher company = pattern.matcher(line.text());
        if (company.find()) {
          String name = company.group(1).trim().replaceFirst("[,;]$", "");
          name = withoutPreface(name);
          if (pattern.equals(MADE_BY)) {
            name = name.replaceFirst("\\.$", "");
          }
          return Optional.of(new Found(name, page.number(), line.box(), Method.TEXT_LINE));
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Found> nameLine(List<Page> pages) {
    for (Page page : pages) {
      for (Line line : allLines(page)) {
        for (String part : parts(line)) {
          String name = part.split("[,\u00B7|]")[0].trim().replaceFirst("\\.$", "");
          if (isMakersName(name)) {
            return Optional.of(new Found(name, page.number(), line.box(), Method.TEXT_LINE));
          }
        }
      }
    }
    return Optional.empty();
  }

  /** A line as it is cut by wide gaps, and each piece by its sentences. */
  private static List<String> parts(Line line) {
    List<String> parts = new ArrayList<>();
    StringBuilder part = new StringBuilder();
    Word last = null;
    for (Word word : line.words()) {
      if (last != null
          && word.box().x() - last.box().right() > WIDE_GAP * Math.max(4, word.size())) {
        parts.addAll(List.of(part.toString().split("(?<=\\p{Ll}\\.) ")));
        part.setLength(0);
      }
      part.append(part.isEmpty() ? "" : " ").append(word.text());
      last = word;
    }
    parts.addAll(List.of(part.toString().split("(?<=\\p{Ll}\\.) ")));
    return parts;
  }

  private boolean isMakersName(String name) {
    List<String> forms = Tokens.of(name).stream().map(Tokens.Token::form).toList();
    return name.chars().filter(Character::isUpperCase).count() >= forms.size()
        && forms.size() >= 2
        && forms.size() <= 4
        && forms.stream().anyMatch(words.makerWords()::contains)
        && forms.stream().noneMatch(words.notInNames()::contains)
        && name.chars().noneMatch(Character::isDigit);
  }

  private static List<Line> allLines(Page page) {
    List<Line> lines = new ArrayList<>();
    List<Word> words = new ArrayList<>();
    Word last = null;
    for (Word word : page.words()) {
      if (last != null
          && (word.box().sharedHeight(last.box()) < 0.5 || word.box().x() < last.box().x())) {
        lines.add(new Line(words));
        words = new ArrayList<>();
      }
      words.add(word);
      last = word;
    }
    if (!words.isEmpty()) {
      lines.add(new Line(words));
    }
    return lines;
  }

  /**
   * The first tier of phrases that stands on the sheet; within it the first and longest, as
   * printed.
   */
  private Optional<Found> chemistry(Sheet sheet) {
    Optional<Found> named = labelled(sheet, "chemistry").flatMap(this::chemistryIn);
    for (List<String> tier : words.chemistries()) {
      Optional<Found> found = phrase(sheet, tier);
      if (found.isPresent()) {
        return named.isPresent() && tier.contains(normal(named.get().text())) ? named : found;
      }
    }
    return named;
  }

  private static String normal(String text) {
    return text.toLowerCase(Locale.ROOT);
  }

  private Optional<Found> chemistryIn(Found labelled) {
    for (List<String> tier : words.chemistries()) {
      PhraseTree tree = tree(tier);
      List<Hit> hits = tree.find(labelled.text());
      if (!hits.isEmpty()) {
        String text = labelled.text().substring(hits.get(0).start(), hits.get(0).end());
        return Optional.of(new Found(text, labelled.page(), labelled.box(), labelled.method()));
      }
    }
    return Optional.empty();
  }

  private static PhraseTree tree(List<String> phrases) {
    PhraseTree tree = new PhraseTree();
    phrases.forEach(p -> tree.add(p, List.of(p)));
    return tree;
  }

  /**
   * The first of these phrases on the first page that has any, as printed; letters before
   * ideographs.
   */
  private Optional<Found> phrase(Sheet sheet, List<String> phrases) {
    PhraseTree tree = tree(phrases);
    for (Page page : sheet.pages()) {
      Found best = null;
      for (Line line : allLines(page)) {
        Passage passage = Passage.of(page.number(), List.of(line));
        for (Hit hit : tree.find(line.text())) {
          String text = line.text().substring(hit.start(), hit.end());
          if (best == null || says(text) > says(best.text())) {
            best =
                new Found(
                    text, page.number(), passage.box(hit.start(), hit.end()), Method.TEXT_LINE);
          }
        }
      }
      if (best != null) {
        return Optional.of(best);
      }
    }
    return Optional.empty();
  }

  private static int says(String text) {
    return text.chars().anyMatch(c -> Tokens.isIdeograph((char) c)) ? 0 : Tokens.of(text).size();
  }

  private static Optional<Found> matching(Sheet sheet, Pattern pattern) {
    for (Page page : sheet.pages()) {
      for (Word word : page.words()) {
        Matcher m = pattern.matcher(word.text());
        if (m.find()) {
          return Optional.of(new Found(m.group(), page.number(), word.box(), Method.TEXT_LINE));
        }
      }
    }
    return Optional.empty();
  }

  /** Whether the sheet names a chemistry that is not lithium-ion and never one that is. */
  Optional<String> otherChemistry(Sheet sheet) {
    if (chemistry(sheet).isPresent()) {
      return Optional.empty();
    }
    return phrase(sheet, words.otherChemistries()).map(Found::text);
  }

  /** The words of fixed roles, from the resource of that name. */
  record IdentityWords(
      List<List<String>> chemistries,
      List<String> otherChemistries,
      Map<String, String> forms,
      List<String> sizes,
      List<String> makerWords,
      List<String> notInNames) {}
}
