package commonsheet.columns;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times as clocks and calendars write them. */
final class TimeText {
  /** 1:30:00, 01:30:00.500, or with days before: 2d 01:30:00. */
  private static final Pattern CLOCK =
      Pattern.compile("(?:(\\d+)\\s*d?\\s+)?(\\d+):(\\d{1,2}):(\\d{1,2}(?:[.,]\\d+)?)");

  /** 2026-05-03T10:15:00+02:00, as in ISO 8601, with a blank for the T, and slashes for hyphens. */
  private static final Pattern DATE =
      Pattern.compile("(\\d{4})[-/](\\d{2})[-/](\\d{2})[T ](\\S+?) ?(Z|[+-]\\d{2}:?\\d{2})?");

  private static final int SECONDS_PER_MINUTE = 60;
  private static final int SECONDS_PER_HOUR = 3600;
  private static final int SECONDS_PER_DAY = 86_400;
  private static final double NANOS = 1e9;

  private TimeText() {}

  /** In s, from 0:00:00 or, for a date, from 1970; null where the text is neither. */
  static Double seconds(String text) {
    Matcher clock = CLOCK.matcher(text);
    if (clock.matches()) {
      double days = clock.group(1) == null ? 0 : Double.parseDouble(clock.group(1));
      return days * SECONDS_PER_DAY
          + Double.parseDouble(clock.group(2)) * SECONDS_PER_HOUR
          + Double.parseDouble(clock.group(3)) * SECONDS_PER_MINUTE
          + Double.parseDouble(clock.group(4).replace(',', '.'));
    }
    Matcher date = DATE.matcher(text);
    return date.matches() ? date(date) : null;
  }

  /** Whether a text that is no time was meant to be a date with a time. */
  static boolean looksLikeDate(String text) {
    return text.length() > "2026-05-03".length() && text.indexOf(':') > 0;
  }

  /** Without a zone, times are taken as they stand; only their differences count. */
  private static Double date(Matcher date) {
    String local = date.group(1) + '-' + date.group(2) + '-' + date.group(3) + 'T' + date.group(4);
    String zone = date.group(5) == null ? "Z" : date.group(5).replaceFirst("(\\d{2})$", ":$1");
    try {
      OffsetDateTime time =
          LocalDateTime.parse(local.replace(',', '.'))
              .atOffset(ZoneOffset.of(zone.replace("::", ":")));
      return time.toEpochSecond() + time.getNano() / NANOS;
    } catch (DateTimeException other) {
      return null;
    }
  }
}
