package orlop.layout;

import java.util.List;
import java.util.Map;
import orlop.layout.Obstacles.Sort;
import orlop.layout.Obstacles.Thing;

/** What it costs to draw a straight piece of a line, in millimetres of detour that would be as bad. */
final class LegCost {
    static final double BLOCKED = Double.POSITIVE_INFINITY;
    static final double BEND = 12;
    private static final double CROSSING = 25;
    private static final double ZONE_PER_MM = 2;
    private static final double CROWDED_PER_MM = 0.6;
    private static final double SHARED_PER_MM = 1;
    private static final double THROUGH_PER_MM = 60;
    private static final double PITCH = 2.5;
    private static final double EPS = 1e-6;

    private final Obstacles obstacles;
    private final List<String> nets;
    private final Map<String, List<Rect>> exits;
    private final Seen seen;
    private final Care care;
    private double cost;
    private int crossings;

    /** How near a line may come to what it does not belong to. */
    enum Care {
        /** As a draughtsman would draw it. */
        FULL(Obstacles.CLEARANCE_MM, PITCH),
        /** Nearer to components, on half the grid: where there is no other way round. */
        HALF(0.6, PITCH / 2),
        /** Through what blocks, dearly: where there is none at all. */
        NONE(Obstacles.CLEARANCE_MM, PITCH);

        private final double clearanceMm;
        private final double pitchMm;

        Care(double clearanceMm, double pitchMm) {
            this.clearanceMm = clearanceMm;
            this.pitchMm = pitchMm;
        }
    }

    /**
     * @param nets what the line belongs to: lines that share a net may meet
     * @param exits by component, the corridors in which the line may be near it
     * @param seen is told where it was looked
     * @param care how near the line may come to things
     */
    LegCost(Obstacles obstacles, List<String> nets, Map<String, List<Rect>> exits, Seen seen, Care care) {
        this.obstacles = obstacles;
        this.nets = nets;
        this.exits = exits;
        this.seen = seen;
        this.care = care;
    }

    /** Distance of the lines on which a way may run. */
    double pitchMm() {
        return care.pitchMm;
    }

    /** Whether there are pieces that can't be drawn at any cost. */
    boolean canBeBlocked() {
        return care != Care.NONE;
    }

