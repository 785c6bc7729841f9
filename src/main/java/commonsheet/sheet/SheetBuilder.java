package commonsheet.sheet;

import java.util.ArrayList;
import java.util.List;

/** Makes lines and tables of what the pages hold, seen together. */
final class SheetBuilder {
  private SheetBuilder() {}

  static Sheet build(String file, String sha256, String title, List<PageContent> contents) {
    List<Page> pages = new ArrayList<>();
    for (PageContent content : contents) {
      pages.add(page(content));
    }
    return new Sheet(file, sha256, title, pages);
  }

  private static Page page(PageContent content) {
    List<Table> tables =
        new RuledTables(content.width(), content.height(), content.body(), content.curves())
            .find(content.rulings());
    List<Word> free = new ArrayList<>(content.body());
    tables.forEach(t -> t.cells().forEach(c -> c.lines().forEach(l -> free.removeAll(l.words()))));
    List<Word> all = new ArrayList<>(content.body());
    all.addAll(content.aside());
    return new Page(
        content.number(),
        content.width(),
        content.height(),
        all,
        LineBuilder.lines(free),
        tables,
        List.of(),
        content.pictures().kind(all.size(), content.width(), content.height()));
  }
}
