package commonsheet.workbench.folder;

import commonsheet.workbench.http.Given;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Answers what is in the folder, and reads sheets into records. */
public final class FolderRoutes {
  private final Folder folder;
  private final KnownRecords known;
  private final SheetReading reading;

  /**
   * Routes over a folder.
   *
   * @param layouts folder of layout rule files of the user's own; null for none
   */
  public FolderRoutes(Folder folder, Path layouts) {
    this.folder = folder;
    this.known = new KnownRecords(folder);
    this.reading = new SheetReading(folder, layouts);
  }

  /** Adds them. */
  public void add(RoutesConfig routes) {
    routes.get("/api/folder", this::list);
    routes.post("/api/sheets/read", this::read);
    routes.get("/api/job", this::job);
  }

  private void list(Context request) {
    request.json(listing());
  }

  private record Started(String job) {}

  private void read(Context request) {
    Path sheet = folder.sheet(Given.of(request).required("sheet"));
    request.json(new Started(reading.start(sheet)));
  }

  private void job(Context request) {
    request.json(reading.job(request.queryParam("id")));
  }

  private FolderListing listing() {
    List<FolderListing.Row> rows = new ArrayList<>();
    List<FolderListing.Problem> problems = new ArrayList<>();
    Map<String, List<String>> bySheet = new HashMap<>();
    for (KnownRecords.Known each : known.of(folder.recordFiles())) {
      if (each.row() != null) {
        rows.add(each.row());
        bySheet
            .computeIfAbsent(each.row().sheet(), none -> new ArrayList<>())
            .add(each.row().file());
      } else if (each.problem() != null) {
        problems.add(each.problem());
      }
    }
    List<FolderListing.SheetRow> sheets = new ArrayList<>();
    for (FileStamp sheet : folder.sheets()) {
      String name = sheet.path().getFileName().toString();
      sheets.add(
          new FolderListing.SheetRow(
              folder.sheetName(sheet.path()), name, bySheet.getOrDefault(name, List.of())));
    }
    return new FolderListing(folder.path().toString(), rows, sheets, problems);
  }
}
