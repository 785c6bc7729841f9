package commonsheet.cli;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The files that a command's arguments stand for: a file for itself, whatever its name, and a
 * folder for the files in it and below it with the wanted ending, in either case, sorted by path;
 * hidden files are left out.
 *
 * @param files each once, in the order of the arguments; a file may not exist
 * @param problems a sentence for each folder that gave none or could not be searched
 */
record InputFiles(List<Path> files, List<String> problems) {
  InputFiles {
    files = List.copyOf(files);
    problems = List.copyOf(problems);
  }

  /**
   * Looks up the arguments.
   *
   * @param ending such as {@code .pdf}, in lower case
   */
  static InputFiles find(List<Path> arguments, String ending) {
    Set<Path> found = new LinkedHashSet<>();
    List<String> problems = new ArrayList<>();
    for (Path argument : arguments) {
      if (Files.isDirectory(argument)) {
        List<Path> inFolder = search(argument, ending, problems);
        if (inFolder.isEmpty()) {
          problems.add(argument + ": there is no " + ending + " file in this folder or below it");
        }
        found.addAll(inFolder);
      } else {
        found.add(argument.normalize());
      }
    }
    return new InputFiles(new ArrayList<>(found), problems);
  }

  /** Whether this is one file by itself, so that there can be one result only. */
  static boolean isSingleFile(List<Path> arguments) {
    return arguments.size() == 1 && !Files.isDirectory(arguments.get(0));
  }

  private static List<Path> search(Path folder, String ending, List<String> problems) {
    List<Path> found = new ArrayList<>();
    try {
      Files.walkFileTree(
          folder,
          new SimpleFileVisitor<>() {
            /** Such as .git, and the workbench's .commonsheet. */
            @Override
            public FileVisitResult preVisitDirectory(Path entered, BasicFileAttributes attributes) {
              Path name = entered.getFileName();
              boolean hidden = name != null && name.toString().startsWith(".");
              return hidden && !entered.equals(folder)
                  ? FileVisitResult.SKIP_SUBTREE
                  : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
              String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
              if (name.endsWith(ending) && !name.startsWith(".") && !Files.isDirectory(file)) {
                found.add(file.normalize());
              }
              return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException failure) {
              problems.add(file + ": cannot be looked into; check its permissions");
              return FileVisitResult.CONTINUE;
            }
          });
    } catch (IOException failure) {
      problems.add(folder + ": could not be searched (" + FaultText.of(failure) + ")");
    }
    return found.stream().sorted().toList();
  }
}
