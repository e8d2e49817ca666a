package orlop.study.flow;

/** The law of each part: its current and the slope of it, in a given state. */
final class Laws {
    /** The states of parts that switch. */
    enum State {
        /** Follows its slope or, with no resistance, holds its voltage. */
        ON,
        /** Gives its limit. */
        LIMIT,
        /** Passes nothing. */
        OFF
    }

    private Laws() {}

    /** Whether in this state the part ties its nodes to a fixed voltage. */
    static boolean ties(Circuit c, int part, State state) {
        Part p = c.part(part);
        return (p == Part.EMF || (p.switches() && state == State.ON)) && c.second(part) == 0;
    }

    /** Whether in this state the part gives its nodes a definite potential against each other. */
    static boolean conducts(Circuit c, int part, State state) {
        return switch (c.part(part)) {
            case RESISTOR, LOAD_CONDUCTANCE -> c.first(part) > 0;
            case EMF -> true;
            case LIMITED, DIODE -> state == State.ON;
            default -> false;
        };
    }

    /** Whether its current follows from what it wants rather than from a resistance. */
    static boolean follows(Circuit c, int part) {
        return c.part(part) == Part.POWER_SOURCE
                || c.part(part) == Part.LOAD_POWER
                || c.part(part) == Part.LOAD_CURRENT;
    }

    /** Whether it is a load that can't be served without voltage. */
    static boolean needsVoltage(Circuit c, int part) {
        return follows(c, part) && c.part(part) != Part.POWER_SOURCE && c.first(part) > 0;
    }

    /** The greatest voltage that any of these parts holds; 1 V where none holds one. */
    static double greatestV(Circuit c, int[] parts) {
        double most = 0;
        for (int part : parts) {
            most = c.part(part) == Part.EMF || c.part(part) == Part.LIMITED ? Math.max(most, c.first(part)) : most;
        }
        return most > 0 ? most : 1;
    }

    /** What takes the place of a load at a gentle voltage: the conductance that takes the same there; else NaN. */
    private static double gentle(Circuit c, int part, double gentleV) {
        if (!(gentleV > 0) || !follows(c, part)) {
            return Double.NaN;
        }
        return switch (c.part(part)) {
            case LOAD_POWER -> c.first(part) / gentleV / gentleV;
            case LOAD_CURRENT -> Math.max(0, c.first(part)) / gentleV;
            default -> 0;
        };
    }

    /** As below; where {@code gentleV} is above 0, loads are conductances and sources of power give nothing. */
    static double current(Circuit c, int part, State state, double v, double gentleV) {
        double siemens = gentle(c, part, gentleV);
        return Double.isNaN(siemens) ? current(c, part, state, v) : siemens * v;
    }

    /** Slope of {@link #current(Circuit, int, State, double, double)}. */
    static double slope(Circuit c, int part, State state, double v, double gentleV) {
        double siemens = gentle(c, part, gentleV);
        return Double.isNaN(siemens) ? slope(c, part, state, v) : siemens;
    }

    /** Current from a to b; not asked of a part that ties. */
    static double current(Circuit c, int part, State state, double v) {
        double first = c.first(part);
        return switch (c.part(part)) {
            case RESISTOR, LOAD_CONDUCTANCE -> first * v;
            case EMF -> (v - first) / c.second(part);
            case CURRENT -> -first;
            case LIMITED ->
                state == State.ON ? (v - first) / c.second(part) : state == State.LIMIT ? -c.third(part) : 0;
            case POWER_SOURCE -> -powerSource(first, c.third(part), v);
            case DIODE -> state == State.ON ? (v - first) / c.second(part) : 0;
            case LOAD_CURRENT -> first;
            case LOAD_POWER -> first / v;
        };
    }

    private static double powerSource(double watts, double limitA, double v) {
        return v * limitA <= watts ? limitA : watts / v;
    }

    /** Slope of the current over the voltage. */
    static double slope(Circuit c, int part, State state, double v) {
        double first = c.first(part);
        return switch (c.part(part)) {
            case RESISTOR, LOAD_CONDUCTANCE -> first;
            case EMF -> 1 / c.second(part);
            case LIMITED, DIODE -> state == State.ON ? 1 / c.second(part) : 0;
            case POWER_SOURCE -> v * c.third(part) <= first ? 0 : first / (v * v);
            case LOAD_POWER -> -first / (v * v);
            case CURRENT, LOAD_CURRENT -> 0;
        };
    }

    /** The state that a part ought to have between these voltages, NaN where nothing gives one. */
    static State wanted(Circuit c, int part, State state, double aV, double bV, double current) {
        if (c.part(part) == Part.DIODE && (Double.isNaN(aV) || Double.isNaN(bV))) {
            return Double.isNaN(aV) ? state : State.ON;
        }
        if (Double.isNaN(aV) || Double.isNaN(bV)) {
            return state == State.OFF ? State.ON : state;
        }
        return wanted(c, part, state, aV - bV, current);
    }

    /** The state that a part ought to have, from its voltage and, where it ties, its current from a to b. */
    private static State wanted(Circuit c, int part, State state, double v, double current) {
        double tolerance = 1e-9 * Math.max(1, Math.abs(c.first(part)));
        if (c.part(part) == Part.DIODE) {
            boolean on = state == State.ON ? !(current < -1e-9) : v > c.first(part) + tolerance;
            return on ? State.ON : State.OFF;
        }
        double given = -current;
        double limit = c.third(part);
        if (state == State.ON) {
            return given < -1e-9 ? State.OFF : given > limit * (1 + 1e-9) + 1e-12 ? State.LIMIT : State.ON;
        }
        double slope = c.second(part);
        if (state == State.LIMIT) {
            return c.first(part) - v < slope * limit - tolerance ? State.ON : State.LIMIT;
        }
        return v < c.first(part) - tolerance ? State.ON : State.OFF;
    }

    /** The greatest of the values without their signs; NaN if one of them is. */
    static double greatest(double[] values) {
        double most = 0;
        for (double value : values) {
            most = Double.isNaN(value) ? Double.NaN : Math.max(most, Math.abs(value));
        }
        return most;
    }
}
