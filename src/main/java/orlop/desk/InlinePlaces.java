package orlop.desk;

import java.util.List;
import java.util.Optional;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.layout.Heading;
import orlop.layout.Rect;
import orlop.scene.Role;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.symbols.Symbol;
import orlop.symbols.Terminal;

/**
 * Where an in-line device stands on the sheet: in a leg of its cable's line, turned so that its terminals 1 and 2 follow
 * the cable, and where nothing else stands, so that nothing has to be moved for it.
 */
final class InlinePlaces {
    private static final double GRID_MM = 2.5;
    /** Room between a terminal and the device, so that the joint is seen. */
    private static final double STUB_MM = 2.5;

    private static final double TINY_MM = 1e-6;

    private final Scene scene;
    private final Symbol symbol;

    private InlinePlaces(Scene scene, Symbol symbol) {
        this.scene = scene;
        this.symbol = symbol;
    }

    /** Places for devices of this kind on this scene; empty if no symbol of the kind has terminals 1 and 2. */
    static Optional<InlinePlaces> of(Scene scene, Kind kind) {
        return OwnSymbols.library()
                .find(kind.word())
                .filter(s -> s.terminals().containsKey("1") && s.terminals().containsKey("2"))
                .map(s -> new InlinePlaces(scene, s));
    }

    /** As near as may be to one end of the line. */
    Place nearEnd(Route route, boolean atFrom) {
        List<Point> points = route.points();
        double needed = lengthMm() + 2 * STUB_MM;
        for (int k = 0; k < points.size() - 1; k++) {
            int leg = atFrom ? k : points.size() - 2 - k;
            double length = legLength(points, leg);
            if (length >= needed || (points.size() == 2 && length >= lengthMm())) {
                return free(points, leg, atFrom, length);
            }
        }
        int longest = longest(points);
        return at(points, longest, legLength(points, longest) / 2);
    }

    /**
     * In the line, with its middle as near as may be to a point of it: in the leg that was meant or, where the device has no
     * room in that, in the nearest that is long enough.
     */
    Place near(Route route, int leg, Point wanted) {
        List<Point> points = route.points();
        double needed = lengthMm() + 2 * STUB_MM;
        int best = -1;
        double nearest = Double.POSITIVE_INFINITY;
        double at = 0;
        for (int k = 0; k < points.size() - 1; k++) {
            double length = legLength(points, k);
            if (length >= needed - TINY_MM) {
                Point a = points.get(k);
                Heading way = heading(a, points.get(k + 1));
                double foot = (wanted.xMm() - a.xMm()) * way.dx() + (wanted.yMm() - a.yMm()) * way.dy();
                double along = Math.max(needed / 2, Math.min(length - needed / 2, foot));
                double distance = Math.hypot(
                        a.xMm() + way.dx() * along - wanted.xMm(), a.yMm() + way.dy() * along - wanted.yMm());
                if (distance < nearest - (k == leg ? 0 : TINY_MM)) {
                    best = k;
                    nearest = distance;
                    at = along;
                }
            }
        }
        int longest = longest(points);
        return best < 0 ? at(points, longest, legLength(points, longest) / 2) : at(points, best, at);
    }

    /**
     * How far along the cable a device stands: 0 or 1 where it sits right at an end, with nothing but the stub between, else
     * as drawn.
     */
    double share(Route route, Place place) {
        Point offset = offset(place);
        Route.Spot middle =
                route.nearest(place.at().xMm() + offset.xMm(), place.at().yMm() + offset.yMm());
        double before = middle.share() * route.lengthMm() - lengthMm() / 2;
        double behind = (1 - middle.share()) * route.lengthMm() - lengthMm() / 2;
        double stub = STUB_MM + GRID_MM / 2; // it has been brought to the grid
        if (Math.min(before, behind) <= stub) {
            return before <= behind ? 0 : 1;
        }
        return middle.share();
    }

