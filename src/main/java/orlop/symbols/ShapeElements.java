package orlop.symbols;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Map;
import org.apache.batik.parser.AWTPathProducer;
import org.apache.batik.parser.ParseException;
import org.apache.batik.parser.PathParser;

/** Makes the shapes of the SVG elements that draw something. */
final class ShapeElements {
    private ShapeElements() {}

    /**
     * The element's shape on the sheet, every coordinate finite and rounded to a ten-thousandth of a millimetre: Batik's
     * numbers are floats, whose tails would otherwise show in exports.
     */
    static Path2D shape(String element, Map<String, String> attributes, AffineTransform transform, Place place)
            throws SymbolRefusedException {
        Shape shape = switch (element) {
            case "path" -> path(attributes.getOrDefault("d", ""), place);
            case "line" -> line(attributes, place);
            case "polyline" -> poly(attributes, false, place);
            case "polygon" -> poly(attributes, true, place);
            case "rect" -> rectangle(attributes, place);
            case "circle" -> {
                double r = Numbers.size(attributes, "r", place);
                yield ellipse(attributes, r, r, place);
            }
            case "ellipse" ->
                ellipse(
                        attributes,
                        Numbers.size(attributes, "rx", place),
                        Numbers.size(attributes, "ry", place),
                        place);
            default -> throw new AssertionError("allowed, yet not drawn: " + element);
        };
        return rounded(shape.getPathIterator(transform), place);
    }

    private static Shape path(String data, Place place) throws SymbolRefusedException {
        String start = data.stripLeading();
        if (start.isEmpty()) {
            return new Path2D.Double();
        }
        // Batik's parser lets a path begin anywhere, and AWT then throws.
        if (start.charAt(0) != 'M' && start.charAt(0) != 'm') {
            throw place.refuse(Refusal.PATH, data);
        }
        try {
            PathParser parser = new PathParser();
            AWTPathProducer producer = new AWTPathProducer();
            parser.setPathHandler(producer);
            parser.parse(data);
            return producer.getShape();
        } catch (ParseException e) {
            int column = Math.max(0, Math.min(e.getColumnNumber() - 1, data.length()));
            throw place.refuse(Refusal.PATH, data.substring(column));
        }
    }

    private static Shape line(Map<String, String> attributes, Place place) throws SymbolRefusedException {
        return new Line2D.Double(
                Numbers.attribute(attributes, "x1", place),
                Numbers.attribute(attributes, "y1", place),
                Numbers.attribute(attributes, "x2", place),
                Numbers.attribute(attributes, "y2", place));
    }

    private static Shape poly(Map<String, String> attributes, boolean closed, Place place)
            throws SymbolRefusedException {
        double[] points = Numbers.list(attributes.getOrDefault("points", ""), place);
        if (points.length % 2 != 0) {
            throw place.refuse(Refusal.VALUE, "points=" + attributes.get("points"));
        }
        Path2D path = new Path2D.Double();
        for (int i = 0; i < points.length; i += 2) {
            if (i == 0) {
                path.moveTo(points[0], points[1]);
            } else {
                path.lineTo(points[i], points[i + 1]);
            }
        }
        if (closed && points.length > 0) {
            path.closePath();
        }
        return path;
    }

    private static Shape rectangle(Map<String, String> attributes, Place place) throws SymbolRefusedException {
        double rx = Numbers.size(attributes, attributes.containsKey("rx") ? "rx" : "ry", place);
        double ry = Numbers.size(attributes, attributes.containsKey("ry") ? "ry" : "rx", place);
        double x = Numbers.attribute(attributes, "x", place);
        double y = Numbers.attribute(attributes, "y", place);
        double width = Numbers.size(attributes, "width", place);
        double height = Numbers.size(attributes, "height", place);
        if (width == 0 || height == 0) {
            return new Path2D.Double();
        }
        if (rx > 0 && ry > 0) {
            return new RoundRectangle2D.Double(x, y, width, height, 2 * rx, 2 * ry);
        }
        return new Rectangle2D.Double(x, y, width, height);
    }

    private static Shape ellipse(Map<String, String> attributes, double rx, double ry, Place place)
            throws SymbolRefusedException {
        double cx = Numbers.attribute(attributes, "cx", place);
        double cy = Numbers.attribute(attributes, "cy", place);
        return rx == 0 || ry == 0 ? new Path2D.Double() : new Ellipse2D.Double(cx - rx, cy - ry, 2 * rx, 2 * ry);
    }

    private static Path2D rounded(PathIterator from, Place place) throws SymbolRefusedException {
        Path2D.Double path = new Path2D.Double(Path2D.WIND_NON_ZERO);
        double[] at = new double[6];
        for (int count = 1; !from.isDone(); from.next(), count++) {
            if (count > Limits.PATH_SEGMENTS) {
                throw place.refuse(Refusal.PATH_TOO_LONG, Integer.toString(count));
            }
            int type = from.currentSegment(at);
            for (int i = 0; i < coordinates(type); i++) {
                at[i] = Math.round(Numbers.checked(at[i], Double.toString(at[i]), place) * 1e4) / 1e4;
            }
            append(path, type, at);
        }
        return path;
    }

    private static int coordinates(int type) {
        return switch (type) {
            case PathIterator.SEG_MOVETO, PathIterator.SEG_LINETO -> 2;
            case PathIterator.SEG_QUADTO -> 4;
            case PathIterator.SEG_CUBICTO -> 6;
            default -> 0;
        };
    }

    private static void append(Path2D path, int type, double[] at) {
        switch (type) {
            case PathIterator.SEG_MOVETO -> path.moveTo(at[0], at[1]);
            case PathIterator.SEG_LINETO -> path.lineTo(at[0], at[1]);
            case PathIterator.SEG_QUADTO -> path.quadTo(at[0], at[1], at[2], at[3]);
            case PathIterator.SEG_CUBICTO -> path.curveTo(at[0], at[1], at[2], at[3], at[4], at[5]);
            default -> path.closePath();
        }
    }
}
