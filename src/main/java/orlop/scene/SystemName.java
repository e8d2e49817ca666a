package orlop.scene;

import orlop.layout.TextMeasure;
import orlop.layout.TextMeasure.Weight;

/** The name of a system, set in a cable's line. */
final class SystemName {
    private SystemName() {}

    static double width(String name) {
        return TextMeasure.bundled().widthMm(name, TextBlock.SIZE_MM, Weight.BOLD);
    }

    static double height() {
        return TextBlock.SIZE_MM * TextMeasure.bundled().capHeightEm(Weight.BOLD);
    }

    /** The name with its middle at a point of the line. */
    static Mark text(String name, double x, double y, Ink ink) {
        return new Mark.Text(
                x, y + height() / 2, Mark.Anchor.MIDDLE, TextBlock.SIZE_MM, Weight.BOLD, ink, name, width(name));
    }
}
