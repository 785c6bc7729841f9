package commonsheet.workbench;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.ObjectMapper;
import commonsheet.workbench.desk.Desk;
import commonsheet.workbench.desk.DeskRoutes;
import commonsheet.workbench.figure.FigureRoutes;
import commonsheet.workbench.figure.Tracers;
import commonsheet.workbench.folder.Folder;
import commonsheet.workbench.folder.FolderRoutes;
import commonsheet.workbench.folder.Sheets;
import commonsheet.workbench.http.Server;
import commonsheet.workbench.place.Places;
import io.javalin.util.JavalinException;
import java.io.IOException;
import java.net.BindException;
import java.util.List;

/** Serves the pages on which a person checks records against their sheets, until it is closed. */
public final class Workbench implements AutoCloseable {
  private final Server server;
  private final Places places;

  private Workbench(Server server, Places places) {
    this.server = server;
    this.places = places;
  }

  /**
   * Starts serving.
   *
   * @throws IOException where the folder cannot be read or the port cannot be had; says which
   */
  public static Workbench open(WorkbenchSettings settings) throws IOException {
    Folder folder = Folder.of(settings.folder(), settings.sheets());
    folder.tidy();
    Sheets sheets = new Sheets(folder);
    Places places = new Places(folder, sheets);
    Desk desk = new Desk(folder, new SheetOfRecord(sheets, places.pictures()));
    ObjectMapper json =
        new ObjectMapper().setDefaultPropertyInclusion(JsonInclude.Include.NON_NULL);
    try {
      return new Workbench(
          Server.start(
              settings.port(),
              json,
              List.of(
                  new FolderRoutes(folder, settings.layouts())::add,
                  new DeskRoutes(desk)::add,
                  places.routes()::add,
                  new FigureRoutes(folder, sheets, new Tracers(places), desk)::add)),
          places);
    } catch (JavalinException taken) {
      places.close();
      throw new IOException(
          "the port "
              + settings.port()
              + " cannot be had"
              + why(taken)
              + "; choose another by --port",
          taken);
    }
  }

  private static String why(Throwable fault) {
    for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
      if (cause instanceof BindException && cause.getMessage() != null) {
        return " (" + cause.getMessage() + ")";
      }
    }
    return "";
  }

  /** The address to start a browser with; it holds a word that is good once. */
  public String addressForOnce() {
    return server.addressForOnce();
  }

  /** The address to open in a browser. It holds the key of this start. */
  public String address() {
    return server.address();
  }

  @Override
  public void close() {
    server.close();
    places.close();
  }
}
