package commonsheet.export.sizing;

import commonsheet.record.AtomicFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * A folder that holds one export. Beside the files stands a list of them with their SHA-256, in the
 * form that {@code sha256sum -c} checks. An export replaces an earlier one, and takes away files
 * that it does not have any more; a file that is not in the list, or was changed since, is somebody
 * else's and is never written over.
 */
public final class ExportFolder {
  /** The name of the list. */
  public static final String LIST = "export.sha256";

  private static final Pattern PLAIN_NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]*");
  private static final Pattern LINE = Pattern.compile("[0-9a-f]{64}  " + PLAIN_NAME.pattern());

  private final Path folder;

  /**
   * @param folder need not exist yet
   */
  public ExportFolder(Path folder) {
    this.folder = folder;
  }

  /**
   * Writes the files of an export, each whole or not at all.
   *
   * @param files texts by name; names are plain ones, without folders
   * @throws ExportException where a file is in the way, in which case nothing is written, or the
   *     folder cannot be written to
   * @throws IllegalArgumentException for a name that is not a plain one
   */
  public void write(Map<String, String> files) throws ExportException {
    for (String name : files.keySet()) {
      if (!PLAIN_NAME.matcher(name).matches()) {
        throw new IllegalArgumentException(name + " is no plain name of a file");
      }
    }
    Set<String> earlier = listed();
    Set<String> stale = new TreeSet<>();
    for (String line : earlier) {
      String name = line.substring(line.indexOf(' ') + 2);
      if (!files.containsKey(name)) {
        stale.add(name);
      }
    }
    for (String name : files.keySet()) {
      refuseOthers(name, files.get(name), earlier);
    }
    List<String> now = new ArrayList<>();
    files.forEach((name, text) -> now.add(line(name, bytes(text))));
    Set<String> both = new LinkedHashSet<>(earlier);
    both.addAll(now);
    try {
      Files.createDirectories(folder);
      // With both in the list, a run that is interrupted leaves nothing that seems another's.
      writeList(both);
      for (Map.Entry<String, String> file : files.entrySet()) {
        AtomicFile.write(folder.resolve(file.getKey()), bytes(file.getValue()));
      }
      for (String name : stale) {
        if (isOurs(name, earlier)) {
          Files.deleteIfExists(folder.resolve(name));
        }
      }
      writeList(now);
    } catch (IOException e) {
      throw new ExportException(
          folder + " cannot be written to (" + reason(e) + "); name another folder with --out", e);
    }
  }

  private void refuseOthers(String name, String text, Set<String> earlier) throws ExportException {
    Path file = folder.resolve(name);
    if (!Files.exists(file) || isOurs(name, earlier)) {
      return;
    }
    if (!line(name, content(file)).equals(line(name, bytes(text)))) {
      throw new ExportException(
          file
              + " is not as an export wrote it, so it is not written over; move it away or name"
              + " another folder with --out");
    }
  }

  /** Whether a file that is there has the content that an earlier export gave it. */
  private boolean isOurs(String name, Set<String> earlier) throws ExportException {
    Path file = folder.resolve(name);
    return Files.isRegularFile(file) && earlier.contains(line(name, content(file)));
  }

  /** The lines of the list; none where there is no list. */
  private Set<String> listed() throws ExportException {
    Path list = folder.resolve(LIST);
    Set<String> lines = new LinkedHashSet<>();
    if (Files.exists(list)) {
      new String(content(list), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> LINE.matcher(line).matches())
          .forEach(lines::add);
    }
    return lines;
  }

  private void writeList(Iterable<String> lines) throws IOException {
    AtomicFile.write(folder.resolve(LIST), bytes(String.join("\n", lines) + "\n"));
  }

  private static byte[] content(Path file) throws ExportException {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new ExportException(
          file + " cannot be read (" + reason(e) + "); move it away or name another folder", e);
    }
  }

  private static String line(String name, byte[] content) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(content)) + "  " + name;
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String reason(IOException e) {
    String said = e instanceof FileSystemException system ? system.getReason() : e.getMessage();
    return said == null ? e.getClass().getSimpleName() : said;
  }
}
