package commonsheet.layout;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Finds and reads rule files: those in the program, and those in a folder. */
final class RuleFolder {
  private static final String BUILT_IN = "/commonsheet/layouts/";

  /** So many problems are told at once; the rest is easier to see once these are mended. */
  private static final int MOST_TOLD = 3;

  private RuleFolder() {}

  /** The rules that come with the program. */
  static List<LayoutRule> builtIn() {
    return builtInFiles().stream()
        .flatMap(name -> RuleFile.trusted(name, resource(name)).rule().stream())
        .toList();
  }

  /** The names of the program's own files, as its index lists them. */
  static List<String> builtInFiles() {
    return resource("index.txt").lines().filter(line -> !line.isBlank()).toList();
  }

  /** The text of one of the program's own files. */
  static String resource(String name) {
    try (InputStream in = RuleFolder.class.getResourceAsStream(BUILT_IN + name)) {
      if (in == null) {
        throw new IllegalStateException(
            "the program's own file " + name + " is missing; build it again");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The rules of a folder, by file name.
   *
   * @param taken rules whose names are not free
   */
  static List<LayoutRule> read(Path folder, List<LayoutRule> taken) throws LayoutException {
    List<Path> paths = list(folder);
    if (paths.isEmpty()) {
      return List.of();
    }
    RuleSchema schema = new RuleSchema();
    RuleMeaning meaning = new RuleMeaning();
    List<LayoutRule> rules = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    Map<String, String> names = new HashMap<>();
    taken.forEach(rule -> names.put(rule.name(), "the program itself"));
    for (Path path : paths) {
      RuleFile file = RuleFile.checked(path.toString(), text(path), schema, meaning);
      file.problems()
          .forEach(p -> problems.add(path + ", line " + p.line() + ": " + p.sentence()));
      file.rule()
          .ifPresent(
              rule -> {
                String first = names.putIfAbsent(rule.name(), path.toString());
                if (first != null) {
                  problems.add(
                      path
                          + ": a layout rule named \""
                          + rule.name()
                          + "\" is in "
                          + first
                          + " already; give this one another name");
                }
                rules.add(rule);
              });
    }
    if (!problems.isEmpty()) {
      throw new LayoutException(sentence(problems));
    }
    return rules;
  }

  private static String sentence(List<String> problems) {
    List<String> told = problems.subList(0, Math.min(MOST_TOLD, problems.size()));
    int more = problems.size() - told.size();
    return String.join("; ", told) + (more == 0 ? "" : "; and " + more + " more");
  }

  private static List<Path> list(Path folder) throws LayoutException {
    if (!Files.isDirectory(folder)) {
      throw new LayoutException(
          folder
              + (Files.exists(folder) ? " is no folder" : " does not exist")
              + "; name a folder of layout rule files");
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(RuleFolder::isRuleFile).sorted().toList();
    } catch (IOException | UncheckedIOException e) {
      throw new LayoutException(folder + " cannot be looked into; check its permissions");
    }
  }

  private static boolean isRuleFile(Path path) {
    String name = path.getFileName().toString().toLowerCase(Locale.ROOT);
    return (name.endsWith(".yaml") || name.endsWith(".yml"))
        && !name.startsWith(".")
        && !Files.isDirectory(path);
  }

  private static String text(Path path) throws LayoutException {
    try {
      return Files.readString(path);
    } catch (CharacterCodingException e) {
      throw new LayoutException(path + " is no text in UTF-8; save it as such");
    } catch (IOException e) {
      throw new LayoutException(path + " cannot be read; check its permissions");
    }
  }
}