    /** From the origin to the middle between the terminals. */
    private Point offset(Place place) {
        Point one = turned(terminal("1"), place.rotationDegree());
        Point two = turned(terminal("2"), place.rotationDegree());
        return new Point((one.xMm() + two.xMm()) / 2, (one.yMm() + two.yMm()) / 2);
    }

    /** Slides along the leg, away from the end, until nothing is covered; if all is covered, stays at the end. */
    private Place free(List<Point> points, int leg, boolean atFrom, double length) {
        double half = lengthMm() / 2;
        double stub = Math.min(STUB_MM, (length - lengthMm()) / 2);
        for (double off = stub + half; off <= length - half - stub; off += GRID_MM) {
            double along = atFrom ? off : length - off;
            Place p = at(points, leg, along);
            if (!covers(p)) {
                return p;
            }
        }
        return at(points, leg, atFrom ? stub + half : length - stub - half);
    }

    private boolean covers(Place p) {
        Rect body = Rect.of(p.at().xMm() - 3, p.at().yMm() - 3, 6, 6).grown(lengthMm() / 2 - 3.5);
        return scene.items().stream()
                .filter(i -> i.role() == Role.COMPONENT || i.role() == Role.BAR)
                .anyMatch(i -> i.bounds().overlaps(body));
    }

    /** With its middle so far along a leg. */
    private Place at(List<Point> points, int leg, double alongMm) {
        Point a = points.get(leg);
        Point b = points.get(leg + 1);
        Heading way = heading(a, b);
        int turn = turn(way);
        Point one = turned(terminal("1"), turn);
        Point two = turned(terminal("2"), turn);
        double x = a.xMm() + way.dx() * alongMm - (one.xMm() + two.xMm()) / 2;
        double y = a.yMm() + way.dy() * alongMm - (one.yMm() + two.yMm()) / 2;
        Point grid = new Point(x, y).onGrid(GRID_MM);
        // Only along the leg: across it the device has to stay in the line, wherever that runs.
        Point at = way.horizontal() ? new Point(grid.xMm(), y) : new Point(x, grid.yMm());
        return new Place(scene.sheet(), at, turn, false, null);
    }

    private static Heading heading(Point a, Point b) {
        double dx = b.xMm() - a.xMm();
        double dy = b.yMm() - a.yMm();
        if (Math.abs(dx) > Math.abs(dy)) {
            return dx > 0 ? Heading.RIGHT : Heading.LEFT;
        }
        return dy < 0 ? Heading.UP : Heading.DOWN;
    }

    /** The clockwise turn that makes terminal 2 lie ahead of terminal 1 on this way. */
    private int turn(Heading way) {
        Terminal one = terminal("1");
        Terminal two = terminal("2");
        Heading own = heading(new Point(one.xMm(), one.yMm()), new Point(two.xMm(), two.yMm()));
        int quarters = 0;
        while (own.turned(quarters) != way) {
            quarters++;
        }
        return quarters * 90;
    }

    private static Point turned(Terminal t, int degree) {
        return switch (degree) {
            case 90 -> new Point(-t.yMm(), t.xMm());
            case 180 -> new Point(-t.xMm(), -t.yMm());
            case 270 -> new Point(t.yMm(), -t.xMm());
            default -> new Point(t.xMm(), t.yMm());
        };
    }

    private Terminal terminal(String id) {
        Terminal t = symbol.terminals().get(id);
        if (t == null) {
            throw new IllegalStateException("symbol " + symbol.name() + " has no terminal " + id);
        }
        return t;
    }

    private double lengthMm() {
        Terminal one = terminal("1");
        Terminal two = terminal("2");
        return Math.hypot(two.xMm() - one.xMm(), two.yMm() - one.yMm());
    }

    private static double legLength(List<Point> points, int leg) {
        Point a = points.get(leg);
        Point b = points.get(leg + 1);
        return Math.hypot(b.xMm() - a.xMm(), b.yMm() - a.yMm());
    }

    private static int longest(List<Point> points) {
        int best = 0;
        for (int i = 1; i < points.size() - 1; i++) {
            if (legLength(points, i) > legLength(points, best)) {
                best = i;
            }
        }
        return best;
    }
}
