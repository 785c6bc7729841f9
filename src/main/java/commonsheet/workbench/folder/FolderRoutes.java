package commonsheet.workbench.folder;

import commonsheet.record.ReadRecord;
import commonsheet.record.RecordStore;
import commonsheet.review.Overview;
import commonsheet.workbench.http.Refusal;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Answers what is in the folder. */
public final class FolderRoutes {
  private final Folder folder;

  /** Routes over a folder. */
  public FolderRoutes(Folder folder) {
    this.folder = folder;
  }

  /** Adds them. */
  public void add(RoutesConfig routes) {
    routes.get("/api/folder", this::list);
  }

  private void list(Context request) {
    request.json(listing());
  }

  private FolderListing listing() {
    List<Path> files;
    try {
      files = folder.records();
    } catch (IOException unreadable) {
      throw new Refusal(
          Refusal.Kind.UNWRITTEN, folder.path() + " cannot be read; check its permissions.");
    }
    List<FolderListing.Row> rows = new ArrayList<>();
    List<FolderListing.Problem> problems = new ArrayList<>();
    List<ReadRecord> read = RecordStore.openAll(files);
    for (int i = 0; i < files.size(); i++) {
      String name = folder.name(files.get(i));
      if (read.get(i).stored() != null) {
        rows.add(FolderListing.Row.of(name, Overview.of(read.get(i).stored().record())));
      } else {
        problems.add(new FolderListing.Problem(name, read.get(i).problem().getMessage()));
      }
    }
    return new FolderListing(folder.path().toString(), rows, problems);
  }
}
