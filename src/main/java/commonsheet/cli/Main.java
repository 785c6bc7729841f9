package commonsheet.cli;

import commonsheet.export.Caution;
import commonsheet.sheet.SheetReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program's entry: chooses the command and turns whatever goes wrong into a sentence. */
@Command(
    name = "commonsheet",
    description = "Turns lithium-ion cell datasheets into comparable records.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    scope = ScopeType.INHERIT,
    sortOptions = false,
    usageHelpWidth = 100,
    footer = {"", Caution.TEXT},
    subcommands = {
      ReadCommand.class,
      TraceCommand.class,
      CheckCommand.class,
      ReviewCommand.class,
      VerifyCommand.class,
      WorkbenchCommand.class,
      TableCommand.class,
      ExportCommand.class,
      CompareCommand.class,
      LoadCommand.class,
      ScoreCommand.class,
      ExplainCommand.class,
      SchemaCommand.class
    },
    synopsisSubcommandLabel = "COMMAND")
public final class Main {
  /** The commands that read sheets. */
  private static final Set<String> READING = Set.of("read", "trace", "explain", "score");

  @Option(
      names = "--debug",
      description = "On a fault of the program, print its trace.",
      scope = ScopeType.INHERIT)
  private boolean debug;

  private Main() {}

  /** Runs one command and ends the process with its status. */
  public static void main(String[] arguments) {
    Locale.setDefault(Locale.ROOT);
    prepare(arguments);
    PrintWriter out = writer(FileDescriptor.out);
    PrintWriter err = writer(FileDescriptor.err);
    int status = run(out, err, arguments);
    out.flush();
    err.flush();
    System.exit(status);
  }

  /** Loads what reading needs beside the work on the command line. */
  private static void prepare(String... arguments) {
    if (arguments.length > 1 && READING.contains(arguments[0])) {
      Ahead.run(SheetReader::prepare);
    }
  }

  /** Runs one command and returns its status. */
  static int run(PrintWriter out, PrintWriter err, String... arguments) {
    Main main = new Main();
    CommandLine commands = new CommandLine(main);
    commands.setOut(out);
    commands.setErr(err);
    commands.setCaseInsensitiveEnumValuesAllowed(true);
    commands.setExecutionExceptionHandler(
        (failure, command, parsed) -> main.explain(failure, command.getErr()));
    commands.setParameterExceptionHandler((mistake, given) -> Main.correct(mistake));
    try {
      return commands.execute(arguments);
    } catch (Error failure) {
      return main.explain(failure, err);
    }
  }

  private int explain(Throwable failure, PrintWriter err) {
    if (debug) {
      failure.printStackTrace(err);
    }
    if (failure instanceof CommandException expected) {
      err.println("commonsheet: " + expected.getMessage());
      return expected.status();
    }
    err.println(
        "commonsheet: a fault of the program ("
            + FaultText.of(failure)
            + "); run the command again with --debug and report what it prints.");
    return ExitStatus.FAULT;
  }

  /** Says what is wrong with the arguments and where help is, without the page of help itself. */
  private static int correct(ParameterException mistake) {
    CommandLine command = mistake.getCommandLine();
    PrintWriter err = command.getErr();
    err.println("commonsheet: " + mistake.getMessage());
    if (mistake instanceof UnmatchedArgumentException unmatched
        && unmatched.getSuggestions().isEmpty()
        && !command.getSubcommands().isEmpty()) {
      err.println("The commands are " + String.join(", ", command.getSubcommands().keySet()) + ".");
    }
    UnmatchedArgumentException.printSuggestions(mistake, err);
    err.println("Try: " + command.getCommandSpec().qualifiedName() + " --help");
    return ExitStatus.USAGE;
  }

  private static PrintWriter writer(FileDescriptor descriptor) {
    OutputStream stream = new FileOutputStream(descriptor);
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
  }

  /** The version the jar was built as. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Main.class.getPackage().getImplementationVersion();
      return new String[] {"commonsheet " + (version == null ? "(not from its jar)" : version)};
    }
  }
}
