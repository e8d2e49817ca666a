package orlop.scene;

import orlop.drawing.ElectricalSystem;
import orlop.drawing.Unit;
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

    /** {@code 24 V DC}, {@code 400 V 3~ 50 Hz}. */
    static String nature(ElectricalSystem s) {
        String kind = switch (s.nature()) {
            case DC -> "DC";
            case PV -> "PV DC";
            case AC1 -> "AC";
            case AC3 -> "3~";
            case AC3N -> "3N~";
        };
        String hz = s.nature().isDc() || s.frequencyHz() == 0 ? "" : " " + Format.q(s.frequencyHz(), Unit.HERTZ);
        return Format.q(s.nominalV(), Unit.VOLT) + " " + kind + hz;
    }

    /** The name with its middle at a point of the line. */
    static Mark text(String name, double x, double y, Ink ink) {
        return new Mark.Text(
                x, y + height() / 2, Mark.Anchor.MIDDLE, TextBlock.SIZE_MM, Weight.BOLD, ink, name, width(name));
    }
}
