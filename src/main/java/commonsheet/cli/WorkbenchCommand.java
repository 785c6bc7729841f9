package commonsheet.cli;

import commonsheet.export.Caution;
import commonsheet.workbench.Workbench;
import commonsheet.workbench.WorkbenchSettings;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Opens the workbench in a browser and serves it until the process is ended. */
@Command(
    name = "workbench",
    description = {
      "Opens pages in your browser on which records are checked against their sheets, mended and"
          + " approved.",
      "They are served to this machine only, until you end the program with Ctrl-C; every change is"
          + " in its file before the page says so."
    },
    footer = {"", Caution.TEXT},
    sortOptions = false)
final class WorkbenchCommand implements Callable<Integer> {
  private static final int LARGEST_PORT = 65535;

  @Spec private CommandSpec spec;

  @Option(
      names = "--sheets",
      paramLabel = "DIR",
      description = "Another folder in which the sheets of the records may be.")
  private List<Path> sheets = List.of();

  @Option(
      names = "--port",
      paramLabel = "N",
      description = "The port to listen on; any free one when not given.",
      defaultValue = "0")
  private int port;

  @Option(names = "--no-browser", description = "Print the address and open no browser.")
  private boolean noBrowser;

  @Option(
      names = "--layouts",
      paramLabel = "DIR",
      description = "Folder of your own layout rule files.")
  private Path layouts;

  @Parameters(
      arity = "0..1",
      paramLabel = "FOLDER",
      description = "The folder of the records; ${DEFAULT-VALUE} when none is given.",
      defaultValue = "records")
  private Path folder;

  @Override
  public Integer call() throws CommandException, InterruptedException {
    if (port < 0 || port > LARGEST_PORT) {
      throw new CommandException(
          ExitStatus.USAGE, port + " is no port; give one from 1 to " + LARGEST_PORT);
    }
    PrintWriter out = spec.commandLine().getOut();
    try (Workbench workbench =
        Workbench.open(new WorkbenchSettings(folder, sheets, port, layouts))) {
      Runtime.getRuntime().addShutdownHook(new Thread(workbench::close));
      out.println("The workbench is open at " + workbench.address());
      out.println("End it with Ctrl-C. Whoever has this address can change the records.");
      if (!noBrowser && !DefaultBrowser.open(workbench.addressForOnce())) {
        out.println("No browser could be started; open the address in one on this machine.");
      }
      out.flush();
      new CountDownLatch(1).await();
      return ExitStatus.DONE;
    } catch (IOException unusable) {
      throw new CommandException(ExitStatus.USAGE, unusable.getMessage());
    }
  }
}
