import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.multipdf.LayerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;

/** Sets each chart on a page with heading, text and caption. Argument: OUT. */
public final class Pages {
  private Pages() {}

  public static void main(String[] arguments) throws Exception {
    File out = new File(arguments[0]);
    for (JsonNode spec : new ObjectMapper().readTree(new File(out, "work/specs.json"))) {
      String name = spec.get("name").asText();
      String form = spec.get("form").asText();
      File figure = new File(out, "work/" + name + (form.equals("vector") ? ".pdf" : ".png"));
      if (!figure.isFile()) {
        System.err.println("no figure for " + name);
        continue;
      }
      File file = new File(out, form + "/" + name + ".pdf");
      try (PDDocument document = new PDDocument()) {
        set(document, spec, figure);
        COSArray id = new COSArray();
        id.add(new COSString(name));
        id.add(new COSString(name));
        document.getDocument().getTrailer().setItem(COSName.ID, id);
        document.setDocumentId((long) name.hashCode());
        document.save(file);
      }
    }
  }

  private static void set(PDDocument document, JsonNode spec, File figure) throws IOException {
    JsonNode layout = spec.get("page");
    float width = (float) layout.get("size").get(0).asDouble();
    float height = (float) layout.get("size").get(1).asDouble();
    PDPage page = new PDPage(new PDRectangle(width, height));
    document.addPage(page);
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      text(content, PDType1Font.HELVETICA, 9, 48, height - 40, layout.get("header").asText());
      content.setLineWidth(0.8f);
      content.moveTo(48, height - 46);
      content.lineTo(width - 48, height - 46);
      content.stroke();
      text(content, PDType1Font.HELVETICA_BOLD, 14, 48, height - 72, layout.get("title").asText());
      float y = height - 96;
      for (JsonNode line : layout.get("lines")) {
        text(content, PDType1Font.HELVETICA, 9, 48, y, line.asText());
        y -= 14;
      }
      for (JsonNode row : layout.get("table")) {
        text(content, PDType1Font.HELVETICA, 9, 52, y - 8, row.get(0).asText());
        text(content, PDType1Font.HELVETICA, 9, 202, y - 8, row.get(1).asText());
        content.setLineWidth(0.4f);
        content.addRect(48, y - 12, 150, 15);
        content.addRect(198, y - 12, 150, 15);
        content.stroke();
        y -= 15;
      }
      place(document, content, spec, figure, height);
    }
  }

  private static void place(
      PDDocument document, PDPageContentStream content, JsonNode spec, File figure, float height)
      throws IOException {
    JsonNode layout = spec.get("page");
    JsonNode box = layout.get("figure");
    float x = (float) box.get(0).asDouble();
    float top = (float) box.get(1).asDouble();
    float wide = (float) box.get(2).asDouble();
    float high = (float) box.get(3).asDouble();
    JsonNode caption = layout.get("caption");
    int lines = caption.get("lines").size() + (caption.get("title").isNull() ? 0 : 1);
    boolean above = caption.get("place").asText().equals("above");
    float y = above ? height - top + 12 * (lines - 1) + 6 : height - top - high - 14;
    if (!caption.get("title").isNull()) {
      text(content, PDType1Font.HELVETICA_BOLD, 10, x, y, caption.get("title").asText());
      y -= 12;
    }
    for (JsonNode line : caption.get("lines")) {
      text(content, PDType1Font.HELVETICA, 7.5f, x, y, line.asText());
      y -= 12;
    }
    if (spec.get("form").asText().equals("vector")) {
      try (PDDocument source = PDDocument.load(figure)) {
        PDFormXObject drawing = new LayerUtility(document).importPageAsForm(source, 0);
        content.saveGraphicsState();
        PDRectangle from = source.getPage(0).getMediaBox();
        content.transform(
            new Matrix(
                wide / from.getWidth(), 0, 0, high / from.getHeight(), x, height - top - high));
        content.drawForm(drawing);
        content.restoreGraphicsState();
      }
    } else {
      BufferedImage read = ImageIO.read(figure);
      BufferedImage image =
          new BufferedImage(read.getWidth(), read.getHeight(), BufferedImage.TYPE_INT_RGB);
      image.createGraphics().drawImage(read, 0, 0, java.awt.Color.WHITE, null);
      PDImageXObject picture =
          spec.get("file").asText().equals("jpg")
              ? JPEGFactory.createFromImage(
                  document, image, (float) spec.get("quality").asDouble() / 100)
              : LosslessFactory.createFromImage(document, image);
      content.drawImage(picture, x, height - top - high, wide, high);
    }
  }

  private static void text(
      PDPageContentStream content, PDType1Font font, float size, float x, float y, String text)
      throws IOException {
    content.beginText();
    content.setFont(font, size);
    content.newLineAtOffset(x, y);
    content.showText(text);
    content.endText();
  }
}
