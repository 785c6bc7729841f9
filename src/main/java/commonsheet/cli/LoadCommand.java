package commonsheet.cli;

import commonsheet.columns.ColumnException;
import commonsheet.compare.log.LoadFile;
import commonsheet.compare.log.LoadLog;
import commonsheet.compare.log.LogChoice;
import commonsheet.compare.log.LoggedLoad;
import commonsheet.export.TerminalLoad;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what a machine draws, from a log of its current. */
@Command(
    name = "load",
    description = "Tells what a machine draws, from a log of its current.",
    sortOptions = false)
final class LoadCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--time-column",
      paramLabel = "NAME",
      description =
          "The column of times, where its name does not tell; with the unit of its numbers behind a"
              + " slash where the log names none, such as \"uptime / ms\".")
  private String timeColumn;

  @Option(
      names = "--current-column",
      paramLabel = "NAME",
      description = "The column of currents, likewise, such as \"shunt / mA\".")
  private String currentColumn;

  @Option(
      names = "--discharge",
      paramLabel = "SIGN",
      description =
          "positive or negative: the sign of a discharge; if not given, that with which nearly all"
              + " charge flows.")
  private LogChoice.Sign discharge;

  @Option(
      names = "--charged-back",
      paramLabel = "CHARGE",
      converter = Given.Charge.class,
      description =
          "What the charger put back after the log, such as 8.2Ah, to correct the sensor by.")
  private Double chargedBack;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Also write the load to FILE (JSON), for compare --load FILE.")
  private Path file;

  @Parameters(paramLabel = "LOG.csv", description = "A text file with columns of time and current.")
  private Path log;

  @Override
  public Integer call() throws CommandException {
    LoggedLoad found;
    try {
      found = LoadLog.read(log, new LogChoice(timeColumn, currentColumn, discharge, chargedBack));
    } catch (ColumnException unusable) {
      throw new CommandException(ExitStatus.NONE_READABLE, unusable.getMessage());
    }
    if (file != null) {
      ResultFile.write(file, LoadFile.write(found));
    }
    PrintWriter out = spec.commandLine().getOut();
    out.print(text(found));
    if (file != null) {
      out.println();
      out.println("Written to " + file + "; compare cells under it with compare --load " + file);
    }
    out.flush();
    return ExitStatus.DONE;
  }

  private static String text(LoggedLoad found) {
    StringWriter text = new StringWriter();
    try {
      TerminalLoad.write(found, TerminalWidth.columns().orElse(TerminalWidth.USUAL), text);
    } catch (IOException impossible) {
      throw new UncheckedIOException("writing to memory does not fail", impossible);
    }
    return text.toString();
  }
}
