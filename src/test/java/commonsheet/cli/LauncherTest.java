package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher in a checkout of its own, with a small program in place of the real one. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the launcher is for POSIX shells")
class LauncherTest {
  private static final Path JAVA_HOME = Path.of(System.getProperty("java.home"));

  @TempDir Path folder;
  private Path root;
  private Path launcher;

  @BeforeEach
  void checkOut() throws IOException {
    root = Files.createDirectory(folder.resolve("a checkout with spaces"));
    Files.createDirectories(root.resolve("src/main"));
    Files.createDirectories(root.resolve("schemas"));
    Files.createFile(root.resolve("pom.xml"));
    launcher = Files.copy(Path.of("commonsheet"), root.resolve("commonsheet"));
  }

  @Test
  void aBuiltProgramRunsWithoutMavenFromAnywhereThroughALink() throws Exception {
    putJar();
    Path link = Files.createSymbolicLink(folder.resolve("a link"), launcher);
    Run first = run(link, "two words", "*");
    assertEquals("two words\n*\n", first.out(), first.err());
    assertEquals("commonsheet: preparing what was built…\n", first.err());
    assertEquals(2, first.status());
    assertEquals("", run(link, "again").err());
  }

  @Test
  void startsAtTheSameTimeDoNotDisturbEachOther() throws Exception {
    putJar();
    List<Process> starts = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      starts.add(start(launcher, "x"));
    }
    for (Process start : starts) {
      assertEquals(1, start.waitFor());
    }
    try (Stream<Path> files = Files.list(root.resolve("target/run"))) {
      List<String> left =
          files
              .map(file -> file.getFileName().toString())
              .filter(n -> !n.endsWith(".jsa"))
              .toList();
      assertEquals(List.of("commonsheet.jar"), left);
    }
  }

  @Test
  void aMissingMavenIsSaidWhenThereIsSomethingToBuild() throws Exception {
    Run outcome = run(launcher, "x");
    assertEquals(1, outcome.status());
    assertTrue(outcome.err().contains("Maven is needed to build the program"), outcome.err());
  }

  @Test
  void aJavaHomeWithoutJavaIsSaid() throws Exception {
    ProcessBuilder builder = builder(launcher, "x");
    builder.environment().put("JAVA_HOME", folder.toString());
    Run outcome = finish(builder.start());
    assertEquals(1, outcome.status());
    assertEquals(
        "commonsheet: JAVA_HOME is "
            + folder
            + ", but there is no bin/java in it; set it to a JDK of version 17 or newer.\n",
        outcome.err());
  }

  @Test
  void anOldJavaIsSaid() throws Exception {
    Path old = Files.createDirectories(folder.resolve("jdk-11/bin"));
    Files.writeString(old.resolve("java"), "#!/bin/sh\n");
    assertTrue(old.resolve("java").toFile().setExecutable(true));
    Files.writeString(old.resolveSibling("release"), "JAVA_VERSION=\"11.0.2\"\n");
    ProcessBuilder builder = builder(launcher, "x");
    builder.environment().put("JAVA_HOME", old.getParent().toString());
    Run outcome = finish(builder.start());
    assertEquals(1, outcome.status());
    assertTrue(outcome.err().contains("is Java 11.0.2; set JAVA_HOME"), outcome.err());
  }

  /** A jar newer than every source. */
  private void putJar() throws IOException {
    Manifest manifest = new Manifest();
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, LauncherProbe.class.getName());
    String probe = "/" + LauncherProbe.class.getName().replace('.', '/') + ".class";
    Path jar = Files.createDirectory(root.resolve("target")).resolve("commonsheet.jar");
    try (OutputStream file = Files.newOutputStream(jar);
        JarOutputStream out = new JarOutputStream(file, manifest);
        InputStream in = LauncherTest.class.getResourceAsStream(probe)) {
      out.putNextEntry(new JarEntry(probe.substring(1)));
      in.transferTo(out);
    }
  }

  private Run run(Path command, String... arguments) throws Exception {
    return finish(start(command, arguments));
  }

  private Process start(Path command, String... arguments) throws IOException {
    return builder(command, arguments).start();
  }

  /** A start from another folder, with the tools of a POSIX system and no Maven in the path. */
  private ProcessBuilder builder(Path command, String... arguments) throws IOException {
    List<String> line = new ArrayList<>(List.of("/bin/sh", command.toString()));
    line.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(line).directory(folder.toFile());
    Map<String, String> environment = builder.environment();
    environment.clear();
    environment.put("JAVA_HOME", JAVA_HOME.toString());
    environment.put("PATH", tools().toString());
    return builder;
  }

  private Path tools() throws IOException {
    Path tools = folder.resolve("tools");
    if (Files.notExists(tools)) {
      Files.createDirectory(tools);
      for (String tool :
          List.of(
              "cat", "cp", "find", "head", "mkdir", "mv", "readlink", "rm", "sed", "sleep", "tr")) {
        Path found =
            Stream.of("/bin", "/usr/bin")
                .map(place -> Path.of(place, tool))
                .filter(Files::exists)
                .findFirst()
                .orElseThrow();
        Files.createSymbolicLink(tools.resolve(tool), found);
      }
    }
    return tools;
  }

  private static Run finish(Process process) throws Exception {
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Run(process.waitFor(), out, err);
  }
}
