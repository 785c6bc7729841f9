package commonsheet.workbench.figure;

import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import commonsheet.record.StoredRecord;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import commonsheet.workbench.desk.Desk;
import commonsheet.workbench.desk.Edit;
import commonsheet.workbench.folder.Folder;
import commonsheet.workbench.folder.SheetPlace;
import commonsheet.workbench.folder.Sheets;
import commonsheet.workbench.http.Given;
import commonsheet.workbench.http.Refusal;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;

/** Answers for the charts of a record: what they show, lines traced by a click, changes. */
public final class FigureRoutes {
  private static final int BOX_NUMBERS = 4;

  private final Folder folder;
  private final Sheets sheets;
  private final Tracers tracers;
  private final Desk desk;

  /**
   * Routes over a folder.
   *
   * @param tracers finds lines on sheets
   * @param desk where records are changed
   */
  public FigureRoutes(Folder folder, Sheets sheets, Tracers tracers, Desk desk) {
    this.folder = folder;
    this.sheets = sheets;
    this.tracers = tracers;
    this.desk = desk;
  }

  /** Adds them. */
  public void add(RoutesConfig routes) {
    routes.get(
        "/api/figure", request -> request.json(FigureViews.of(stored(request.queryParam("file")))));
    routes.post("/api/figure/trace", this::trace);
    routes.post("/api/figure/change", this::change);
  }

  private void trace(Context request) {
    Given given = Given.of(request);
    SheetPlace sheet = sheets.of(stored(given.required("file")).record());
    if (!sheet.isFound()) {
      throw new Refusal(Refusal.Kind.MISSING, sheet.reason());
    }
    Given at = given.object("at");
    Double x = at == null ? null : at.number("x");
    Double y = at == null ? null : at.number("y");
    if (x == null || y == null) {
      throw new Refusal(
          Refusal.Kind.UNUSABLE, "In the request, \"at\" has to have a number x and a number y.");
    }
    request.json(
        tracers.at(sheet.file(), given.whole("page"), box(given.numbers("box")), new Point(x, y)));
  }

  private void change(Context request) {
    Given given = Given.of(request);
    Given deed = given.object("deed");
    if (deed == null) {
      throw new Refusal(Refusal.Kind.UNUSABLE, "The request names no deed; load the page anew.");
    }
    Edit edit = new Edit(given.required("file"), given.required("version"), given.text("by"));
    GivenFigure figure = GivenFigure.of(deed);
    request.json(desk.change(edit, figure.what(), figure));
  }

  private StoredRecord stored(String file) {
    try {
      return RecordStore.open(folder.record(file));
    } catch (RecordException unreadable) {
      throw new Refusal(Refusal.Kind.UNUSABLE, unreadable.getMessage());
    }
  }

  /**
   * A box of the page.
   *
   * @throws Refusal for anything but four numbers with a width and a height above 0
   */
  static Box box(List<Double> numbers) {
    if (numbers.size() != BOX_NUMBERS || numbers.get(2) <= 0 || numbers.get(3) <= 0) {
      throw new Refusal(
          Refusal.Kind.UNUSABLE,
          "In the request, \"box\" has to be x, y, width and height in points, the last two above"
              + " 0.");
    }
    return new Box(numbers.get(0), numbers.get(1), numbers.get(2), numbers.get(3));
  }
}
