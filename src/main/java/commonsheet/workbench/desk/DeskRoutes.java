package commonsheet.workbench.desk;

import commonsheet.workbench.http.Given;
import commonsheet.workbench.http.Refusal;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;

/** Answers for records: what they say, and what persons do with them. */
public final class DeskRoutes {
  private final Desk desk;

  /** Routes to a desk. */
  public DeskRoutes(Desk desk) {
    this.desk = desk;
  }

  /** Adds them. */
  public void add(RoutesConfig routes) {
    routes.get("/api/record", request -> request.json(desk.view(request.queryParam("file"))));
    routes.get(
        "/api/record/version",
        request -> request.json(Map.of("version", desk.version(request.queryParam("file")))));
    routes.get("/api/catalogue", request -> request.json(CatalogueView.standard()));
    routes.get("/api/differences", this::differences);
    routes.post("/api/records", this::create);
    routes.post("/api/record/change", this::change);
    routes.post("/api/record/undo", request -> request.json(desk.undo(edit(Given.of(request)))));
    routes.post("/api/record/redo", request -> request.json(desk.redo(edit(Given.of(request)))));
    routes.post("/api/record/approve", this::approve);
  }

  private void change(Context request) {
    Given given = Given.of(request);
    NamedDeed deed = understood(given);
    request.json(desk.change(edit(given), deed.what(), deed.deed()));
  }

  private void create(Context request) {
    request.json(Map.of("file", desk.create(Given.of(request))));
  }

  private void differences(Context request) {
    String first = request.queryParam("first");
    String second = request.queryParam("second");
    request.json(DifferencesView.of(first, desk.record(first), second, desk.record(second)));
  }

  private void approve(Context request) {
    Given given = Given.of(request);
    request.json(desk.approve(edit(given), given.flag("ownWork")));
  }

  private static NamedDeed understood(Given given) {
    try {
      return GivenDeed.of(given.object("deed"));
    } catch (IllegalArgumentException unusable) {
      throw new Refusal(Refusal.Kind.UNUSABLE, unusable.getMessage() + ".");
    }
  }

  private static Edit edit(Given given) {
    return new Edit(given.required("file"), given.required("version"), given.text("by"));
  }
}
