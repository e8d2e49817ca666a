package orlop.symbols;

import java.awt.geom.AffineTransform;
import java.util.Map;
import org.apache.batik.parser.AWTTransformProducer;
import org.apache.batik.parser.ParseException;
import org.apache.batik.parser.TransformListParser;
import org.jspecify.annotations.Nullable;

/**
 * How the shapes of an element are inked; children inherit it.
 *
 * @param fill whether areas are filled
 * @param stroke whether lines are drawn
 * @param strokeWidth before the transform, in the file's units
 * @param transform from the element to the symbol's origin; never changed
 */
record Ink(boolean fill, boolean stroke, double strokeWidth, AffineTransform transform) {
    /** What SVG starts from: filled, not stroked, lines 1 wide. */
    static final Ink START = new Ink(true, false, 1, new AffineTransform());

    Ink of(Map<String, String> attributes, Place place) throws SymbolRefusedException {
        String width = attributes.get("stroke-width");
        return new Ink(
                paints(attributes, "fill", fill, place),
                paints(attributes, "stroke", stroke, place),
                width == null ? strokeWidth : Numbers.size(attributes, "stroke-width", place),
                moved(attributes.get("transform"), place));
    }

    /** Width of a line on the sheet; 0 when none is drawn. */
    double strokeWidthMm() {
        return stroke ? strokeWidth * Math.sqrt(Math.abs(transform.getDeterminant())) : 0;
    }

    /** A symbol has one ink, whose colour the sheet chooses: black stands for it, and nothing else does. */
    private static boolean paints(Map<String, String> attributes, String name, boolean inherited, Place place)
            throws SymbolRefusedException {
        String value = attributes.get(name);
        if (value == null) {
            return inherited;
        }
        return switch (value) {
            case "none" -> false;
            case "currentColor", "black", "#000", "#000000" -> true;
            default -> throw place.refuse(Refusal.VALUE, name + "=" + value);
        };
    }

    private AffineTransform moved(@Nullable String text, Place place) throws SymbolRefusedException {
        if (text == null) {
            return transform;
        }
        AffineTransform result = new AffineTransform(transform);
        try {
            TransformListParser parser = new TransformListParser();
            AWTTransformProducer producer = new AWTTransformProducer();
            parser.setTransformListHandler(producer);
            parser.parse(text);
            result.concatenate(producer.getAffineTransform());
        } catch (ParseException e) {
            throw place.refuse(Refusal.VALUE, "transform=" + text);
        }
        double scale = result.getDeterminant();
        if (!Double.isFinite(scale) || Math.abs(scale) < 1e-9) {
            throw place.refuse(Refusal.VALUE, "transform=" + text);
        }
        return result;
    }
}
