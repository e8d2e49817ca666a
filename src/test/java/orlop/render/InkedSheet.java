package orlop.render;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.InputStream;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.apache.batik.parser.AWTPathProducer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import orlop.desk.Same;
import orlop.drawing.Point;
import orlop.layout.TextMeasure;
import orlop.layout.TextMeasure.Weight;

/**
 * The ink of an exported SVG as geometries of JTS, with nothing known of the scene: texts by the outlines of their
 * letters in the font itself, symbols by their paths in the file, lines with their width.
 */
final class InkedSheet {
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final FontRenderContext FRC = new FontRenderContext(null, true, true);
    private static final Map<Weight, Font> FONTS = new HashMap<>();
    private static final Set<String> DRAWN =
            Set.of("component", "bar", "cable", "link", "label", "finding", "proposed", "note");
    private static final Set<String> TAPPED = Set.of("junction", "protective-earth-bar");
    private static final Set<String> PRINTED = Set.of("frame", "title-block", "legend", "caution", "margin");

    enum Sort {
        TEXT,
        SYMBOL,
        LINE,
        DOT
    }

    /** A piece of ink and the group that it belongs to. */
    record Ink(String group, String role, String subject, Sort sort, String what, Geometry shape) {
        boolean is(Sort s) {
            return sort == s;
        }

        @Override
        public String toString() {
            Envelope e = shape.getEnvelopeInternal();
            return group + " " + sort + " '" + what + "' at "
                    + Math.round(e.getMinX() * 10) / 10.0 + "," + Math.round(e.getMinY() * 10) / 10.0 + " to "
                    + Math.round(e.getMaxX() * 10) / 10.0 + "," + Math.round(e.getMaxY() * 10) / 10.0;
        }
    }

    private final List<Ink> inks = new ArrayList<>();
    private final STRtree tree = new STRtree();
    private final Map<String, Rectangle2D> symbols = new HashMap<>();
    private final Map<String, List<List<Coordinate>>> lines = new HashMap<>();
    private final double width;
    private final double height;

    private InkedSheet(Document d) {
        Element root = d.getDocumentElement();
        String[] box = root.getAttribute("viewBox").split(" ", -1);
        width = Double.parseDouble(box[2]);
        height = Double.parseDouble(box[3]);
        for (Element s : DrawnSheet.elements(root, "symbol")) {
            symbols.put("#" + s.getAttribute("id"), bounds(s));
        }
        DrawnSheet.elements(root, "g").forEach(this::group);
        inks.forEach(i -> tree.insert(i.shape.getEnvelopeInternal(), i));
    }

    static InkedSheet read(byte[] svg) throws Exception {
        return new InkedSheet(DrawnSheet.parse(svg));
    }

    /** A line without width. */
    static LineString line(List<Point> points) {
        return JTS.createLineString(
                points.stream().map(p -> new Coordinate(p.xMm(), p.yMm())).toArray(Coordinate[]::new));
    }

    List<Ink> inks(Predicate<Ink> wanted) {
        return inks.stream().filter(wanted).toList();
    }

    /** All texts of the groups of this role and subject, joined by blanks. */
    String text(String role, String subject) {
        StringBuilder s = new StringBuilder();
        for (Ink i : inks) {
            if (i.is(Sort.TEXT) && i.role.equals(role) && i.subject.equals(subject)) {
                s.append(i.what).append(' ');
            }
        }
        return s.toString().strip();
    }

    private static Rectangle2D bounds(Element symbol) {
        Rectangle2D all = null;
        for (Element p : DrawnSheet.elements(symbol, "path")) {
            try {
                Rectangle2D r = AWTPathProducer.createShape(new StringReader(p.getAttribute("d")), 0)
                        .getBounds2D();
                all = all == null ? r : all.createUnion(r);
            } catch (java.io.IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        }
        return Objects.requireNonNull(all);
    }

    private void group(Element g) {
        String id = g.getAttribute("id");
        String role = g.getAttribute("class");
        String subject = g.getAttribute("data-subject");
        for (Element t : DrawnSheet.elements(g, "text")) {
            inks.add(new Ink(id, role, subject, Sort.TEXT, t.getTextContent(), text(t)));
        }
        for (Element u : DrawnSheet.elements(g, "use")) {
            String name = u.getAttribute("xlink:href");
            Rectangle2D r = transform(u.getAttribute("transform"))
                    .createTransformedShape(Objects.requireNonNull(symbols.get(name)))
                    .getBounds2D();
            inks.add(new Ink(id, role, subject, Sort.SYMBOL, name, rect(r)));
        }
        for (Element p : DrawnSheet.elements(g, "polyline")) {
            List<Coordinate> points = points(p);
            Geometry line = BufferOp.bufferOp(
                    JTS.createLineString(points.toArray(Coordinate[]::new)),
                    DrawnSheet.number(p, "stroke-width") / 2,
                    new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 2));
            inks.add(new Ink(id, role, subject, Sort.LINE, "line", line));
            if (role.equals("cable") || role.equals("link")) {
                lines.computeIfAbsent(id, k -> new ArrayList<>()).add(points);
            }
        }
        for (Element p : DrawnSheet.elements(g, "polygon")) {
            List<Coordinate> points = points(p);
            points.add(points.get(0));
            Geometry shape = JTS.createPolygon(points.toArray(Coordinate[]::new));
            boolean outline = role.equals("frame") || role.equals("title-block");
            inks.add(new Ink(
                    id,
                    role,
                    subject,
                    outline ? Sort.LINE : Sort.SYMBOL,
                    "polygon",
                    outline ? shape.getBoundary() : shape));
        }
        for (Element c : DrawnSheet.elements(g, "circle")) {
            Geometry disc = JTS.createPoint(new Coordinate(DrawnSheet.number(c, "cx"), DrawnSheet.number(c, "cy")))
                    .buffer(DrawnSheet.number(c, "r"), 4);
            inks.add(new Ink(id, role, subject, Sort.DOT, "circle", disc));
        }
    }

