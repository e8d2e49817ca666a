package orlop.editor;

import java.util.Collection;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Which of several things on the sheet an arrow key leads to. */
final class Directions {
    /** So much farther away counts what lies aside than what lies ahead. */
    private static final double ASIDE = 2.5;

    private Directions() {}

    /**
     * The thing that lies next in a direction: nearest, with what lies aside counted as farther away.
     *
     * @param x where the way begins, in millimetres
     * @param dx −1, 0 or 1; one of dx and dy is 0
     * @param toX where a thing lies, in millimetres
     */
    static <T> Optional<T> next(
            double x, double y, int dx, int dy, Collection<T> all, ToDoubleFunction<T> toX, ToDoubleFunction<T> toY) {
        T best = null;
        double least = Double.POSITIVE_INFINITY;
        for (T t : all) {
            double ex = toX.applyAsDouble(t) - x;
            double ey = toY.applyAsDouble(t) - y;
            double ahead = ex * dx + ey * dy;
            double aside = Math.abs(ex * dy) + Math.abs(ey * dx);
            double cost = ahead + ASIDE * aside;
            if (ahead > 0.1 && cost < least) {
                least = cost;
                best = t;
            }
        }
        return Optional.ofNullable(best);
    }
}
