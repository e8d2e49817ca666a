package orlop.render;

import static orlop.render.SvgNumbers.number;

import java.io.ByteArrayOutputStream;
import java.util.Map;
import java.util.NavigableSet;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.dom.GenericDOMImplementation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import orlop.layout.TextMeasure;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.Palette;
import orlop.scene.Role;
import orlop.scene.Scene;
import orlop.scene.SceneItem;
import orlop.symbols.SymbolLibrary;

/** Sheets as SVG 1.1: true to size, one file, its font inside. */
public final class SvgExport {
    private SvgExport() {}

    /** The whole sheet with the program's own symbols, as a UTF-8 file without a document type. */
    public static byte[] write(Scene scene, Palette palette) {
        return write(scene, palette, SymbolLibrary.bundled());
    }

    /** The whole sheet with these symbols; see {@link #write(Scene, Palette)}. */
    public static byte[] write(Scene scene, Palette palette, SymbolLibrary library) {
        return write(scene, palette, library, true);
    }

    /** @param font whether the font is put in: its letters are the same without, where it is installed */
    static byte[] write(Scene scene, Palette palette, SymbolLibrary library, boolean font) {
        Document document = GenericDOMImplementation.getDOMImplementation().createDocument(SvgSurface.SVG, "svg", null);
        Element root = document.getDocumentElement();
        root.setAttributeNS(null, "width", number(scene.widthMm()) + "mm");
        root.setAttributeNS(null, "height", number(scene.heightMm()) + "mm");
        root.setAttributeNS(null, "viewBox", "0 0 " + number(scene.widthMm()) + " " + number(scene.heightMm()));
        root.setAttributeNS(null, "font-family", SvgSurface.family());
        root.setAttributeNS("http://www.w3.org/2000/xmlns/", "xmlns:xlink", "http://www.w3.org/1999/xlink");
        child(root, "title", scene.title());
        child(root, "desc", cautions(scene));
        Element definitions = child(root, "defs", "");
        Painter painter = new Painter(palette, library);
        paper(root, scene, painter.paperRgb());
        SvgSurface surface = new SvgSurface(document, root, definitions);
        painter.paint(scene, surface);
        if (font) {
            definitions.insertBefore(style(document, surface.characters()), definitions.getFirstChild());
        }
        return bytes(document);
    }

    private static String cautions(Scene scene) {
        return String.join(
                " ",
                scene.items().stream()
                        .filter(i -> i.role() == Role.CAUTION)
                        .map(SceneItem::title)
                        .toList());
    }

    private static void paper(Element root, Scene scene, int rgb) {
        Element paper = child(root, "rect", "");
        paper.setAttributeNS(null, "width", number(scene.widthMm()));
        paper.setAttributeNS(null, "height", number(scene.heightMm()));
        paper.setAttributeNS(null, "fill", SvgNumbers.colour(rgb));
    }

    private static Element child(Element parent, String name, String text) {
        Document document = parent.getOwnerDocument();
        parent.appendChild(document.createTextNode("\n"));
        Element e = document.createElementNS(SvgSurface.SVG, name);
        if (!text.isEmpty()) {
            e.appendChild(document.createTextNode(text));
        }
        parent.appendChild(e);
        return e;
    }

    private static Element style(Document document, Map<Weight, NavigableSet<Integer>> characters) {
        StringBuilder css = new StringBuilder();
        characters.forEach((weight, set) -> css.append("@font-face{font-family:'")
                .append(TextMeasure.FAMILY)
                .append("';font-weight:")
                .append(weight == Weight.BOLD ? "bold" : "normal")
                .append(";src:url(data:font/ttf;base64,")
                .append(FontSubset.base64(weight, set))
                .append(") format('truetype')}\n"));
        Element style = document.createElementNS(SvgSurface.SVG, "style");
        style.setAttributeNS(null, "type", "text/css");
        style.appendChild(document.createTextNode(css.toString()));
        return style;
    }

    private static byte[] bytes(Document document) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            // The Java platform's own: a library on the class path must not write our files.
            Transformer t = TransformerFactory.newDefaultInstance().newTransformer();
            t.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
            t.setOutputProperty(OutputKeys.INDENT, "no");
            t.setOutputProperty(OutputKeys.STANDALONE, "yes");
            t.transform(new DOMSource(document), new StreamResult(out));
        } catch (TransformerException e) {
            throw new IllegalStateException("an SVG document cannot be written", e);
        }
        return out.toByteArray();
    }
}
