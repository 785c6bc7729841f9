package commonsheet.workbench.place;

import commonsheet.quantity.QuantityCatalogue;
import commonsheet.sheet.Box;
import commonsheet.sheet.Page;
import commonsheet.sheet.SheetException;
import commonsheet.sheet.Word;
import commonsheet.workbench.http.Given;
import commonsheet.workbench.http.Refusal;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

/** Answers what a page of a sheet looks like and what stands where on it. */
public final class PlaceRoutes {
  private static final int LONGEST_SEARCH = 200;
  private static final int BOX_NUMBERS = 4;
  private static final Pattern COMMA = Pattern.compile(",");

  private final RecordSheets sheets;
  private final PagePictures pictures;
  private final PageWords words;

  PlaceRoutes(RecordSheets sheets, PagePictures pictures, PageWords words) {
    this.sheets = sheets;
    this.pictures = pictures;
    this.words = words;
  }

  /** Adds them. */
  public void add(RoutesConfig routes) {
    routes.get("/api/place/picture", this::picture);
    routes.get("/api/place/words", this::words);
    routes.get("/api/place/search", this::search);
    routes.post("/api/place/read", this::read);
  }

  private void picture(Context request) {
    Path sheet = sheets.of(request.queryParam("file"));
    int page = whole(request, "page");
    int width = whole(request, "width");
    String part = request.queryParam("box");
    try {
      byte[] png = pictures.png(sheet, page, part == null ? null : box(part), width);
      request.contentType("image/png").result(png);
    } catch (SheetException undrawn) {
      throw refusal(undrawn);
    }
  }

  /** A word as pages have it. */
  private record Placed(String text, double[] box, boolean recognised, double confidence) {
    static Placed of(Word word) {
      return new Placed(word.text(), numbers(word.box()), word.recognised(), word.confidence());
    }
  }

  private record Words(List<Placed> words) {}

  private void words(Context request) {
    Path sheet = sheets.of(request.queryParam("file"));
    try {
      request.json(
          new Words(words.of(sheet, whole(request, "page")).stream().map(Placed::of).toList()));
    } catch (SheetException unreadable) {
      throw refusal(unreadable);
    }
  }

  /**
   * A place of a searched text.
   *
   * @param boxes one for each line that it stands on; {@code box} is the first of them
   */
  private record Hit(int page, double[] box, List<double[]> boxes, String text) {
    static Hit of(WordSearch.Hit hit) {
      List<double[]> boxes = hit.boxes().stream().map(PlaceRoutes::numbers).toList();
      return new Hit(hit.page(), boxes.get(0), boxes, hit.text());
    }
  }

  /** Pages that are pictures are looked through once their words were asked for. */
  private record Hits(List<Hit> hits, List<Integer> unread) {}

  private void search(Context request) {
    Path sheet = sheets.of(request.queryParam("file"));
    String text = request.queryParam("text");
    if (text == null || text.length() > LONGEST_SEARCH) {
      throw new Refusal(
          Refusal.Kind.UNUSABLE,
          "Search for at most " + LONGEST_SEARCH + " characters; shorten the text.");
    }
    try {
      List<Page> pages = words.known(sheet);
      request.json(
          new Hits(
              WordSearch.of(text).in(pages).stream().map(Hit::of).toList(), words.unread(sheet)));
    } catch (SheetException unreadable) {
      throw refusal(unreadable);
    }
  }

  private void read(Context request) {
    Given given = Given.of(request);
    Path sheet = sheets.of(given.required("file"));
    List<Double> box = given.numbers("box");
    if (box.size() != BOX_NUMBERS) {
      throw wrong("box", "four numbers");
    }
    String quantity = given.text("quantity");
    if (quantity != null && !QuantityCatalogue.standard().has(quantity)) {
      throw wrong("quantity", "the name of a quantity");
    }
    try {
      request.json(
          BoxReading.of(
              words.of(sheet, given.whole("page")),
              boxOf(box.get(0), box.get(1), box.get(2), box.get(3)),
              words.style(sheet),
              quantity == null ? null : QuantityCatalogue.standard().get(quantity)));
    } catch (SheetException unreadable) {
      throw refusal(unreadable);
    }
  }

  private static double[] numbers(Box box) {
    return new double[] {box.x(), box.y(), box.width(), box.height()};
  }

  private static Refusal refusal(SheetException sheet) {
    return new Refusal(
        sheet.kind() == SheetException.Kind.NOT_FOUND
                || sheet.kind() == SheetException.Kind.NO_PAGES
            ? Refusal.Kind.MISSING
            : Refusal.Kind.UNUSABLE,
        sheet.getMessage());
  }

  private static int whole(Context request, String name) {
    try {
      int number = Integer.parseInt(String.valueOf(request.queryParam(name)));
      if (number > 0) {
        return number;
      }
    } catch (NumberFormatException none) {
      throw wrong(name, "a whole number from 1");
    }
    throw wrong(name, "a whole number from 1");
  }

  /** X, y, width and height in points, with commas between. */
  private static Box box(String text) {
    String[] parts = COMMA.split(text, -1);
    try {
      if (parts.length == BOX_NUMBERS) {
        return boxOf(
            Double.parseDouble(parts[0]),
            Double.parseDouble(parts[1]),
            Double.parseDouble(parts[2]),
            Double.parseDouble(parts[3]));
      }
    } catch (NumberFormatException none) {
      throw wrong("box", "four numbers");
    }
    throw wrong("box", "four numbers");
  }

  private static Box boxOf(double x, double y, double width, double height) {
    if (Double.isFinite(x + y + width + height) && width > 0 && height > 0) {
      return new Box(x, y, width, height);
    }
    throw wrong("box", "four numbers with a width and a height above 0");
  }

  private static Refusal wrong(String name, String kind) {
    return new Refusal(
        Refusal.Kind.UNUSABLE, "In the request, \"" + name + "\" has to be " + kind + ".");
  }
}
