package hingeleaf.outline;

import hingeleaf.finding.Place;
import hingeleaf.finding.Problem;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * From the bytes of an SVG file to an {@link Outline}: walks the XML, lets {@link SvgShapes} draw
 * what it finds, and {@link Outliner} make regions of it. Entities, DTDs and everything outside the
 * file stay shut. One object reads one file.
 */
final class SvgReader {
  private static final int DEEPEST = 200;

  /** Making one costs more than reading a drawing with it. */
  private static final XMLInputFactory FACTORY = factory();

  private final String name;
  private final List<Problem> notes = new ArrayList<>();

  SvgReader(String name) {
    this.name = name;
  }

  Outline.Reading read(byte[] bytes, OptionalDouble width) {
    if (bytes.length > Outline.LIMIT_BYTES) {
      return refused("too-large", 1, 1, "this drawing is larger than 2 MB");
    }
    if (bytes.length == 0) {
      return refused("empty-file", 1, 1, "nothing stands in this file");
    }
    XMLStreamReader xml;
    try {
      xml = open(bytes);
    } catch (XMLStreamException e) {
      return refused("not-svg", 1, 1, "this is not an SVG file");
    }
    return read(xml, width);
  }

  /** One at a time: nothing promises that a factory may be shared. */
  private static XMLStreamReader open(byte[] bytes) throws XMLStreamException {
    synchronized (FACTORY) {
      return FACTORY.createXMLStreamReader(new ByteArrayInputStream(bytes));
    }
  }

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    factory.setXMLResolver(
        (publicId, systemId, base, namespace) -> {
          throw new XMLStreamException("external references stay shut");
        });
    return factory;
  }

  private Outline.Reading read(XMLStreamReader xml, OptionalDouble width) {
    SvgShapes shapes = new SvgShapes(this::note);
    try {
      walk(xml, shapes);
      return new Outliner(name, shapes.drawing()).outline(width, notes);
    } catch (Refusal r) {
      Location at = xml.getLocation();
      return refused(r.kind(), at.getLineNumber(), at.getColumnNumber(), r.sentence());
    } catch (XMLStreamException e) {
      Location at = e.getLocation() == null ? xml.getLocation() : e.getLocation();
      return refused(
          "not-svg", at.getLineNumber(), at.getColumnNumber(), "this is not well-formed XML");
    } catch (Outliner.Fault f) {
      return new Outline.Reading.Refused(f.problem());
    }
  }

  private void walk(XMLStreamReader xml, SvgShapes shapes) throws XMLStreamException, Refusal {
    int depth = 0;
    while (xml.hasNext()) {
      switch (xml.next()) {
        case XMLStreamConstants.START_ELEMENT -> {
          if (++depth > DEEPEST) {
            throw new Refusal("too-deep", "elements are nested more than 200 deep here");
          }
          shapes.open(xml);
        }
        case XMLStreamConstants.END_ELEMENT -> {
          depth--;
          shapes.shut();
        }
        case XMLStreamConstants.DTD ->
            throw new Refusal(
                "doctype",
                "this drawing has a DOCTYPE, which could pull in other files; take that line out");
        case XMLStreamConstants.ENTITY_REFERENCE ->
            throw new Refusal("doctype", "this drawing uses an entity; write the text out");
        case XMLStreamConstants.PROCESSING_INSTRUCTION ->
            note(xml.getLocation(), "external", "a reference to another file is left out");
        default -> {
          // text, comments and spaces draw nothing
        }
      }
    }
  }

  private void note(Location at, String kind, String message) {
    if (notes.size() < 20) {
      notes.add(
          Problem.notes(kind, "", "", message)
              .at(new Place(name, at.getLineNumber(), at.getColumnNumber())));
    }
  }

  private Outline.Reading refused(String kind, int line, int column, String message) {
    Place at = new Place(name, Math.max(1, line), Math.max(1, column));
    return new Outline.Reading.Refused(Problem.blocks(kind, "", "", message).at(at));
  }
}
