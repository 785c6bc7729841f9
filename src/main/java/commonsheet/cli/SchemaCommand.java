package commonsheet.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints one of the JSON Schemas the program checks files against. */
@Command(name = "schema", description = "Prints the JSON Schema of one of the kinds of files.")
final class SchemaCommand implements Callable<Integer> {
  private static final List<String> NAMES =
      List.of("cell-record", "cell-rows", "comparison", "layout-rule", "load", "voltage-table");

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "NAME",
      description = "Such as cell-record; the message on an unknown name lists them.")
  private String name;

  @Override
  public Integer call() throws IOException {
    if (!NAMES.contains(name)) {
      throw new ParameterException(
          spec.commandLine(),
          "there is no schema \"" + name + "\"; the schemas are " + String.join(", ", NAMES) + ".");
    }
    String resource = "/commonsheet/schemas/" + name + ".schema.json";
    try (InputStream schema = SchemaCommand.class.getResourceAsStream(resource)) {
      if (schema == null) {
        throw new IOException("the schema " + name + " is missing from the program");
      }
      String text = new String(schema.readAllBytes(), StandardCharsets.UTF_8);
      spec.commandLine().getOut().print(text);
      spec.commandLine().getOut().flush();
    }
    return ExitStatus.DONE;
  }
}
