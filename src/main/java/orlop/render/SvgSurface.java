package orlop.render;

import static orlop.render.SvgNumbers.colour;
import static orlop.render.SvgNumbers.number;
import static orlop.render.SvgNumbers.path;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import orlop.drawing.Point;
import orlop.layout.TextMeasure;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.Mark;
import orlop.scene.SceneItem;
import orlop.symbols.Outline;
import orlop.symbols.Symbol;
import orlop.symbols.Turn;

/**
 * Paints into an SVG document: a group for each item, with its id, its words as {@code <title>} and its values as
 * {@code data-} attributes; each symbol defined once, or once for each way in which it stands if it has letters
 * that stay upright.
 */
final class SvgSurface implements Surface {
    static final String SVG = "http://www.w3.org/2000/svg";
    private static final String XLINK = "http://www.w3.org/1999/xlink";

    private final Document document;
    private final Element root;
    private final Element definitions;
    private final Set<String> symbols = new LinkedHashSet<>();
    private final Map<Weight, NavigableSet<Integer>> characters = new EnumMap<>(Weight.class);
    private Element group;

    SvgSurface(Document document, Element root, Element definitions) {
        this.document = document;
        this.root = root;
        this.definitions = definitions;
        this.group = root;
    }

    /** The characters that were set, by weight. */
    Map<Weight, NavigableSet<Integer>> characters() {
        return characters;
    }

    @Override
    public void beginItem(SceneItem item) {
        root.appendChild(document.createTextNode("\n"));
        group = element(root, "g");
        group.setAttributeNS(null, "id", item.id());
        group.setAttributeNS(null, "class", item.role().word());
        if (!item.subject().isEmpty()) {
            group.setAttributeNS(null, "data-subject", item.subject());
        }
        item.data().forEach((k, v) -> group.setAttributeNS(null, "data-" + k, v));
        element(group, "title").appendChild(document.createTextNode(item.title()));
    }

    @Override
    public void endItem() {
        group = root;
    }

    @Override
    public void line(List<Point> points, double widthMm, Mark.Dash dash, boolean roundEnds, int rgb) {
        Element e = element(group, "polyline");
        e.setAttributeNS(null, "points", points(points));
        e.setAttributeNS(null, "fill", "none");
        stroke(e, rgb, widthMm, dash);
        if (roundEnds) {
            e.setAttributeNS(null, "stroke-linecap", "round");
        }
    }

    @Override
    public void area(List<Point> points, int fillRgb, int strokeRgb, double widthMm, Mark.Dash dash) {
        Element e = element(group, "polygon");
        e.setAttributeNS(null, "points", points(points));
        fill(e, fillRgb);
        if (strokeRgb != NONE) {
            stroke(e, strokeRgb, widthMm, dash);
        }
    }

    @Override
    public void disc(double xMm, double yMm, double radiusMm, int fillRgb, int strokeRgb, double widthMm) {
        Element e = element(group, "circle");
        e.setAttributeNS(null, "cx", number(xMm));
        e.setAttributeNS(null, "cy", number(yMm));
        e.setAttributeNS(null, "r", number(radiusMm));
        fill(e, fillRgb);
        if (strokeRgb != NONE) {
            stroke(e, strokeRgb, widthMm, Mark.Dash.SOLID);
        }
    }

    @Override
    public void symbol(
            Symbol symbol, double xMm, double yMm, int rotationDegree, boolean mirrored, double scale, int rgb) {
        // One with letters that stay upright is turned in its definition, so that nothing is left to turn where it is
        // used.
        Turn turn = new Turn(rotationDegree, mirrored);
        Turn defined = symbol.hasUprights() ? turn : Turn.NONE;
        Turn used = symbol.hasUprights() ? Turn.NONE : turn;
        String id = id(symbol, defined);
        if (symbols.add(id)) {
            define(symbol, id, defined);
        }
        Element use = element(group, "use");
        use.setAttributeNS(XLINK, "xlink:href", "#" + id);
        StringBuilder t = new StringBuilder("translate(" + number(xMm) + " " + number(yMm) + ")");
        if (scale != 1) {
            t.append(" scale(").append(number(scale)).append(")");
        }
        if (used.rotationDegree() != 0) {
            t.append(" rotate(").append(used.rotationDegree()).append(")");
        }
        if (used.mirrored()) {
            t.append(" scale(-1 1)");
        }
        use.setAttributeNS(null, "transform", t.toString());
        use.setAttributeNS(null, "color", colour(rgb));
    }

    /** The turn stands before the dash, where no name of a symbol can look like it. */
    private static String id(Symbol symbol, Turn turn) {
        String how = turn.equals(Turn.NONE) ? "" : turn.rotationDegree() + (turn.mirrored() ? "m" : "");
        return "symbol" + how + "-" + symbol.name();
    }

    private void define(Symbol symbol, String id, Turn turn) {
        definitions.appendChild(document.createTextNode("\n"));
        Element s = element(definitions, "symbol");
        s.setAttributeNS(null, "id", id);
        s.setAttributeNS(null, "overflow", "visible");
        for (Outline o : symbol.outlines()) {
            Element p = element(s, "path");
            p.setAttributeNS(
                    null,
                    "d",
                    path(turn.equals(Turn.NONE) ? o.shape() : o.transform(turn).createTransformedShape(o.shape())));
            if (o.filled()) {
                p.setAttributeNS(null, "fill", "currentColor");
            } else {
                p.setAttributeNS(null, "fill", "none");
                p.setAttributeNS(null, "stroke", "currentColor");
                p.setAttributeNS(null, "stroke-width", number(o.strokeWidthMm()));
            }
        }
    }

    @Override
    public void text(double leftMm, double yMm, double sizeMm, Weight weight, int rgb, String text, double widthMm) {
        Element e = element(group, "text");
        e.setAttributeNS(null, "x", number(leftMm));
        e.setAttributeNS(null, "y", number(yMm));
        e.setAttributeNS(null, "font-size", number(sizeMm));
        if (weight == Weight.BOLD) {
            e.setAttributeNS(null, "font-weight", "bold");
        }
        e.setAttributeNS(null, "fill", colour(rgb));
        e.setAttributeNS(null, "textLength", number(widthMm));
        e.setAttributeNS(null, "lengthAdjust", "spacingAndGlyphs");
        e.appendChild(document.createTextNode(text));
        NavigableSet<Integer> set = characters.computeIfAbsent(weight, w -> new TreeSet<>());
        text.codePoints().forEach(set::add);
    }

    /** The font that all texts name: the bundled one, and what to take where it is not at hand. */
    static String family() {
        return "'" + TextMeasure.FAMILY + "', 'DejaVu Sans', sans-serif";
    }

    private Element element(Element parent, String name) {
        Element e = document.createElementNS(SVG, name);
        parent.appendChild(e);
        return e;
    }

    private static void fill(Element e, int rgb) {
        e.setAttributeNS(null, "fill", rgb == NONE ? "none" : colour(rgb));
    }

    private static void stroke(Element e, int rgb, double widthMm, Mark.Dash dash) {
        e.setAttributeNS(null, "stroke", colour(rgb));
        e.setAttributeNS(null, "stroke-width", number(widthMm));
        if (dash == Mark.Dash.DASHED) {
            e.setAttributeNS(null, "stroke-dasharray", "1.2 0.8");
        }
    }

    private static String points(List<Point> points) {
        StringBuilder s = new StringBuilder();
        for (Point p : points) {
            s.append(s.length() == 0 ? "" : " ")
                    .append(number(p.xMm()))
                    .append(',')
                    .append(number(p.yMm()));
        }
        return s.toString();
    }
}
