package commonsheet.workbench.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.chart.reference.PlotReference;
import commonsheet.record.CellRecord;
import commonsheet.record.Curve;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import commonsheet.sheet.Point;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A person works at a chart in a real browser: axes, points, tracing, a chart that was missed. */
class FigurePageTest {
  private static final String SHEET = "harrowmere-hm18650-29e";

  @TempDir private Path home;

  @Test
  void aMarkMovedByKeyboardComputesTheCurvesOfItsAxisAnew() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, SHEET)) {
      Curve before = RecordFile.read(workbench).curve("c1");
      FigureScreen screen = FigureScreen.of(workbench, "c1");
      assertEquals(List.of(), OpenWorkbench.inaccessible(screen.page));
      screen.press("m");
      assertEquals(List.of(), OpenWorkbench.inaccessible(screen.page));
      screen.at("mark-y1-0").focus();
      for (int step = 0; step < 12; step++) {
        screen.press("ArrowDown");
      }
      screen.press("Shift+ArrowUp");
      assertThat(screen.page.locator(".residual.off").first()).isVisible();
      screen.save();

      Curve after = RecordFile.read(workbench).curve("c1");
      // Twelve steps of a quarter of a point down, one of a fortieth up, kept to a hundredth.
      assertEquals(before.y().ticks().get(0).at() + 2.98, after.y().ticks().get(0).at(), 0.0101);
      assertEquals(Standing.CORRECTED, after.standing());
      assertEquals(before.points(), after.original().points());
      PlotReference scale = PlotReference.of(after).orElseThrow();
      List<Point> places = PlotReference.places(before);
      for (int i = 0; i < places.size(); i++) {
        double value = scale.y().value(places.get(i));
        assertEquals(value, after.points().get(i).get(1), after.uncertainty().y() / 10);
      }
      assertTrue(after.uncertainty().y() > before.uncertainty().y());

      screen.at("undo").click();
      assertThat(screen.told()).containsText("Undone");
      assertEquals(before, RecordFile.read(workbench).curve("c1"));
    }
  }

  @Test
  void aClickOnTheInkProposesTheCurve() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, SHEET)) {
      Curve before = RecordFile.read(workbench).curve("c2");
      FigureScreen screen = FigureScreen.of(workbench, "c2");
      screen.tool("Trace");
      List<Point> places = PlotReference.places(before);
      screen.click(places.get(places.size() / 2));
      assertThat(screen.at("take")).isVisible();
      assertEquals(List.of(), OpenWorkbench.inaccessible(screen.page));
      screen.press("Escape");
      assertThat(screen.at("take")).isHidden();
      screen.click(places.get(places.size() / 2));
      screen.at("take").click();
      screen.save();

      Curve after = RecordFile.read(workbench).curve("c2");
      assertEquals(Method.VECTOR_CURVE, after.method());
      assertTrue(after.evidence().note().contains("traced from a click"));
      assertLiesOn(before, after);
    }
  }

  @Test
  void pointsAreAddedMovedAndTakenOutByKeyboard() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, SHEET)) {
      Curve before = RecordFile.read(workbench).curve("c1");
      FigureScreen screen = FigureScreen.of(workbench, "c1");
      screen.press("p");
      screen.at("point-0").focus();
      screen.press("a");
      assertThat(screen.at("point-1")).isFocused();
      screen.press("ArrowUp", "ArrowUp", "PageDown", "Delete");
      assertThat(screen.at("undo")).isEnabled();
      screen.press("Control+z", "Control+y");
      screen.save();

      Curve after = RecordFile.read(workbench).curve("c1");
      assertEquals(before.points().size(), after.points().size());
      assertEquals(Method.HAND_PLACED, after.method());
      assertTrue(after.evidence().note().contains("placed by hand; 1 point taken out"));
      // Halfway between the first two points, and a point of the page higher.
      List<Point> were = PlotReference.places(before);
      Point added = PlotReference.places(after).get(1);
      assertEquals((were.get(0).x() + were.get(1).x()) / 2, added.x(), 0.02);
      assertEquals((were.get(0).y() + were.get(1).y()) / 2 - 1, added.y(), 0.02);
    }
  }

  @Test
  void aChartThatWasMissedIsBoxedMarkedAndTraced() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, SHEET)) {
      Curve known = RecordFile.read(workbench).curve("c1");
      List<Double> box = known.evidence().box();
      double left = box.get(0);
      double top = box.get(1);
      double right = left + box.get(2);
      double bottom = top + box.get(3);
      FigureScreen screen = FigureScreen.of(workbench, "c1");
      screen.at("begin").click();
      screen.page.locator("dialog button.main").click();
      assertThat(screen.page.locator(".sheet[data-tool=box]")).isVisible();
      screen.drag(new Point(left, top), new Point(right, bottom));
      assertThat(screen.at("quantity-x1")).isVisible();
      screen.page.locator("#figure image").first().waitFor();

      for (Curve.Tick tick : ends(known.x())) {
        screen.click(new Point(tick.at(), bottom));
        type(screen, tick.text());
      }
      for (Curve.Tick tick : ends(known.y())) {
        screen.click(new Point(left, tick.at()));
        type(screen, tick.text());
      }
      List<String> printed = List.of("A.h", "mA.h");
      double factor = known.x().ticks().get(1).value() / number(known.x().ticks().get(1).text());
      screen.at("unit-x1").selectOption(printed.get(factor < 0.5 ? 1 : 0));
      screen.tool("Trace");
      List<Point> places = PlotReference.places(known);
      screen.click(places.get(places.size() / 2));
      screen.at("take-new").click();
      screen.at("label").fill("again");
      screen.at("add-condition").selectOption("dischargeRate");
      screen.at("condition-dischargeRate").fill("0.2C");
      screen.at("condition-dischargeRate").press("Tab");
      screen.save();

      Curve added = RecordFile.read(workbench).curve("c4");
      assertEquals("again", added.label());
      assertEquals(0.2, added.conditions().get("dischargeRate"));
      assertEquals(Standing.CORRECTED, added.standing());
      assertLiesOn(known, added);
    }
  }

  @Test
  void whoComesSecondIsToldAndNothingIsOverwritten() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, SHEET)) {
      FigureScreen one = FigureScreen.of(workbench, "c1");
      FigureScreen other = FigureScreen.of(workbench, "c2");
      one.at("label").fill("mine");
      one.at("label").press("Tab");
      other.at("label").fill("theirs");
      other.at("label").press("Tab");
      other.save();
      one.press("Control+s");
      assertThat(one.told()).containsText("changed by somebody else");
      assertThat(one.at("label")).hasValue("mine");
      CellRecord record = RecordFile.read(workbench);
      assertEquals("theirs", record.curve("c2").label());
      one.button("Load it as it is now").click();
      assertThat(one.at("pick-c2")).containsText("theirs");
    }
  }

  private static void type(FigureScreen screen, String text) {
    assertThat(screen.page.locator("input.value:focus")).isVisible();
    screen.page.keyboard().insertText(text);
    screen.press("Tab");
  }

  private static double number(String text) {
    return Double.parseDouble(text.replace(",", ""));
  }

  private static List<Curve.Tick> ends(Curve.Axis axis) {
    return List.of(axis.ticks().get(0), axis.ticks().get(axis.ticks().size() - 1));
  }

  /** Whether a curve lies on another within the uncertainties of both. */
  private static void assertLiesOn(Curve known, Curve curve) {
    double ux = known.uncertainty().x() + curve.uncertainty().x();
    double uy = known.uncertainty().y() + curve.uncertainty().y();
    for (List<Double> p : known.points()) {
      double least = Double.MAX_VALUE;
      for (int i = 1; i < curve.points().size(); i++) {
        List<Double> a = curve.points().get(i - 1);
        List<Double> b = curve.points().get(i);
        double dx = (b.get(0) - a.get(0)) / ux;
        double dy = (b.get(1) - a.get(1)) / uy;
        double px = (p.get(0) - a.get(0)) / ux;
        double py = (p.get(1) - a.get(1)) / uy;
        double along = (px * dx + py * dy) / Math.max(1e-12, dx * dx + dy * dy);
        double t = Math.max(0, Math.min(1, along));
        least = Math.min(least, Math.hypot(px - t * dx, py - t * dy));
      }
      assertTrue(least <= 1, "off by " + least + " at " + p);
    }
  }
}
