package orlop.study.model;

import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Phase;
import orlop.study.linear.Complex;

/**
 * What three-phase motors drive back into a fault nearby, for a few periods (IEC 60909-0 clause 3.8, from memory): the
 * voltage factor's share of the nominal voltage behind {@code Z = U / (√3 I_LR)} with {@code R / X} = 0.42, the figure
 * for groups of low-voltage motors with their cables.
 */
final class Motors {
    /** Locked-rotor over rated current where it is not stated: 5 to 8 is usual (IEC 60034-12 design N, from memory). */
    private static final double LOCKED_ROTOR = 6;

    private static final double OHM_OVER_REACTANCE = 0.42;

    private Motors() {}

    /** Impedance of one phase in a fault; null for what is no three-phase motor, and where its current is not known. */
    static @Nullable Complex ohm(Component c, ElectricalSystem system) {
        Double locked = lockedRotorA(c, system);
        if (locked == null) {
            return null;
        }
        double ohm = Plan.phaseV(system) / locked;
        double x = ohm / Math.hypot(1, OHM_OVER_REACTANCE);
        return new Complex(OHM_OVER_REACTANCE * x, x);
    }

    /** Whether its locked-rotor current is the usual multiple of its rated one: whatever starts it gently is no bar. */
    static boolean isAssumed(Component c, ElectricalSystem system) {
        Double locked = lockedRotorA(c, system);
        return locked != null && c.particulars() instanceof Consumer.Motor m && !locked.equals(m.startingA());
    }

    private static @Nullable Double lockedRotorA(Component c, ElectricalSystem system) {
        if (!(c.particulars() instanceof Consumer.Motor m)
                || !system.nature().isThreePhase()
                || m.phase() != Phase.ALL
                || !(system.nominalV() > 0)) {
            return null;
        }
        Double rated = ratedA(m, system);
        Double stated = m.startingA();
        if (rated == null) {
            return stated;
        }
        double usual = LOCKED_ROTOR * rated;
        return stated == null ? (Double) usual : (Double) Math.max(stated, usual);
    }

    private static @Nullable Double ratedA(Consumer.Motor m, ElectricalSystem system) {
        if (m.ratedA() != null || m.shaftW() == null) {
            return m.ratedA();
        }
        return m.shaftW() / (Math.sqrt(3) * system.nominalV() * m.efficiency() * m.powerFactor());
    }
}
