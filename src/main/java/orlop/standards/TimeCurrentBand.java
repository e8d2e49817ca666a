package orlop.standards;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What the fixed points of a family say of one rated current: when a device of it can have opened, and when it surely has.
 *
 * <p>Between two points nothing is interpolated. The more current, the sooner it opens; so it has not opened before the
 * least time of any point with as much current or more, and has opened by the greatest time of any point with as much
 * or less.
 */
public final class TimeCurrentBand {
    private record Point(double amps, OptionalDouble minS, OptionalDouble maxS) {}

    private final List<Point> points = new ArrayList<>();

    /** @param inA rated current or setting, above 0 */
    public TimeCurrentBand(ProtectiveFamily family, double inA) {
        for (Characteristic p : family.points().all()) {
            boolean time = p.kind() == Characteristic.Kind.HOLD
                    || p.kind() == Characteristic.Kind.OPERATE
                    || p.kind() == Characteristic.Kind.GATE;
            boolean fixed = p.multiple().isPresent() || p.currentA().isPresent();
            if (time && fixed && p.holdsFor(inA)) {
                double amps = p.currentA().isPresent()
                        ? p.currentA().getAsDouble()
                        : inA * p.multiple().orElseThrow();
                points.add(new Point(amps, p.tMinS(), p.tMaxS()));
            }
        }
    }

    /** Time before which a current has not opened it, in seconds; 0 where no point says so. */
    public double notBeforeS(double amps) {
        double most = 0;
        for (Point p : points) {
            if (p.minS().isPresent() && p.amps() >= amps * (1 - 1e-9)) {
                most = Math.max(most, p.minS().getAsDouble());
            }
        }
        return most;
    }

    /** Time by which a current has surely opened it, in seconds; infinite where no point says so. */
    public double surelyByS(double amps) {
        double least = Double.POSITIVE_INFINITY;
        for (Point p : points) {
            if (p.maxS().isPresent() && p.amps() <= amps * (1 + 1e-9)) {
                least = Math.min(least, p.maxS().getAsDouble());
            }
        }
        return least;
    }

    /** Least current that surely opens it within a time; infinite where no point says so. */
    public double opensWithinA(double seconds) {
        double least = Double.POSITIVE_INFINITY;
        for (Point p : points) {
            if (p.maxS().isPresent() && p.maxS().getAsDouble() <= seconds * (1 + 1e-9)) {
                least = Math.min(least, p.amps());
            }
        }
        return least;
    }

    /** Whether any point limits how fast it opens above the current that it carries for ever. */
    public boolean hasLeastTimes() {
        long lower = points.stream()
                .filter(p -> p.minS().isPresent())
                .map(Point::amps)
                .distinct()
                .count();
        return lower > 1;
    }
}
