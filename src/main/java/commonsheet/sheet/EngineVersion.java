package commonsheet.sheet;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * What the words of a picture depend on besides the picture: the code that draws and reads it, and
 * the networks. Told from the program's own files, so that no build takes what another one read.
 */
final class EngineVersion {
  /** The code of this package and its resources, of the PDF library, and the networks. */
  private static final List<String> PARTS =
      List.of(
          "commonsheet/sheet/",
          "org/apache/pdfbox/",
          "org/apache/fontbox/",
          "ai/onnxruntime/",
          "models/");

  private EngineVersion() {}

  /** The version of this program; null where its files cannot be looked at. */
  static String own() {
    CodeSource source = EngineVersion.class.getProtectionDomain().getCodeSource();
    try {
      return source == null ? null : of(Path.of(source.getLocation().toURI()));
    } catch (IOException | URISyntaxException | IllegalArgumentException unknown) {
      return null;
    }
  }

  /**
   * The version of a program.
   *
   * @param program a jar, or a folder of classes
   */
  static String of(Path program) throws IOException {
    List<String> parts = Files.isDirectory(program) ? ofFolder(program) : ofJar(program);
    Collections.sort(parts);
    CRC32 all = new CRC32();
    parts.forEach(part -> all.update(part.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
    return parts.size() + "-" + Long.toHexString(all.getValue());
  }

  private static List<String> ofJar(Path jar) throws IOException {
    List<String> parts = new ArrayList<>();
    try (ZipFile file = new ZipFile(jar.toFile())) {
      for (ZipEntry entry : Collections.list(file.entries())) {
        if (PARTS.stream().anyMatch(entry.getName()::startsWith)) {
          parts.add(entry.getName() + " " + Long.toHexString(entry.getCrc()));
        }
      }
    }
    return parts;
  }

  private static List<String> ofFolder(Path folder) throws IOException {
    List<String> parts = new ArrayList<>();
    for (String part : PARTS) {
      if (Files.isDirectory(folder.resolve(part))) {
        try (Stream<Path> files = Files.walk(folder.resolve(part))) {
          for (Path file : files.filter(Files::isRegularFile).toList()) {
            CRC32 content = new CRC32();
            content.update(Files.readAllBytes(file));
            parts.add(folder.relativize(file) + " " + Long.toHexString(content.getValue()));
          }
        }
      }
    }
    return parts;
  }
}
