package orlop.study.model;

import orlop.study.flow.Part;

/**
 * A direct-current source, or the output of a converter.
 *
 * @param part how it behaves in service
 * @param first see {@link Part}
 * @param second see {@link Part}
 * @param third see {@link Part}
 * @param strongest what drives the highest fault current
 * @param weakest what drives the lowest fault current
 * @param limitA most current that it ever gives; infinite where nothing limits it
 * @param carriesItself whether it limits its own current, so that a cable that carries the limit needs no device
 * @param battery whether it counts as a battery for the distance to the first device
 */
public record SourceModel(
        Part part,
        double first,
        double second,
        double third,
        Thevenin strongest,
        Thevenin weakest,
        double limitA,
        boolean carriesItself,
        boolean battery) {
    /**
     * What a source is to a fault.
     *
     * @param emfV voltage behind the resistance; of a limited source, the voltage that it holds
     * @param ohm resistance
     * @param limitA infinite for a plain electromotive force
     */
    public record Thevenin(double emfV, double ohm, double limitA) {
        /** Whether it is a current as such, whatever the voltage. */
        public boolean isCurrent() {
            return Double.isNaN(emfV);
        }

        /** Whether it gives no more than a limit. */
        public boolean isLimited() {
            return limitA < Double.POSITIVE_INFINITY;
        }

        static Thevenin current(double amps) {
            return new Thevenin(Double.NaN, 0, amps);
        }
    }

    static SourceModel emf(double emfV, double ohm, boolean oneWay) {
        Thevenin t = new Thevenin(emfV, ohm, Double.POSITIVE_INFINITY);
        Part part = oneWay ? Part.LIMITED : Part.EMF;
        double none = Double.POSITIVE_INFINITY;
        return new SourceModel(part, emfV, ohm, none, t, t, none, false, true);
    }

    static SourceModel limited(double setV, double ohm, double limitA, double faultA, boolean selfLimiting) {
        Thevenin most = new Thevenin(setV, ohm, faultA);
        Thevenin held = new Thevenin(setV, ohm, limitA);
        return new SourceModel(
                Part.LIMITED, setV, ohm, limitA, most, held, Math.max(limitA, faultA), selfLimiting, false);
    }

    static SourceModel current(double amps) {
        Thevenin t = Thevenin.current(Math.max(0, amps)); // what takes a current brings none into a fault
        return new SourceModel(Part.CURRENT, amps, 0, 0, t, t, Math.abs(amps), true, false);
    }
}
