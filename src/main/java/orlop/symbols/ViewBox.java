package orlop.symbols;

import java.util.Map;

/** The root's view box. One unit is one millimetre; its point 0 0 is the symbol's origin. */
final class ViewBox {
    private ViewBox() {}

    static Bounds read(Map<String, String> attributes, Place place) throws SymbolRefusedException {
        String text = attributes.get("viewBox");
        if (text == null) {
            throw place.refuse(Refusal.NO_VIEW_BOX, "");
        }
        double[] box = Numbers.list(text, place);
        if (box.length != 4 || !isSize(box[2]) || !isSize(box[3])) {
            throw place.refuse(Refusal.VALUE, "viewBox=" + text);
        }
        checkScale(attributes, "width", box[2], place);
        checkScale(attributes, "height", box[3], place);
        return new Bounds(box[0], box[1], box[0] + box[2], box[1] + box[3]);
    }

    private static boolean isSize(double value) {
        return value > 0 && value <= Limits.VIEW_BOX_MM;
    }

    private static void checkScale(Map<String, String> attributes, String name, double unitsMm, Place place)
            throws SymbolRefusedException {
        String text = attributes.get(name);
        if (text == null) {
            return;
        }
        boolean inMm = text.endsWith("mm");
        double lengthMm = inMm ? Numbers.number(text.substring(0, text.length() - 2), place) : Double.NaN;
        if (!inMm || Math.abs(lengthMm - unitsMm) > 1e-3) {
            throw place.refuse(Refusal.SCALE, name + "=" + text);
        }
    }

    /** A rectangle as a view box, for messages. */
    static String text(Bounds bounds) {
        return decimal(bounds.minXMm()) + " " + decimal(bounds.minYMm()) + " " + decimal(bounds.widthMm()) + " "
                + decimal(bounds.heightMm());
    }

    private static String decimal(double value) {
        return Double.toString(Math.round(value * 100) / 100.0);
    }
}
