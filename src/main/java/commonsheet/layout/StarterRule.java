package commonsheet.layout;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import commonsheet.quantity.Figure;
import commonsheet.quantity.FigureParser;
import commonsheet.quantity.NumberStyle;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.quantity.QuantityKind;
import commonsheet.sheet.Line;
import commonsheet.sheet.Page;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.Table;
import commonsheet.sheet.Word;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A starting point for the rule file of a sheet: a valid rule that recognises the sheet, with what
 * was not understood of it as comments to be filled in.
 */
public final class StarterRule {
  /** As much as one sees at a glance; the rest is a run of {@code explain} away. */
  private static final int MOST_LINES = 40;

  private static final int MOST_COLUMNS = 8;
  private static final int MOST_OFFERED = 3;
  private static final int LONGEST_LABEL = 60;
  private static final int LONGEST_REMARK = 36;
  private static final String DEFAULT_NAME = "new-layout";

  private final Sheet sheet;
  private final Reading reading;
  private final Recognition seen;
  private final FigureParser figures;
  private final Vocabulary vocabulary = new Vocabulary();
  private final List<String> lines = new ArrayList<>();

  private StarterRule(Sheet sheet, Reading reading) {
    this.sheet = sheet;
    this.reading = reading;
    this.seen = new Recognition(sheet);
    this.figures = new FigureParser(NumberStyle.of(LayoutLibrary.textOf(sheet)));
    for (String code : reading.explanation().languages()) {
      vocabulary.addHeadings(Resources.language(code).columns());
    }
  }

  /**
   * The text of the rule file, at most 40 lines of YAML.
   *
   * @param reading what the sheet gave, with a record or without
   */
  public static String of(Sheet sheet, Reading reading) {
    StarterRule starter = new StarterRule(sheet, reading);
    starter.head();
    starter.columns();
    starter.labels();
    return String.join("\n", starter.lines) + "\n";
  }

  // ---- what the rule is called and how it is recognised ----

  private void head() {
    String file = cut(sheet.file(), LONGEST_LABEL);
    Optional<String> maker = maker();
    List<String> title = maker.or(this::title).stream().toList();
    lines.add("# A starting point for a layout rule, from " + file + "; see docs/layouts.md.");
    lines.add("# Take the \"# \" away from the lines you want, fill them in, delete the others.");
    lines.add("name: " + name(title));
    lines.add("version: 1");
    lines.add("description: " + quoted("Sheets like " + file));
    lines.add("recognise: # all of this must stand on a sheet; a maker's name does best");
    if (!title.isEmpty()) {
      lines.add("  allOf: " + list(title));
    }
    List<String> headings = headings();
    if (!headings.isEmpty()) {
      lines.add("  columns: " + list(headings));
    } else if (title.isEmpty()) {
      lines.add("  allOf: " + list(List.of(firstWords())));
    }
    opening(title).forEach(line -> lines.add("  # its first page also says " + quoted(line)));
  }

  private Optional<String> maker() {
    return reading.records().stream()
        .map(record -> record.cell().maker())
        .filter(Objects::nonNull)
        .filter(this::recognises)
        .findFirst();
  }

  /** The line of the first pages in the largest print. */
  private Optional<String> title() {
    return openingLines()
        .filter(line -> recognises(line.text()))
        .max(
            Comparator.comparingDouble(
                line -> line.words().stream().mapToDouble(Word::size).min().orElse(0)))
        .map(Line::text);
  }

  private List<String> opening(List<String> title) {
    return openingLines()
        .map(Line::text)
        .filter(text -> recognises(text) && !title.contains(text))
        .limit(3)
        .toList();
  }

  private Stream<Line> openingLines() {
    return sheet.pages().stream()
        .limit(1)
        .flatMap(page -> page.lines().stream())
        .filter(line -> line.text().length() <= LONGEST_LABEL);
  }

  private boolean recognises(String text) {
    return !Tokens.key(text).isEmpty()
        && seen.missing(new LayoutRule.Recognise(List.of(text), null, null, null)).isEmpty();
  }

  private String firstWords() {
    return sheet.pages().stream()
        .flatMap(page -> page.words().stream())
        .map(Word::text)
        .filter(this::recognises)
        .findFirst()
        .orElse(DEFAULT_NAME);
  }

