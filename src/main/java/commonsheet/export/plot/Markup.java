package commonsheet.export.plot;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes elements and text, with everything escaped that a text could mean to an XML or HTML
 * reader. Characters that XML cannot hold become U+FFFD.
 */
public final class Markup {
  private static final XMLOutputFactory FACTORY = XMLOutputFactory.newDefaultFactory();

  private final StringWriter text = new StringWriter();
  private final XMLStreamWriter out;

  /** An empty document. */
  public Markup() {
    try {
      out = FACTORY.createXMLStreamWriter(text);
    } catch (XMLStreamException e) {
      throw impossible(e);
    }
  }

  /** Begins an element. */
  public Markup open(String name) {
    try {
      out.writeStartElement(name);
      return this;
    } catch (XMLStreamException e) {
      throw impossible(e);
    }
  }

  /** Writes an element without content. */
  public Markup empty(String name) {
    try {
      out.writeEmptyElement(name);
      return this;
    } catch (XMLStreamException e) {
      throw impossible(e);
    }
  }

  /** Gives the element just begun an attribute; a value of null gives none. */
  public Markup with(String attribute, String value) {
    try {
      if (value != null) {
        out.writeAttribute(attribute, valid(value));
      }
      return this;
    } catch (XMLStreamException e) {
      throw impossible(e);
    }
  }

  /** Gives the element just begun an attribute that is a length or a place. */
  public Markup with(String attribute, double value) {
    return with(attribute, Frame.number(value));
  }

  /** Writes an element that holds only text. */
  public Markup leaf(String name, String content) {
    return open(name).text(content).close();
  }

  /** The same, of a class. */
  public Markup leaf(String name, String styleClass, String content) {
    return open(name).with("class", styleClass).text(content).close();
  }

  /** Writes text. */
  public Markup text(String content) {
    try {
      out.writeCharacters(valid(content));
      return this;
    } catch (XMLStreamException e) {
      throw impossible(e);
    }
  }

  /** Ends the element begun last. */
  public Markup close() {
    try {
      out.writeEndElement();
      return this;
    } catch (XMLStreamException e) {
      throw impossible(e);
    }
  }

  /** Ends the element begun last and the line. */
  public Markup closeLine() {
    return close().text("\n");
  }

  /** Writes a document type before the first element. */
  public Markup documentType(String name) {
    return verbatim("<!DOCTYPE " + name + ">\n");
  }

  /** Writes what is markup already, such as a style sheet of the program's own. */
  public Markup verbatim(String own) {
    try {
      out.writeCharacters("");
      out.flush();
    } catch (XMLStreamException e) {
      throw impossible(e);
    }
    text.append(own);
    return this;
  }

  /** What was written so far. */
  @Override
  public String toString() {
    try {
      out.flush();
    } catch (XMLStreamException e) {
      throw impossible(e);
    }
    return text.toString();
  }

  /** After the production Char of XML 1.0. */
  private static String valid(String content) {
    StringBuilder valid = new StringBuilder(content.length());
    content
        .codePoints()
        .forEach(
            point -> {
              boolean allowed =
                  point == '\t'
                      || point == '\n'
                      || point == '\r'
                      || (point >= 0x20 && point <= 0xD7FF)
                      || (point >= 0xE000 && point <= 0xFFFD)
                      || point >= 0x10000;
              valid.appendCodePoint(allowed ? point : 0xFFFD);
            });
    return valid.toString();
  }

  private static IllegalStateException impossible(XMLStreamException e) {
    return new IllegalStateException("writing to memory does not fail", e);
  }
}
