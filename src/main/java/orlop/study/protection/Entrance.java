package orlop.study.protection;

import orlop.drawing.Component;
import orlop.standards.SourceKind;

/**
 * Where current enters the network.
 *
 * @param pin where
 * @param kind for the permitted distance
 * @param component the source or converter
 * @param mostA what it gives at most; infinite where nothing limits it for long
 * @param needs the switch positions that it needs to work, by number
 */
record Entrance(int pin, SourceKind kind, Component component, double mostA, int needs) {
    /** Told apart by place and needs: a component with all its particulars would be hashed for every cable. */
    @Override
    public int hashCode() {
        return 31 * pin + needs;
    }

    /** Whether a cable needs a device against it, however much the cable carries. */
    boolean isStrong() {
        return Double.isInfinite(mostA);
    }
}
