package commonsheet.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Makes lines and tables of what the pages hold, seen together. */
final class SheetBuilder {
  private SheetBuilder() {}

  static Sheet build(String file, String sha256, String title, List<PageContent> contents) {
    List<List<Table>> ruled = contents.parallelStream().map(SheetBuilder::ruledTables).toList();
    List<List<Word>> running = RunningText.find(contents, ruled);
    List<Box> letterheads = repeatedPictures(contents);
    List<Box> backgrounds = backgrounds(contents);
    List<Page> pages =
        IntStream.range(0, contents.size())
            .parallel()
            .mapToObj(
                i -> page(contents.get(i), ruled.get(i), running.get(i), letterheads, backgrounds))
            .toList();
    return new Sheet(file, sha256, title, pages);
  }

  private static List<Table> ruledTables(PageContent page) {
    return new RuledTables(page.width(), page.height(), page.body(), page.curves())
        .find(page.rulings());
  }

  /** Pages that must show a picture at the same place for it to be a letterhead. */
  private static final int LEAST_PAGES = 3;

  private static List<Box> repeatedPictures(List<PageContent> contents) {
    List<Box> all = contents.stream().flatMap(c -> c.pictures().boxes().stream()).toList();
    return all.stream()
        .filter(b -> all.stream().filter(o -> PictureRegions.isSame(b, o)).count() >= LEAST_PAGES)
        .toList();
  }

  /** Share of the pages that must draw a figure at the same place for it to be their background. */
  private static final double LEAST_SHARE = 0.6;

  /** Figures of most pages: charts may stand at one place on several pages, but not on so many. */
  private static List<Box> backgrounds(List<PageContent> contents) {
    List<Box> all = contents.stream().flatMap(c -> c.figures().stream()).toList();
    double least = Math.max(LEAST_PAGES, LEAST_SHARE * contents.size());
    return all.stream()
        .filter(b -> all.stream().filter(o -> PictureRegions.isSame(b, o)).count() >= least)
        .toList();
  }

  private static boolean isAmong(Box box, List<Box> others) {
    return others.stream().anyMatch(other -> PictureRegions.isSame(box, other));
  }

  private static Page page(
      PageContent content,
      List<Table> ruled,
      List<Word> running,
      List<Box> letterheads,
      List<Box> backgrounds) {
    List<Table> tables = new ArrayList<>();
    for (Table table : ruled) {
      List<Word> words = words(table);
      if (words.isEmpty() || !running.containsAll(words)) {
        tables.add(table);
      }
    }
    List<Word> free = without(content.body(), running);
    for (Table table : tables) {
      free = without(free, words(table));
    }
    List<Ruling> level = outside(tables, content.rulings().level());
    List<Ruling> upright = outside(tables, content.rulings().upright());
    UnruledTables finder = new UnruledTables(level, content.curves());
    List<Line> lines = new ArrayList<>();
    for (List<Word> region : ReadingOrder.regions(free, upright)) {
      List<Word> rest = region;
      for (Table table : finder.find(region)) {
        tables.add(table);
        rest = without(rest, words(table));
      }
      lines.addAll(LineBuilder.lines(rest));
    }
    List<Word> all = inOrder(content, running, tables, lines);
    return new Page(
        content.number(),
        content.width(),
        content.height(),
        all,
        lines,
        tables,
        running,
        content.pictures().without(letterheads).kind(all.size()),
        content.turned() == 0 && content.figures().stream().anyMatch(f -> !isAmong(f, backgrounds)),
        content.turned());
  }

  private static List<Ruling> outside(List<Table> tables, List<Ruling> rulings) {
    return rulings.stream()
        .filter(
            r ->
                tables.stream()
                    .noneMatch(t -> t.box().contains(r.box().centreX(), r.box().centreY())))
        .toList();
  }

  private static List<Word> words(Table table) {
    List<Word> words = new ArrayList<>();
    table.cells().forEach(c -> c.lines().forEach(l -> words.addAll(l.words())));
    return words;
  }

  private static List<Word> without(List<Word> words, Collection<Word> taken) {
    Set<Word> gone = Collections.newSetFromMap(new IdentityHashMap<>());
    gone.addAll(taken);
    return words.stream().filter(w -> !gone.contains(w)).toList();
  }

  /** Running words, lines and tables from top to bottom as they begin, then what stands aside. */
  private static List<Word> inOrder(
      PageContent content, List<Word> running, List<Table> tables, List<Line> lines) {
    List<Word> all = new ArrayList<>();
    LineBuilder.lines(running).forEach(l -> all.addAll(l.words()));
    List<Table> waiting = new ArrayList<>(tables);
    for (Line line : lines) {
      waiting.removeIf(
          t -> {
            boolean before =
                t.box().bottom() <= line.box().y() && t.box().sharedWidth(line.box()) > 0;
            if (before) {
              all.addAll(words(t));
            }
            return before;
          });
      all.addAll(line.words());
    }
    waiting.forEach(t -> all.addAll(words(t)));
    all.addAll(content.aside());
    return all;
  }
}
