package commonsheet.chart.plot;

import commonsheet.sheet.Box;

/** A short piece of line or a marker that shows how a curve looks, as a legend has beside words. */
public record Sample(Box box, InkStyle style) {}
