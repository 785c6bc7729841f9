package commonsheet.export.sizing;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import commonsheet.export.Caution;
import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.JsonText;
import commonsheet.record.Method;
import commonsheet.record.Review;
import commonsheet.record.Source;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.Base64;
import java.util.HexFormat;

/**
 * A cell as linked data (JSON-LD 1.1) in the terms of EMMO and QUDT where these say exactly what
 * the sheet says, else in terms of our own; docs/export.md tells them. What was rejected or derived
 * is left out. What is unsure is not called a property of the cell: a reader who knows EMMO only
 * meets nothing that is in doubt.
 */
final class LinkedCell {
  private final CellRecord record;
  private final LinkedStatement statements;

  private LinkedCell(CellRecord record) {
    this.record = record;
    this.statements = new LinkedStatement(cellIri(record), sheetIri(record.source()));
  }

  /** The text of a file. */
  static String text(CellRecord record) {
    return JsonText.of(new LinkedCell(record).document(), JsonFields.DIGITS);
  }

  private ObjectNode document() {
    ObjectNode document = JsonNodeFactory.instance.objectNode();
    document.set("@context", LinkedTerms.context());
    document.put("@id", cellIri(record));
    document.put("@type", "BatteryCell");
    document.put("identifier", record.id());
    CellOrigin origin = CellOrigin.of(record);
    cell(document, origin.cell());
    review(document, origin.review());
    if (origin.source() != null) {
      source(document.putObject("wasDerivedFrom"), origin.source());
    }
    ArrayNode sure = document.putArray("hasProperty");
    ArrayNode unsure = document.putArray("unsureProperty");
    for (Statement statement : record.statements()) {
      if (statement.standing() != Standing.REJECTED && !isDerived(statement)) {
        statements.add(statement, statement.standing() == Standing.UNSURE ? unsure : sure);
      }
    }
    document.put("caution", Caution.TEXT);
    return document;
  }

  private static boolean isDerived(Statement statement) {
    return statement.evidence() != null && statement.evidence().method() == Method.DERIVED;
  }

  private static void cell(ObjectNode document, Cell cell) {
    if (cell.maker() != null) {
      document.putObject("manufacturer").put("@type", "Organization").put("name", cell.maker());
    }
    put(document, "model", cell.model());
    put(document, "designation", cell.designation());
    put(document, "chemistry", cell.chemistry());
    put(document, "form", cell.form());
    put(document, "sizeCode", cell.sizeCode());
    String round =
        cell.sizeCode() == null ? null : LinkedTerms.standard().cases().get(cell.sizeCode());
    if (round != null && (cell.form() == null || cell.form().equals("cylindrical"))) {
      document.putObject("hasCase").put("@type", round);
    }
  }

  private static void review(ObjectNode document, Review review) {
    put(document, "reviewState", review.state());
    put(document, "approvedBy", review.approvedBy());
    put(document, "approvedAt", review.approvedAt());
  }

  private static void source(ObjectNode node, Source source) {
    String iri = sheetIri(source);
    if (iri != null) {
      node.put("@id", iri);
    }
    node.put("@type", "Entity");
    put(node, "fileName", source.file());
    put(node, "sha256", source.sha256());
    put(node, "document", source.document());
    put(node, "revision", source.revision());
    put(node, "date", source.date());
  }

  private static void put(ObjectNode node, String name, String text) {
    if (text != null) {
      node.put(name, text);
    }
  }

  private static String cellIri(CellRecord record) {
    return "urn:commonsheet:cell:" + record.id();
  }

  /** The name of a file by its content (RFC 6920), or null where the record does not know it. */
  private static String sheetIri(Source source) {
    if (source == null || source.sha256() == null) {
      return null;
    }
    byte[] digest = HexFormat.of().parseHex(source.sha256());
    return "ni:///sha-256;" + Base64.getUrlEncoder().withoutPadding().encodeToString(digest);
  }
}
