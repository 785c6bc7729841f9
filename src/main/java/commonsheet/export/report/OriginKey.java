package commonsheet.export.report;

import commonsheet.compare.Origin;
import commonsheet.export.plot.Markup;

/** Explains the words that stand below figures. */
final class OriginKey {
  private final Markup out;

  OriginKey(Markup out) {
    this.out = out;
  }

  void write() {
    out.open("section").with("class", "key-to");
    out.leaf("h3", "Where a figure comes from");
    out.open("dl");
    for (Origin origin : Origin.values()) {
      out.leaf("dt", origin.label()).leaf("dd", meaning(origin));
    }
    out.leaf("dt", "?").leaf("dd", "rests on something unsure, or on an assumption");
    out.leaf("dt", "3.1–3.4").leaf("dd", "what the figure may be, by its uncertainty");
    out.close().closeLine();
  }

  static String meaning(Origin origin) {
    return switch (origin) {
      case STATED -> "printed on the sheet";
      case CURVE -> "from one digitised curve at this very load";
      case INTERPOLATED -> "between the curves of the rates, or temperatures, on either side";
      case DERIVED -> "computed from other figures of the cell, or from several curves";
      case MODELLED -> "by a stated model from printed values, as no curve serves";
      case BOUNDED -> "only a bound is known";
      case ABSENT -> "not known; the note says why";
    };
  }
}