    /** Cost of the piece from (x1, y1) exclusive to (x2, y2) inclusive, its length included. */
    double leg(double x1, double y1, double x2, double y2) {
        Rect piece = new Rect(Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2));
        boolean horizontal = Math.abs(y1 - y2) < EPS;
        double length = horizontal ? piece.width() : piece.height();
        cost = length;
        Rect room = piece.grown(2 * PITCH);
        seen.add(room);
        obstacles.near(room, t -> {
            switch (t.sort) {
                case BODY -> body(t, piece, length);
                case ZONE -> zone(t, piece, horizontal);
                case HORIZONTAL, VERTICAL -> {
                    if (t.horizontal() == horizontal) {
                        parallel(t, piece, horizontal, length);
                    } else {
                        crossing(t, piece, horizontal ? x1 : y1, horizontal);
                    }
                }
            }
        });
        return cost;
    }

    private void block(double length) {
        cost += care == Care.NONE ? THROUGH_PER_MM * Math.max(length, 0.1) : BLOCKED;
    }

    private void body(Thing t, Rect piece, double length) {
        Rect near = t.rect.grown(care.clearanceMm - EPS);
        boolean touches = piece.minX() < near.maxX()
                && piece.maxX() > near.minX()
                && piece.minY() < near.maxY()
                && piece.maxY() > near.minY();
        if (touches && !inExit(t, near, piece)) {
            block(length);
        }
    }

    /** Whether the part of the piece that is near the body lies in a corridor in which it may be there. */
    private boolean inExit(Thing t, Rect near, Rect piece) {
        Rect part = new Rect(
                Math.max(piece.minX(), near.minX()),
                Math.max(piece.minY(), near.minY()),
                Math.min(piece.maxX(), near.maxX()),
                Math.min(piece.maxY(), near.maxY()));
        return inOne(exits.getOrDefault(t.owner, List.of()), part);
    }

    /** Exits are strips without width: what reaches along a bar lies in none, however many there are. */
    private static boolean inOne(List<Rect> strips, Rect part) {
        boolean wide = part.width() > 4 * EPS;
        boolean high = part.height() > 4 * EPS;
        if (wide && high) {
            return false;
        }
        for (Rect e : strips) {
            boolean lying = e.width() > e.height();
            if ((lying ? !high : !wide) && e.contains(part)) {
                return true;
            }
            if (wide && !lying && strips.size() > 4) {
                return false; // the strips of a bar all run one way
            }
            if (high && lying && strips.size() > 4) {
                return false;
            }
        }
        return false;
    }

    private void zone(Thing t, Rect piece, boolean horizontal) {
        double shared = horizontal
                ? t.rect.minY() < piece.minY() && t.rect.maxY() > piece.minY()
                        ? overlap(t.rect.minX(), t.rect.maxX(), piece.minX(), piece.maxX())
                        : 0
                : t.rect.minX() < piece.minX() && t.rect.maxX() > piece.minX()
                        ? overlap(t.rect.minY(), t.rect.maxY(), piece.minY(), piece.maxY())
                        : 0;
        cost += ZONE_PER_MM * shared;
    }

    private void parallel(Thing t, Rect piece, boolean horizontal, double length) {
        double apart = horizontal ? Math.abs(t.rect.minY() - piece.minY()) : Math.abs(t.rect.minX() - piece.minX());
        double along = horizontal
                ? overlap(t.rect.minX(), t.rect.maxX(), piece.minX(), piece.maxX())
                : overlap(t.rect.minY(), t.rect.maxY(), piece.minY(), piece.maxY());
        if (along <= EPS || apart >= 2 * PITCH - EPS) {
            return;
        }
        if (apart < EPS && sharesNet(t) && inAnyExit(piece, t.rect)) {
            cost += SHARED_PER_MM * along;
        } else if (apart < PITCH - EPS) {
            block(length);
        } else {
            cost += CROWDED_PER_MM * along;
        }
    }

    /** Lines of one net share the first piece out of their terminal, no more: beyond it each is drawn by itself. */
    private boolean inAnyExit(Rect piece, Rect line) {
        Rect part = new Rect(
                Math.max(piece.minX(), line.minX()),
                Math.max(piece.minY(), line.minY()),
                Math.min(piece.maxX(), line.maxX()),
                Math.min(piece.maxY(), line.maxY()));
        for (List<Rect> list : exits.values()) {
            if (inOne(list, part)) {
                return true;
            }
        }
        return false;
    }

    private void crossing(Thing t, Rect piece, double start, boolean horizontal) {
        double at = horizontal ? t.rect.minX() : t.rect.minY();
        double min = horizontal ? piece.minX() : piece.minY();
        double max = horizontal ? piece.maxX() : piece.maxY();
        double own = horizontal ? piece.minY() : piece.minX();
        double low = horizontal ? t.rect.minY() : t.rect.minX();
        double high = horizontal ? t.rect.maxY() : t.rect.maxX();
        if (at < min - EPS || at > max + EPS || own < low - EPS || own > high + EPS) {
            return;
        }
        boolean atItsEnd = Math.abs(own - low) < EPS || Math.abs(own - high) < EPS;
        if (atItsEnd) {
            if (!sharesNet(t)) {
                block(PITCH); // it would look joined
            }
        } else if (Math.abs(at - start) > EPS) {
            cost += CROSSING;
            crossings++;
        }
    }

    /** How many lines were crossed by all pieces that were asked for until now. */
    int crossings() {
        return crossings;
    }

    /** Whether a corner here would look joined to a foreign line. */
    boolean cornerBlocked(double x, double y) {
        if (care == Care.NONE) {
            return false;
        }
        boolean[] found = {false};
        Rect room = new Rect(x, y, x, y).grown(EPS);
        seen.add(room);
        obstacles.near(room, t -> {
            boolean line = t.sort == Sort.HORIZONTAL || t.sort == Sort.VERTICAL;
            if (line && !sharesNet(t) && t.rect.grown(EPS).contains(x, y)) {
                found[0] = true;
            }
        });
        return found[0];
    }

    private boolean sharesNet(Thing t) {
        for (String n : nets) {
            if (t.nets.contains(n)) {
                return true;
            }
        }
        return false;
    }

    private static double overlap(double aMin, double aMax, double bMin, double bMax) {
        return Math.max(0, Math.min(aMax, bMax) - Math.max(aMin, bMin));
    }
}
