package commonsheet.export.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import commonsheet.export.Caution;
import commonsheet.export.Printed;
import commonsheet.export.ShortlistWords;
import commonsheet.export.plot.Plot;
import commonsheet.export.plot.PlotSvg;
import commonsheet.record.JsonText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A report as a Frictionless Data Package (specs.frictionlessdata.io, version 1): CSV tables, the
 * charts, and datapackage.json that describes them.
 */
final class DataPackage {
  private static final String RIGHTS =
      "The figures are facts from the makers' sheets named as sources, or computed from them; the"
          + " sheets themselves are no part of this package.";

  private DataPackage() {}

  /** The files by their paths, the descriptor last. */
  static Map<String, String> files(Report report) {
    List<PackageTable<?>> tables = PackageTables.of(report);
    List<Plot> charts = new ReportCharts(report).files();
    Map<String, String> files = new LinkedHashMap<>();
    tables.forEach(table -> files.put(table.path(), table.csv()));
    charts.forEach(chart -> files.put(path(chart), PlotSvg.file(chart)));
    files.put("datapackage.json", descriptor(report, tables, charts));
    return files;
  }

  private static String path(Plot chart) {
    return "charts/" + chart.id() + ".svg";
  }

  private static String descriptor(Report report, List<PackageTable<?>> tables, List<Plot> charts) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("profile", "data-package");
    node.put("name", "cells-compared");
    node.put("title", "Cells at " + ShortlistWords.condition(report.condition()));
    node.put("description", description(report));
    node.put("caution", Caution.TEXT);
    if (report.licence() != null) {
      boolean address = report.licence().contains("://");
      node.putArray("licenses").addObject().put(address ? "path" : "name", report.licence());
    }
    ArrayNode keywords = node.putArray("keywords");
    List.of("lithium-ion", "cell", "datasheet", "discharge").forEach(keywords::add);
    if (!report.cells().isEmpty()) {
      sources(report, node.putArray("sources"));
    }
    node.set("condition", ReportJson.tree(report).get("condition"));
    ArrayNode resources = node.putArray("resources");
    tables.forEach(table -> resources.add(table.resource()));
    for (Plot chart : charts) {
      ObjectNode resource = resources.addObject();
      resource.put("profile", "data-resource");
      resource.put("name", chart.id()).put("path", path(chart));
      resource.put("title", chart.title()).put("description", chart.description());
      resource.put("format", "svg").put("mediatype", "image/svg+xml").put("encoding", "utf-8");
    }
    return JsonText.of(node, Numbers.DIGITS);
  }

  private static String description(Report report) {
    StringBuilder text = new StringBuilder();
    text.append(String.join(" ", ShortlistWords.asked(report.shortlist()))).append(' ');
    text.append(ShortlistWords.outcome(report.shortlist()));
    report.shortlist().remarks().forEach(r -> text.append(' ').append(Printed.clean(r)));
    text.append(' ').append(ConditionWords.tolerance(report.condition()));
    return text.append(' ').append(RIGHTS).append(' ').append(Caution.TEXT).toString();
  }

  private static void sources(Report report, ArrayNode sources) {
    for (ReportedCell cell : report.cells()) {
      SheetUsed source = SheetUsed.of(cell);
      ObjectNode node = sources.addObject();
      node.put("title", cell.name() + ": " + source.text());
      node.put("cell", cell.record().id());
      node.put("file", source.file());
      node.put("revision", source.revision());
      node.put("sha256", source.sha256());
      node.put("state", SheetUsed.approval(cell));
    }
  }
}
