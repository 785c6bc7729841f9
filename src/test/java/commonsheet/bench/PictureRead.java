package commonsheet.bench;

import commonsheet.sheet.Sheet;
import commonsheet.sheet.SheetReader;
import commonsheet.sheet.SheetSettings;
import commonsheet.sheet.ocr.PictureWords;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;

/** How long the words of a sheet of pictures take, nothing kept. Run by {@code src/bench/ocr}. */
final class PictureRead {
  private static final int TIMES = 4;
  private static final double MILLISECONDS = 1e6;

  private PictureRead() {}

  public static void main(String[] arguments) throws Exception {
    try (PictureWords words = new PictureWords()) {
      SheetReader reader = new SheetReader(SheetSettings.defaults(), words);
      for (int time = 1; time <= TIMES; time++) {
        Duration used = processorTime();
        long begin = System.nanoTime();
        Sheet sheet = reader.readSheet(Path.of(arguments[0]));
        System.out.printf(
            Locale.ROOT,
            "reading %d: %d pages, %.0f ms, %d ms of processor time%n",
            time,
            sheet.pages().size(),
            (System.nanoTime() - begin) / MILLISECONDS,
            processorTime().minus(used).toMillis());
      }
    }
  }

  private static Duration processorTime() {
    return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
  }
}