  private static String name(List<String> title) {
    String plain =
        Normalizer.normalize(String.join(" ", title), Normalizer.Form.NFKD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    return plain.isEmpty() || plain.length() > LONGEST_LABEL ? DEFAULT_NAME : plain;
  }

  // ---- columns ----

  /** The first row of the first table whose headings the vocabulary does not know all of. */
  private List<String> headings() {
    for (Page page : sheet.pages()) {
      for (Table table : page.tables()) {
        List<String> texts =
            table.cells().stream()
                .filter(cell -> cell.row() == 0 && !cell.isEmpty())
                .map(cell -> cell.text().replaceAll("\\s+", " ").trim())
                .toList();
        if (table.rows() > 2 && texts.size() == table.columns() && areHeadings(texts)) {
          return texts;
        }
      }
    }
    return List.of();
  }

  private boolean areHeadings(List<String> texts) {
    return texts.size() >= 2
        && texts.size() <= MOST_COLUMNS
        && texts.stream().distinct().count() == texts.size()
        && texts.stream().allMatch(text -> text.length() <= LONGEST_LABEL / 2)
        && texts.stream().noneMatch(text -> Tokens.key(text).isEmpty())
        && texts.stream().allMatch(text -> figures.find(text).isEmpty())
        && texts.stream().anyMatch(text -> vocabulary.role(text).isEmpty());
  }

  private void columns() {
    List<String> headings = headings();
    if (headings.isEmpty()) {
      return;
    }
    lines.add(
        "# columns: # roles: label, value, minimum, typical, maximum, unit, condition, ignore");
    for (int i = 0; i < headings.size(); i++) {
      String role = i == 0 ? "label" : i == 1 ? "value" : "condition";
      lines.add("#   - {say: [" + quoted(headings.get(i)) + "], role: " + role + "}");
    }
  }

  // ---- labels ----

  private void labels() {
    Map<String, Outcome> open = new LinkedHashMap<>();
    candidates(true).forEach(outcome -> open.putIfAbsent(Tokens.key(outcome.label()), outcome));
    candidates(false).forEach(outcome -> open.putIfAbsent(Tokens.key(outcome.label()), outcome));
    if (open.isEmpty()) {
      lines.add(
          "# Every label beside a figure was understood: correct by \"labels\" what was not.");
      return;
    }
    lines.add("# labels: # statistic, unit and conditions may be added to each");
    List<Outcome> outcomes = List.copyOf(open.values());
    int room = MOST_LINES - lines.size();
    int told = outcomes.size() <= room ? outcomes.size() : room - 1;
    outcomes.subList(0, told).forEach(outcome -> lines.add(label(outcome)));
    if (told < outcomes.size()) {
      lines.add("#   and " + (outcomes.size() - told) + " more that explain shows");
    }
  }

  /** Labels of figures from which nothing came. */
  private List<Outcome> candidates(boolean unmatched) {
    return reading.explanation().outcomes().stream()
        .filter(outcome -> !outcome.matched() && outcome.unmatched() == unmatched)
        .filter(outcome -> outcome.label().length() <= LONGEST_LABEL)
        .filter(outcome -> !Tokens.key(outcome.label()).isEmpty())
        .filter(outcome -> figures.find(outcome.label()).stream().allMatch(f -> f.unit() == null))
        .filter(outcome -> outcome.value().length() <= 2 * LONGEST_LABEL)
        .filter(outcome -> !figures.find(outcome.value()).isEmpty())
        .filter(outcome -> unmatched || !quantities(outcome.value()).isEmpty())
        .toList();
  }

  /** A quantity is filled in only where there is no other of its unit: a wrong one does harm. */
  private String label(Outcome outcome) {
    List<String> quantities = quantities(outcome.value());
    boolean one = quantities.size() == 1;
    return "#   - {say: ["
        + quoted(outcome.label())
        + "], quantity: "
        + (one ? quantities.get(0) : "choose")
        + "} # "
        + cut(outcome.value(), LONGEST_REMARK)
        + (one || quantities.isEmpty() ? "" : ": " + offered(quantities));
  }

  private static String offered(List<String> quantities) {
    return quantities.stream().limit(MOST_OFFERED).collect(Collectors.joining(", "))
        + (quantities.size() > MOST_OFFERED ? ", …" : "");
  }

  /** The quantities that the first figure could be of, by its unit. */
  private List<String> quantities(String value) {
    return figures.find(value).stream()
        .filter(figure -> figure.unit() != null)
        .findFirst()
        .map(
            figure ->
                QuantityCatalogue.standard().all().stream()
                    .filter(kind -> fits(kind, figure))
                    .map(QuantityKind::name)
                    .toList())
        .orElse(List.of());
  }

  private static boolean fits(QuantityKind kind, Figure figure) {
    return kind.dimension() == figure.unit().dimension()
        && (!kind.range() || figure.isRange())
        && (kind.range() || plausible(kind, figure));
  }

  private static boolean plausible(QuantityKind kind, Figure figure) {
    Double value = figure.in(kind.unit()).value();
    return value == null || (value >= kind.plausibleLow() && value <= kind.plausibleHigh());
  }

  // ---- YAML ----

  private static String list(List<String> texts) {
    return texts.stream().map(StarterRule::quoted).collect(Collectors.joining(", ", "[", "]"));
  }

  /** A JSON string is a YAML string too. */
  private static String quoted(String text) {
    return "\"" + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + "\"";
  }

  private static String cut(String text, int length) {
    String line = text.replaceAll("[\\p{Cntrl}\\s]+", " ").trim();
    return line.length() <= length ? line : line.substring(0, length - 1).trim() + "…";
  }
}
