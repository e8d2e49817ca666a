package orlop.render;

import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.UserAgentAdapter;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import orlop.symbols.Turn;

/**
 * The same sheet put together from the files themselves by SVG's own transforms, with nothing of our reader: Batik tells
 * where the middle of a sign is and shows the whole.
 */
final class SymbolFiles {
    private final Path folder;
    private final Document sheet;

    private SymbolFiles(Path folder, Document sheet) {
        this.folder = folder;
        this.sheet = sheet;
    }

    /** An SVG file that shows the sheet's symbols in this colour. */
    static byte[] sheet(TurnedSheet turned, Path folder, int rgb) throws Exception {
        Document document =
                DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().newDocument();
        SymbolFiles files = new SymbolFiles(folder, document);
        Element root = document.createElementNS(SvgSurface.SVG, "svg");
        document.appendChild(root);
        root.setAttribute("viewBox", "0 0 " + turned.widthMm() + " " + turned.heightMm());
        root.setAttribute("width", turned.widthMm() + "mm");
        root.setAttribute("height", turned.heightMm() + "mm");
        root.setAttribute("color", String.format(Locale.ROOT, "#%06x", rgb));
        List<String> names = turned.names();
        for (int row = 0; row < names.size(); row++) {
            files.row(root, turned, row, names.get(row));
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        TransformerFactory.newDefaultInstance()
                .newTransformer()
                .transform(new DOMSource(document), new StreamResult(out));
        return out.toByteArray();
    }

    private void row(Element root, TurnedSheet turned, int row, String name) throws Exception {
        byte[] file = Files.readAllBytes(folder.resolve(name + ".svg"));
        Element symbol = DrawnSheet.parse(file).getDocumentElement();
        Map<String, double[]> middles = middles(file);
        for (int column = 0; column < TurnedSheet.turns().size(); column++) {
            Element at = group(root, "translate(" + turned.xMm(column) + " " + turned.yMm(row) + ")");
            for (String pen : List.of("fill", "stroke", "stroke-width")) {
                at.setAttribute(pen, symbol.getAttribute(pen));
            }
            Turn turn = TurnedSheet.turns().get(column);
            for (Node n = symbol.getFirstChild(); n != null; n = n.getNextSibling()) {
                if (n instanceof Element part) {
                    double[] middle = middles.get(part.getAttribute("id"));
                    String how = "rotate(" + turn.rotationDegree() + ")" + (turn.mirrored() ? " scale(-1 1)" : "");
                    group(at, middle == null ? how : moved(middle, turn)).appendChild(sheet.importNode(part, true));
                }
            }
        }
    }

    /** The middle is mirrored and turned clockwise (y points downwards), the sign moved with it. */
    private static String moved(double[] middle, Turn turn) {
        double cos = Math.cos(Math.toRadians(turn.rotationDegree()));
        double sin = Math.sin(Math.toRadians(turn.rotationDegree()));
        double x = turn.mirrored() ? -middle[0] : middle[0];
        double right = x * cos - middle[1] * sin - middle[0];
        double down = x * sin + middle[1] * cos - middle[1];
        return String.format(Locale.ROOT, "translate(%.6f %.6f)", right, down);
    }

    private Element group(Element parent, String transform) {
        Element g = sheet.createElementNS(SvgSurface.SVG, "g");
        g.setAttribute("transform", transform);
        parent.appendChild(g);
        return g;
    }

    /** Of each group whose id begins with "upright", where Batik has its middle. */
    private static Map<String, double[]> middles(byte[] file) throws Exception {
        Document document =
                new SAXSVGDocumentFactory(null).createDocument("file:symbol.svg", new ByteArrayInputStream(file));
        BridgeContext context = new BridgeContext(new UserAgentAdapter());
        context.setDynamicState(BridgeContext.DYNAMIC);
        new GVTBuilder().build(context, document);
        Map<String, double[]> middles = new HashMap<>();
        for (Element g : DrawnSheet.elements(document.getDocumentElement(), "g")) {
            if (g.getAttribute("id").startsWith("upright")) {
                Path2D flat = new Path2D.Double();
                flat.append(
                        new FlatteningPathIterator(
                                context.getGraphicsNode(g).getOutline().getPathIterator(null), 0.001),
                        false);
                Rectangle2D box = flat.getBounds2D();
                middles.put(g.getAttribute("id"), new double[] {box.getCenterX(), box.getCenterY()});
            }
        }
        context.dispose();
        return middles;
    }
}
