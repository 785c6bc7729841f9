package commonsheet.sheet.ocr;

import java.util.ArrayList;
import java.util.List;

/**
 * A line of text as it was read in one direction.
 *
 * @param box the strip's place in the picture, in its direction
 * @param turn that direction as {@link commonsheet.sheet.Word#turn} has it
 * @param strip the pixels that were read
 * @param line what they say
 */
record Reading(TurnedBox box, int turn, Pixels strip, ReadLine line) {
  /** A tall box less high than this, in its widths, may be a single character read level. */
  private static final double SINGLE_CHARACTER = 3;

  /** A box this much higher than wide may stand on its side. */
  private static final double ON_SIDE = 1.3;

  /** How much surer a reading on the side must be than a level one. */
  private static final double FOR_LEVEL = 0.05;

  /** Confidence of a reading upwards from which reading downwards is not tried. */
  private static final double SURE = 0.9;

  /** Degrees from which a line is aslant and not only laid askew. */
  private static final int SLANTED = 12;

  /** A place to be read in one direction. */
  record Way(TurnedBox box, int turn) {
    private Reading read(Pixels picture, LineReader reader) {
      Pixels strip = LineReader.strip(picture, box);
      return new Reading(box, turn, strip, reader.read(strip));
    }
  }

  private record Try(int region, Way way) {}

  /** Reads places whose direction is known. */
  static List<Reading> along(Pixels picture, List<Way> ways, LineReader reader) {
    return ways.parallelStream().map(way -> way.read(picture, reader)).toList();
  }

  /** Reads every region, those that may stand on their side in several ways; the surest counts. */
  static List<Reading> of(Pixels picture, List<TurnedBox> regions, LineReader reader) {
    List<Try> tries = new ArrayList<>();
    for (int i = 0; i < regions.size(); i++) {
      double rise = regions.get(i).height() / regions.get(i).length();
      if (rise < SINGLE_CHARACTER) {
        tries.add(new Try(i, new Way(regions.get(i), 0)));
      }
      if (rise > ON_SIDE) {
        tries.add(new Try(i, new Way(regions.get(i).readUpwards(), 90)));
      }
    }
    Reading[] best = new Reading[regions.size()];
    read(picture, tries, reader, best);
    List<Try> unsure = new ArrayList<>();
    for (Try made : tries) {
      int region = made.region();
      if (made.way().turn() == 90 && best[region].line().confidence() < SURE) {
        unsure.add(new Try(region, new Way(regions.get(region).readDownwards(), 270)));
      }
    }
    read(picture, unsure, reader, best);
    return List.of(best);
  }

  private static void read(Pixels picture, List<Try> tries, LineReader reader, Reading[] best) {
    List<Reading> readings = along(picture, tries.stream().map(Try::way).toList(), reader);
    for (int i = 0; i < tries.size(); i++) {
      int region = tries.get(i).region();
      Reading reading = readings.get(i);
      if (best[region] == null || reading.sureness() > best[region].sureness()) {
        best[region] = reading;
      }
    }
  }

  /** The direction of reading in whole degrees, counter-clockwise; slanted lines have their own. */
  int angle() {
    int off = (int) Math.round(-Math.toDegrees(box.angle())) - (turn == 270 ? -90 : turn);
    return Math.abs(off) < SLANTED ? turn : Math.floorMod(turn + off, 360);
  }

  private double sureness() {
    return line.confidence() + (turn == 0 ? FOR_LEVEL : 0);
  }
}
