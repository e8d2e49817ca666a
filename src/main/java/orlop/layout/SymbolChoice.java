package orlop.layout;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.Drawing;
import orlop.drawing.Earth;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Particulars;
import orlop.drawing.Position;
import orlop.drawing.Protection;
import orlop.drawing.Switching;

/** Which form of its kind's symbol a component is drawn with, and in which state. */
final class SymbolChoice {
    private SymbolChoice() {}

    /** The form: by the nature of its system, or by what it is; "" for the plain one. */
    static String variant(Drawing drawing, Component c) {
        Particulars p = c.particulars();
        if (c.kind() == Kind.GENERATOR || c.kind() == Kind.MOTOR) {
            ElectricalSystem s = drawing.systems().get(c.systems().get(0));
            return s == null
                    ? Nature.DC.word()
                    : s.nature() == Nature.PV ? Nature.DC.word() : s.nature().word();
        }
        if (p instanceof Conversion.Transformer t) {
            return t.separate() ? "" : "auto";
        }
        if (p instanceof Protection.ResidualCurrentDevice r) {
            return r.overcurrent() ? "overload" : "";
        }
        if (p instanceof Switching.DiodeIsolator d) {
            return d.outputs() >= 3 ? "three" : "";
        }
        return p instanceof Earth.Meter m ? meter(m) : "";
    }

    private static String meter(Earth.Meter m) {
        return switch (m.quantity().toUpperCase(Locale.ROOT)) {
            case "A" -> "current";
            case "W" -> "power";
            case "WH" -> "energy";
            default -> "";
        };
    }

    /** The state in the condition, or as drawn: {@code open}, {@code closed}, the number of a way, "" without one. */
    static String state(Component c, @Nullable OperatingCondition condition) {
        String set = condition == null ? null : condition.switches().get(c.id());
        if (set != null) {
            return set;
        }
        Particulars p = c.particulars();
        if (p instanceof Switching.Changeover s) {
            return Integer.toString(s.position());
        }
        Position position = position(p);
        return position == null ? "" : position.word();
    }

    private static @Nullable Position position(Particulars p) {
        if (p instanceof Switching.Isolator s) {
            return s.position();
        }
        if (p instanceof Switching.Contactor s) {
            return s.position();
        }
        if (p instanceof Switching.CombiningRelay s) {
            return s.position();
        }
        if (p instanceof Protection.CircuitBreaker s) {
            return s.position();
        }
        return p instanceof Protection.ResidualCurrentDevice s ? s.position() : null;
    }
}
