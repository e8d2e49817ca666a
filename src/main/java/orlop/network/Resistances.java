package orlop.network;

import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Earth;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Particulars;
import orlop.drawing.Poles;
import orlop.drawing.Protection;
import orlop.drawing.Switching;

/** Lengths of cables and resistances of devices, as they are stated. */
public final class Resistances {
    private Resistances() {}

    /** One-way length in metres: as typed, else the sum of its cableways; null if neither is known. */
    public static @Nullable Double lengthM(Drawing drawing, Cable cable) {
        if (cable.lengthM() != null || cable.cableways().isEmpty()) {
            return cable.lengthM();
        }
        double sum = 0;
        for (String id : cable.cableways()) {
            var way = drawing.cableways().get(id);
            if (way == null) {
                return null;
            }
            sum += way.lengthM();
        }
        return sum;
    }

    /** Whether nothing is known from which a cable's resistance follows: no length, and none stated. */
    static boolean isOfUnknownLength(Drawing drawing, Cable cable) {
        Cable.Measured m = cable.measured();
        return m.loopResistanceOhm() == null && m.conductorResistanceOhm() == null && lengthM(drawing, cable) == null;
    }

    /** Whether a cable has an impedance, whatever its area. */
    static boolean hasImpedance(Drawing drawing, Cable cable) {
        Cable.Measured m = cable.measured();
        Double resistance = m.loopResistanceOhm() != null ? m.loopResistanceOhm() : m.conductorResistanceOhm();
        Double reactance = m.loopReactanceOhm() != null ? m.loopReactanceOhm() : m.conductorReactanceOhm();
        if (resistance != null) {
            return resistance > 0 || (reactance != null && reactance != 0 && !isDirect(drawing, cable));
        }
        Double length = lengthM(drawing, cable);
        Double back = cable.returns().returnLengthM();
        return (length != null && length > 0) || (back != null && back > 0);
    }

    private static boolean isDirect(Drawing drawing, Cable cable) {
        Component from = drawing.components().get(cable.from().component());
        return from != null && isDirect(drawing, from.systemOf(cable.from().terminal()));
    }

    /** Whether a system carries direct current, for which a reactance is nothing. */
    private static boolean isDirect(Drawing drawing, String system) {
        ElectricalSystem s = drawing.systems().get(system);
        return s != null && s.nature().isDc();
    }

    /** Resistance of a device in ohms, both poles where it stands in both; null if it is not stated. */
    public static @Nullable Double ofDevice(Component c) {
        Particulars p = c.particulars();
        if (p instanceof Protection.Fuse f) {
            return poles(f.resistanceOhm(), f.poles());
        }
        if (p instanceof Protection.CircuitBreaker b) {
            return poles(b.resistanceOhm(), b.poles());
        }
        if (p instanceof Switching.Isolator s) {
            return poles(s.resistanceOhm(), s.poles());
        }
        if (p instanceof Switching.Contactor s) {
            return poles(s.resistanceOhm(), s.poles());
        }
        if (p instanceof Earth.Shunt s) {
            return shunt(s);
        }
        if (p instanceof Distribution.Impedance z) {
            return z.resistanceOhm();
        }
        return p instanceof Distribution.Terminal ? Double.valueOf(0) : null;
    }

    private static @Nullable Poles polesOf(Component c) {
        Particulars p = c.particulars();
        if (p instanceof Protection.Fuse f) {
            return f.poles();
        }
        if (p instanceof Protection.CircuitBreaker b) {
            return b.poles();
        }
        if (p instanceof Switching.Isolator s) {
            return s.poles();
        }
        return p instanceof Switching.Contactor s ? s.poles() : null;
    }

    /** Whether the resistance of a device is that of two poles, one of them in the neutral. */
    public static boolean isPair(Component c) {
        Poles p = polesOf(c);
        return p == Poles.BOTH || p == Poles.L_N;
    }

    /** Whether a device stands in the neutral too. */
    public static boolean inNeutral(Component c) {
        return isPair(c) || polesOf(c) == Poles.L3_N;
    }

    private static @Nullable Double poles(@Nullable Double ohm, Poles poles) {
        if (ohm == null) {
            return null;
        }
        return poles == Poles.BOTH || poles == Poles.L_N ? 2 * ohm : ohm;
    }

    private static @Nullable Double shunt(Earth.Shunt s) {
        if (s.resistanceOhm() != null) {
            return s.resistanceOhm();
        }
        return s.dropMilliV() != null && s.ratingA() != null ? (Double) (s.dropMilliV() / 1_000 / s.ratingA()) : null;
    }

    /** Reactance of a device in ohms, 0 for all but an impedance, and in direct current. */
    public static double reactanceOf(Drawing drawing, Component c) {
        return c.particulars() instanceof Distribution.Impedance z
                        && !isDirect(drawing, c.systems().get(0))
                ? z.reactanceOhm()
                : 0;
    }
}
