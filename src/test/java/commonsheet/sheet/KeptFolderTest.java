package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Where caches belong: by the XDG Base Directory Specification 0.8 ("If $XDG_CACHE_HOME is either
 * not set or empty, a default equal to $HOME/.cache should be used"; relative paths are invalid),
 * and by Apple's File System Programming Guide (Library/Caches).
 */
class KeptFolderTest {
  private static Path folder(Map<String, String> variables, Map<String, String> properties) {
    return new KeptFolder(variables::get, properties::get).folder();
  }

  private static final Map<String, String> LINUX =
      Map.of("os.name", "Linux", "user.home", "/home/curator");

  @Test
  void itIsTheUsualOneOfThePlatform() {
    assertEquals(Path.of("/home/curator/.cache/commonsheet"), folder(Map.of(), LINUX));
    assertEquals(
        Path.of("/scratch/commonsheet"), folder(Map.of("XDG_CACHE_HOME", "/scratch"), LINUX));
    assertEquals(
        Path.of("/home/curator/.cache/commonsheet"), folder(Map.of("XDG_CACHE_HOME", ""), LINUX));
    assertEquals(
        Path.of("/home/curator/.cache/commonsheet"), folder(Map.of("XDG_CACHE_HOME", "x"), LINUX));
    assertEquals(
        Path.of("/Users/curator/Library/Caches/commonsheet"),
        folder(Map.of(), Map.of("os.name", "Mac OS X", "user.home", "/Users/curator")));
  }

  @Test
  void itCanBeChosenAndTurnedOff() {
    assertEquals(Path.of("/mine"), folder(Map.of("COMMONSHEET_CACHE", "/mine"), LINUX));
    assertNull(folder(Map.of("COMMONSHEET_CACHE", "off"), LINUX));
    assertNull(folder(Map.of(), Map.of("commonsheet.cache", "OFF", "user.home", "/home/curator")));
  }

  @Test
  void withoutAHomeNothingIsKept() {
    assertNull(folder(Map.of(), Map.of("os.name", "Linux", "user.home", "?")));
    assertNull(folder(Map.of(), Map.of()));
  }
}
