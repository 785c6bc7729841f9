package commonsheet.export.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.export.Caution;
import commonsheet.export.plot.PlotSvg;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.NodeList;

class ReportPageTest {
  @Test
  void textOfASheetNeverBecomesMarkup() throws Exception {
    Document page = parse(ReportFormat.HTML.text(ShortlistExamples.hostile()));
    Document clean = parse(ReportFormat.HTML.text(ShortlistExamples.boat()));
    assertEquals(1, page.getElementsByTagName("script").getLength());
    assertEquals(elements(clean).size(), elements(page).size());
    for (Element element : elements(page)) {
      NamedNodeMap attributes = element.getAttributes();
      for (int i = 0; i < attributes.getLength(); i++) {
        assertFalse(attributes.item(i).getNodeName().startsWith("on"), element.getTagName());
      }
    }
  }

  @Test
  void thePageAsksForNothingFromElsewhere() throws Exception {
    String html = ReportFormat.HTML.text(ShortlistExamples.boat());
    for (Element element : elements(parse(html))) {
      assertFalse(element.hasAttribute("src"), element.getTagName());
      assertFalse(Set.of("link", "img", "iframe", "object").contains(element.getTagName()));
      String link = element.getAttribute("href");
      assertTrue(link.isEmpty() || link.startsWith("#"), link);
    }
    assertFalse(html.contains("url("));
    assertFalse(html.contains("@import"));
  }

  @Test
  void thePolicyNamesThePagesOwnScriptAndNoOther() throws Exception {
    Document page = parse(ReportFormat.HTML.text(ShortlistExamples.hostile()));
    String script = page.getElementsByTagName("script").item(0).getTextContent();
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
    String policy = ((Element) page.getElementsByTagName("meta").item(1)).getAttribute("content");
    String hash = Base64.getEncoder().encodeToString(digest);
    assertTrue(policy.contains("script-src 'sha256-" + hash + "';"), policy);
    assertTrue(policy.startsWith("default-src 'none'"), policy);
  }

  @Test
  void cautionStandsAtTopAndBottom() {
    String html = ReportFormat.HTML.text(ShortlistExamples.boat());
    String escaped = Caution.TEXT;
    assertEquals(2, html.split(java.util.regex.Pattern.quote(escaped), -1).length - 1);
    assertTrue(html.indexOf(escaped) < html.indexOf("<table"));
    assertTrue(html.lastIndexOf(escaped) > html.lastIndexOf("</table"));
  }

  @Test
  void everySmallNumberLeadsToANote() throws Exception {
    Document page = parse(ReportFormat.HTML.text(ShortlistExamples.boat()));
    Set<String> ids = new HashSet<>();
    elements(page).forEach(e -> ids.add(e.getAttribute("id")));
    int links = 0;
    for (Element element : elements(page)) {
      if (element.hasAttribute("href")) {
        links++;
        assertTrue(ids.contains(element.getAttribute("href").substring(1)));
      }
    }
    assertTrue(links > 0);
  }

  @Test
  void originsAreWrittenAndColumnsCanBeSortedByKeyboard() throws Exception {
    Document page = parse(ReportFormat.HTML.text(ShortlistExamples.boat()));
    String text = page.getDocumentElement().getTextContent();
    for (String origin : List.of("interpolated", "modelled", "bounded", "not known", "≥ 2.9")) {
      assertTrue(text.contains(origin), origin);
    }
    for (Element element : elements(page)) {
      if (element.hasAttribute("data-column")) {
        assertTrue(element.hasAttribute("aria-sort"));
        assertEquals("button", element.getFirstChild().getNodeName());
      }
    }
  }

  @Test
  void chartsAreWholeFilesWithTitleAndDescription() throws Exception {
    ReportCharts charts = new ReportCharts(ShortlistExamples.hostile());
    assertEquals(3, charts.files().size());
    for (var plot : charts.files()) {
      Element svg = parse(PlotSvg.file(plot)).getDocumentElement();
      assertEquals("svg", svg.getTagName());
      assertEquals("title", svg.getFirstChild().getNodeName());
      assertEquals("desc", svg.getFirstChild().getNextSibling().getNodeName());
      assertFalse(svg.getFirstChild().getTextContent().isBlank());
      assertEquals(0, svg.getElementsByTagName("script").getLength());
    }
  }

  @Test
  void chartsShowNoMoreCellsThanCanBeToldApart() {
    Report boat = ShortlistExamples.boat();
    List<ReportedCell> many = new ArrayList<>();
    for (int rank = 1; rank <= 12; rank++) {
      ReportedCell first = boat.cells().get(0);
      many.add(ReportedCell.of(rank, first.contender(), first.discharges(), first.delivered()));
    }
    ReportCharts charts = new ReportCharts(new Report(boat.shortlist(), many));
    charts.plots().forEach(plot -> assertEquals(8, plot.series().size()));
    charts.plots().forEach(p -> assertTrue(p.description().contains("8 of 12 cells")));
  }

  /** A page of thousands of rows keeps a browser busy; it shows the first and says so. */
  @Test
  void aPageOfVeryManyCellsShowsTheFirstAndSaysSo() throws Exception {
    Report boat = ShortlistExamples.boat();
    List<ReportedCell> many = new ArrayList<>();
    for (int rank = 1; rank <= 300; rank++) {
      ReportedCell first = boat.cells().get(0);
      many.add(ReportedCell.of(rank, first.contender(), first.discharges(), first.delivered()));
    }
    String page = ReportPage.of(new Report(boat.shortlist(), many));
    assertTrue(page.contains("This page shows the first 250 of 300 cells in rank"), page);
    assertTrue(page.contains("Shown are 8 of 300 cells"), page);
    assertEquals(250, page.split("data-rank=", -1).length - 1);
  }

  private static List<Element> elements(Document page) {
    NodeList all = page.getElementsByTagName("*");
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      elements.add((Element) all.item(i));
    }
    return elements;
  }

  private static Document parse(String text) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
  }
}
