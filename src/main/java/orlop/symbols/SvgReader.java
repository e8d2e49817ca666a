package orlop.symbols;

import java.io.ByteArrayInputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * The guarded reader of one SVG file. It takes what {@link AllowList} names within {@link Limits}, resolves no reference
 * and opens nothing: time and memory are bounded by the size of the file.
 */
final class SvgReader {
    private static final XMLInputFactory XML = factory();
    /** Rounding of coordinates and flattening of curves. */
    private static final double TOLERANCE_MM = 0.01;

    private record Open(String element, Ink ink, @Nullable String upright) {}

    private final String file;
    private final XMLStreamReader xml;
    private final Deque<Open> open = new ArrayDeque<>();
    private final UprightGroups drawn = new UprightGroups();
    private Bounds viewBox = new Bounds(0, 0, 0, 0);
    private int elements;

    private SvgReader(String file, XMLStreamReader xml) {
        this.file = file;
        this.xml = xml;
    }

    /**
     * Reads a file.
     *
     * @param file its name, for messages
     * @param bytes all of it, at most {@link Limits#SVG_BYTES}
     * @throws SymbolRefusedException if it is not a symbol that this program takes
     */
    static SvgDrawing read(String file, byte[] bytes) throws SymbolRefusedException {
        if (bytes.length > Limits.SVG_BYTES) {
            throw new Place(file, 0).refuse(Refusal.FILE_TOO_BIG, Limits.SVG_BYTES / 1024 + " kB");
        }
        try {
            return new SvgReader(file, open(bytes)).read();
        } catch (XMLStreamException e) {
            int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNumber());
            throw new Place(file, line).refuse(Refusal.NOT_WELL_FORMED, "");
        }
    }

    /** One at a time: the JDK does not promise that a factory may be shared by threads. */
    private static synchronized XMLStreamReader open(byte[] bytes) throws XMLStreamException {
        return XML.createXMLStreamReader(new ByteArrayInputStream(bytes));
    }

    /** The JDK's own parser, whatever else lies on the class path, deaf to document types and the outside. */
    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("nothing outside is read");
        });
        return factory;
    }

    private SvgDrawing read() throws XMLStreamException, SymbolRefusedException {
        while (xml.hasNext()) {
            switch (xml.next()) {
                case XMLStreamConstants.START_ELEMENT -> start();
                case XMLStreamConstants.END_ELEMENT -> open.pop();
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> text();
                case XMLStreamConstants.DTD -> throw place().refuse(Refusal.DOCTYPE, "<!DOCTYPE");
                case XMLStreamConstants.ENTITY_REFERENCE ->
                    throw place().refuse(Refusal.ENTITY, "&" + xml.getLocalName() + ";");
                case XMLStreamConstants.PROCESSING_INSTRUCTION ->
                    throw place().refuse(Refusal.PROCESSING_INSTRUCTION, "<?" + xml.getPITarget());
                default -> {
                    // comments and white space
                }
            }
        }
        return drawing();
    }

    private void start() throws SymbolRefusedException {
        Place place = place();
        if (open.size() >= Limits.DEPTH) {
            throw place.refuse(Refusal.TOO_DEEP, Integer.toString(Limits.DEPTH));
        }
        if (++elements > Limits.ELEMENTS) {
            throw place.refuse(Refusal.TOO_MANY_ELEMENTS, Integer.toString(Limits.ELEMENTS));
        }
        Open parent = open.isEmpty() ? new Open("", Ink.START, null) : open.peek();
        AllowList.checkElement(xml, parent.element(), place);
        Map<String, String> attributes = AllowList.attributes(xml, place);
        Ink ink = parent.ink().of(attributes, place);
        String element = xml.getLocalName();
        String upright = drawn.within(element, attributes, parent.upright(), place);
        open.push(new Open(element, ink, upright));
        if (element.equals("svg")) {
            viewBox = ViewBox.read(attributes, place);
        } else if (!AllowList.GROUPS.contains(element) && !AllowList.WORDS.contains(element)) {
            draw(element, attributes, ink, upright, place);
        }
    }

    private void draw(String element, Map<String, String> attributes, Ink ink, @Nullable String upright, Place place)
            throws SymbolRefusedException {
        var shape = ShapeElements.shape(element, attributes, ink.transform(), place);
        if (shape.getPathIterator(null).isDone()) {
            return;
        }
        if (ink.fill() && !element.equals("line")) {
            drawn.add(new Outline(shape, 0), upright);
        }
        double widthMm = ink.strokeWidthMm();
        if (widthMm > Limits.STROKE_MM) {
            throw place.refuse(Refusal.NUMBER, "stroke-width=" + widthMm);
        }
        if (widthMm > 0) {
            drawn.add(new Outline(shape, widthMm), upright);
        }
    }

    private void text() throws SymbolRefusedException {
        boolean inWords =
                !open.isEmpty() && AllowList.WORDS.contains(open.element().element());
        if (!inWords && !xml.isWhiteSpace()) {
            throw place().refuse(Refusal.TEXT, xml.getText());
        }
    }

    private SvgDrawing drawing() throws SymbolRefusedException {
        Place whole = new Place(file, 0);
        List<Outline> outlines = drawn.outlines();
        if (outlines.isEmpty()) {
            throw whole.refuse(Refusal.EMPTY, "");
        }
        SvgDrawing drawing = new SvgDrawing(outlines, Extent.of(outlines), viewBox);
        if (!viewBox.contains(drawing.ink(), TOLERANCE_MM)) {
            throw whole.refuse(Refusal.OUTSIDE_VIEW_BOX, ViewBox.text(drawing.ink()));
        }
        return drawing;
    }

    private Place place() {
        return new Place(file, Math.max(0, xml.getLocation().getLineNumber()));
    }
}
