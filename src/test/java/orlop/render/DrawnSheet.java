package orlop.render;

import java.awt.geom.Line2D;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import orlop.layout.Rect;
import orlop.symbols.Bounds;
import orlop.symbols.SymbolLibrary;
import orlop.symbols.Turn;

/** An exported SVG read back as a stranger would: boxes of texts, symbols and lines, with nothing known of the scene. */
final class DrawnSheet {
    /** A box and the group that it belongs to. */
    record Box(
            String group,
            String role,
            String what,
            Rect rect,
            @Nullable Line2D oblique) {
        Box(String group, String role, String what, Rect rect) {
            this(group, role, what, rect, null);
        }

        boolean meets(Box b) {
            if (!rect.overlaps(b.rect)) {
                return false;
            }
            Line2D l = b.oblique;
            return l == null || l.intersects(rect.minX(), rect.minY(), rect.width(), rect.height());
        }
    }

    /** A definition: how it is turned already, and its name. */
    private static final Pattern SYMBOL = Pattern.compile("#symbol(\\d*)(m?)-(.*)");

    final Document document;
    final List<Box> texts = new ArrayList<>();
    final List<Box> symbols = new ArrayList<>();
    final List<Box> lines = new ArrayList<>();

    private DrawnSheet(Document document) {
        this.document = document;
    }

    static Document parse(byte[] svg) throws Exception {
        DocumentBuilderFactory f = DocumentBuilderFactory.newDefaultInstance();
        f.setNamespaceAware(true);
        f.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return f.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
    }

    static DrawnSheet read(byte[] svg) throws Exception {
        DrawnSheet d = new DrawnSheet(parse(svg));
        for (Element g : elements(d.document.getDocumentElement(), "g")) {
            d.group(g);
        }
        return d;
    }

    static List<Element> elements(Element parent, String name) {
        List<Element> all = new ArrayList<>();
        NodeList list = parent.getElementsByTagNameNS("http://www.w3.org/2000/svg", name);
        for (int i = 0; i < list.getLength(); i++) {
            all.add((Element) list.item(i));
        }
        return all;
    }

    private void group(Element g) {
        String id = g.getAttribute("id");
        String role = g.getAttribute("class");
        for (Element t : elements(g, "text")) {
            double x = number(t, "x");
            double y = number(t, "y");
            double size = number(t, "font-size");
            Rect r = new Rect(x, y - 0.76 * size, x + number(t, "textLength"), y + 0.2 * size);
            texts.add(new Box(id, role, t.getTextContent(), r));
        }
        for (Element u : elements(g, "use")) {
            symbols.add(new Box(id, role, u.getAttribute("xlink:href"), symbol(u)));
        }
        for (Element p : elements(g, "polyline")) {
            lines(id, role, p, number(p, "stroke-width"));
        }
        for (Element p : elements(g, "polygon")) {
            if (role.equals("bar") || role.equals("finding")) {
                symbols.add(new Box(
                        id,
                        role,
                        "polygon",
                        points(p).stream().reduce(Rect::union).orElseThrow()));
            }
        }
        for (Element c : elements(g, "circle")) {
            double r = number(c, "r");
            Rect box = Rect.of(number(c, "cx"), number(c, "cy"), 0, 0).grown(r);
            symbols.add(new Box(id, role, "circle", box));
        }
    }

    private void lines(String id, String role, Element p, double width) {
        List<Rect> points = points(p);
        for (int i = 1; i < points.size(); i++) {
            Rect r = points.get(i - 1).union(points.get(i));
            boolean oblique = r.width() > 0 && r.height() > 0;
            Rect a = points.get(i - 1);
            Rect b = points.get(i);
            Line2D line = oblique ? new Line2D.Double(a.minX(), a.minY(), b.minX(), b.minY()) : null;
            lines.add(new Box(id, role, p.getAttribute("points"), r.grown(width / 2), line));
        }
    }

    private static List<Rect> points(Element p) {
        List<Rect> all = new ArrayList<>();
        for (String s : p.getAttribute("points").split(" ", -1)) {
            String[] xy = s.split(",", -1);
            all.add(Rect.of(Double.parseDouble(xy[0]), Double.parseDouble(xy[1]), 0, 0));
        }
        return all;
    }

    private static Rect symbol(Element use) {
        Matcher m = SYMBOL.matcher(use.getAttribute("xlink:href"));
        if (!m.matches()) {
            throw new AssertionError(use.getAttribute("xlink:href"));
        }
        Turn inside = new Turn(
                m.group(1).isEmpty() ? 0 : Integer.parseInt(m.group(1)),
                !m.group(2).isEmpty());
        Bounds b = SymbolLibrary.bundled().named(m.group(3)).orElseThrow().bounds(inside);
        Rect r = new Rect(b.minXMm(), b.minYMm(), b.maxXMm(), b.maxYMm());
        String t = use.getAttribute("transform");
        if (t.contains("scale(-1 1)")) {
            r = new Rect(-r.maxX(), r.minY(), -r.minX(), r.maxY());
        }
        if (t.contains("rotate(90)")) {
            r = new Rect(-r.maxY(), r.minX(), -r.minY(), r.maxX());
        } else if (t.contains("rotate(180)")) {
            r = new Rect(-r.maxX(), -r.maxY(), -r.minX(), -r.minY());
        } else if (t.contains("rotate(270)")) {
            r = new Rect(r.minY(), -r.maxX(), r.maxY(), -r.minX());
        }
        String[] move = t.substring(t.indexOf('(') + 1, t.indexOf(')')).split(" ", -1);
        return r.moved(Double.parseDouble(move[0]), Double.parseDouble(move[1]));
    }

    static double number(Element e, String attribute) {
        return Double.parseDouble(e.getAttribute(attribute));
    }

    /** Texts that lie on a text of another group, on a symbol that is not theirs, or on a line. */
    List<String> overlaps() {
        List<String> found = new ArrayList<>();
        List<Box> drawn = texts.stream().filter(t -> ofTheDrawing(t.role)).toList();
        for (int i = 0; i < drawn.size(); i++) {
            Box t = drawn.get(i);
            for (Box o : drawn.subList(i + 1, drawn.size())) {
                meet(found, t, o);
            }
            symbols.stream().filter(s -> !s.role.equals("legend")).forEach(s -> meet(found, t, s));
            lines.stream().filter(l -> ofTheDrawing(l.role)).forEach(l -> meet(found, t, l));
        }
        return found;
    }

    private static boolean ofTheDrawing(String role) {
        return List.of("component", "bar", "cable", "link", "label", "finding", "proposed", "note")
                .contains(role);
    }

    private static void meet(List<String> found, Box a, Box b) {
        if (!a.group.equals(b.group) && a.meets(b)) {
            found.add(a.group + " '" + a.what + "' on " + b.group + " '" + b.what + "'");
        }
    }
}
