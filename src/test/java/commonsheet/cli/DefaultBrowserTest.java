package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * How systems open an address: xdg-open(1) of xdg-utils, open(1) of macOS, and the exported
 * function FileProtocolHandler of Windows' url.dll.
 */
class DefaultBrowserTest {
  private static final String ADDRESS = "http://127.0.0.1:8201/#once=a-b_c";

  @Test
  void everySystemHasItsOwnCommand() {
    Map<String, String> screen = Map.of("DISPLAY", ":0");
    assertEquals(List.of("xdg-open", ADDRESS), DefaultBrowser.command("Linux", screen, ADDRESS));
    assertEquals(List.of("xdg-open", ADDRESS), DefaultBrowser.command("FreeBSD", screen, ADDRESS));
    assertEquals(
        List.of("xdg-open", ADDRESS),
        DefaultBrowser.command("Linux", Map.of("WAYLAND_DISPLAY", "wayland-0"), ADDRESS));
    assertEquals(List.of("open", ADDRESS), DefaultBrowser.command("Mac OS X", Map.of(), ADDRESS));
    assertEquals(
        List.of("rundll32", "url.dll,FileProtocolHandler", ADDRESS),
        DefaultBrowser.command("Windows 11", Map.of(), ADDRESS));
  }

  /** There xdg-open would start a browser for terminals, on top of what we print. */
  @Test
  void withoutAScreenNoneIsStarted() {
    assertEquals(List.of(), DefaultBrowser.command("Linux", Map.of(), ADDRESS));
    assertEquals(List.of(), DefaultBrowser.command("Linux", Map.of("DISPLAY", ""), ADDRESS));
  }
}