    private static List<Coordinate> points(Element p) {
        List<Coordinate> all = new ArrayList<>();
        for (String s : p.getAttribute("points").split(" ", -1)) {
            String[] xy = s.split(",", -1);
            all.add(new Coordinate(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])));
        }
        return all;
    }

    private static AffineTransform transform(String t) {
        AffineTransform all = new AffineTransform();
        for (String part : t.split("(?<=\\)) ?", -1)) {
            if (part.isBlank()) {
                continue;
            }
            String[] n =
                    part.substring(part.indexOf('(') + 1, part.indexOf(')')).split(" ", -1);
            double a = Double.parseDouble(n[0]);
            double b = n.length > 1 ? Double.parseDouble(n[1]) : 0;
            if (part.startsWith("translate")) {
                all.translate(a, b);
            } else if (part.startsWith("rotate")) {
                all.rotate(Math.toRadians(a));
            } else if (part.startsWith("scale")) {
                all.scale(a, b);
            } else {
                throw new AssertionError("unknown transform " + part);
            }
        }
        return all;
    }

    /** The box around the letters as the font draws them, stretched to the text length as a viewer does. */
    private static Geometry text(Element t) {
        Weight weight = t.getAttribute("font-weight").equals("bold") ? Weight.BOLD : Weight.REGULAR;
        float size = (float) DrawnSheet.number(t, "font-size");
        Font font = FONTS.computeIfAbsent(weight, InkedSheet::font).deriveFont(100f);
        var glyphs = font.createGlyphVector(FRC, t.getTextContent());
        Rectangle2D ink = glyphs.getVisualBounds();
        double advance = glyphs.getLogicalBounds().getWidth();
        double length = DrawnSheet.number(t, "textLength");
        double sx = length / advance;
        double sy = size / 100;
        double x = DrawnSheet.number(t, "x");
        double y = DrawnSheet.number(t, "y");
        return rect(new Rectangle2D.Double(
                x + ink.getX() * sx, y + ink.getY() * sy, ink.getWidth() * sx, ink.getHeight() * sy));
    }

    private static Font font(Weight weight) {
        try (InputStream in = Objects.requireNonNull(TextMeasure.class.getResourceAsStream(weight.resource()))) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    private static Geometry rect(Rectangle2D r) {
        return JTS.toGeometry(new Envelope(r.getMinX(), r.getMaxX(), r.getMinY(), r.getMaxY()));
    }

    /** Everything that is wrong with the sheet, each said once, sorted. */
    Set<String> faults() {
        Set<String> all = new TreeSet<>();
        textsOnAnything(all);
        linesThroughSymbols(all);
        linesAlongLines(all);
        outsideTheFrame(all);
        return all;
    }

    private List<Ink> near(Geometry g) {
        List<Ink> found = new ArrayList<>();
        for (Object o : tree.query(g.getEnvelopeInternal())) {
            found.add((Ink) o);
        }
        return found;
    }

    @SuppressWarnings("ReferenceEquality") // the very same one is meant
    private void textsOnAnything(Set<String> all) {
        for (Ink t : inks) {
            if (!t.is(Sort.TEXT) || !DRAWN.contains(t.role)) {
                continue;
            }
            for (Ink o : near(t.shape)) {
                boolean ownSymbol = o.group.equals(t.group) && !o.is(Sort.TEXT) && !t.role.equals("cable");
                if (!Same.object(o, t) && DRAWN.contains(o.role) && !ownSymbol && overlap(t.shape, o.shape)) {
                    all.add("text on " + o.sort + ": " + t + " ON " + o);
                }
            }
        }
    }

    private static boolean overlap(Geometry a, Geometry b) {
        return a.intersects(b) && a.intersection(b).getArea() > 1e-6;
    }

    /** A line may touch its own symbols at their edge; bars, the dot of a junction and an earth bar it taps. */
    private void linesThroughSymbols(Set<String> all) {
        for (Ink l : inks) {
            if (!l.is(Sort.LINE) || !(l.role.equals("cable") || l.role.equals("link"))) {
                continue;
            }
            for (Ink o : near(l.shape)) {
                boolean body = (o.is(Sort.SYMBOL) || (o.role.equals("bar") && o.is(Sort.LINE)))
                        && (o.role.equals("component") || o.role.equals("bar"));
                if (body && !ends(l, o.subject) && overlap(l.shape, o.shape)) {
                    all.add("line through symbol: " + l + " THROUGH " + o);
                } else if (body
                        && o.role.equals("component")
                        && !TAPPED.contains(o.what.replaceFirst("#symbol[0-9]*m?-", ""))) {
                    Envelope e = new Envelope(o.shape.getEnvelopeInternal());
                    e.expandBy(-0.4);
                    if (!e.isNull() && overlap(l.shape, JTS.toGeometry(e))) {
                        all.add("line through its own symbol: " + l + " THROUGH " + o);
                    }
                }
            }
        }
    }

    private boolean ends(Ink line, String component) {
        String ends = this.ends.getOrDefault(line.group, "");
        return ends.contains(" " + component + ".");
    }

    private final Map<String, String> ends = new HashMap<>();

    /** Tells which terminals a group's line joins, for links, whose groups don't say it. */
    void ends(String group, String from, String to) {
        ends.put(group, " " + from + " " + to + " ");
    }

    /** What slants is a stroke that tells conductors, set across its own cable; no cable slants. */
    private static final double LONGEST_STROKE_MM = 3.5;

    /** Two lines of the drawing that run on one another or nearer than a lane apart. */
    private void linesAlongLines(Set<String> all) {
        STRtree legs = new STRtree();
        record Leg(String group, LineString line) {}
        List<Leg> list = new ArrayList<>();
        lines.forEach((group, pieces) -> {
            for (List<Coordinate> piece : pieces) {
                for (int i = 1; i < piece.size(); i++) {
                    LineString s = JTS.createLineString(new Coordinate[] {piece.get(i - 1), piece.get(i)});
                    Envelope e = s.getEnvelopeInternal();
                    if (e.getWidth() < 1e-6 || e.getHeight() < 1e-6) {
                        list.add(new Leg(group, s));
                    } else if (s.getLength() > LONGEST_STROKE_MM) {
                        all.add("crooked line: " + group + " " + s);
                    }
                }
            }
        });
        list.forEach(l -> legs.insert(l.line.getEnvelopeInternal(), l));
        for (Leg a : list) {
            Envelope wide = new Envelope(a.line.getEnvelopeInternal());
            boolean lying = wide.getHeight() < wide.getWidth();
            wide.expandBy(lying ? 0 : 2.5 - 1e-3, lying ? 2.5 - 1e-3 : 0);
            for (Object o : legs.query(wide)) {
                Leg b = (Leg) o;
                Envelope e = b.line.getEnvelopeInternal();
                boolean along = lying ? e.getHeight() < 1e-9 : e.getWidth() < 1e-9;
                Envelope common = wide.intersection(e);
                double shared = lying ? common.getWidth() : common.getHeight();
                double apart = lying
                        ? Math.abs(e.getMinY() - a.line.getCoordinateN(0).y)
                        : Math.abs(e.getMinX() - a.line.getCoordinateN(0).x);
                if (a.group.compareTo(b.group) < 0 && along && shared > 1e-6) {
                    String how = apart < 1e-6 ? "on one another" : "only " + Math.round(apart * 100) / 100.0 + " apart";
                    all.add("lines " + how + ": " + a.group + " and " + b.group + " " + a.line + " " + b.line);
                }
            }
        }
    }

    /** Drawn ink must lie within the frame and off title block, legend, cautions and margin. */
    private void outsideTheFrame(Set<String> all) {
        Envelope frame = new Envelope();
        inks(i -> i.role.equals("frame") && i.what.equals("polygon")).stream()
                .map(i -> i.shape.getEnvelopeInternal())
                .filter(e -> e.getWidth() > 0.5 * width) // the marks by which the paper is trimmed lie outside it
                .forEach(frame::expandToInclude);
        Envelope block = new Envelope();
        inks(i -> i.role.equals("title-block")).forEach(i -> block.expandToInclude(i.shape.getEnvelopeInternal()));
        double foot = block.getMinY();
        double margin = inks(i -> i.role.equals("margin")).stream()
                .mapToDouble(i -> i.shape.getEnvelopeInternal().getMinX())
                .min()
                .orElse(frame.getMaxX());
        Envelope room = new Envelope(frame.getMinX(), margin, frame.getMinY(), foot);
        if (!(room.getWidth() > 0.5 * width && room.getHeight() > 0.5 * height)) {
            throw new AssertionError("the frame was not found: " + room);
        }
        for (Ink i : inks) {
            if (DRAWN.contains(i.role) && !room.contains(i.shape.getEnvelopeInternal())) {
                all.add("outside the frame: " + i);
            }
            if (!DRAWN.contains(i.role) && !PRINTED.contains(i.role)) {
                all.add("of no known role: " + i);
            }
        }
    }
}
