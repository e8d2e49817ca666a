package orlop.scene;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import orlop.layout.Rect;

/** Answers what lies where on a scene. */
final class Hits {
    private static final Set<Role> DRAWN = EnumSet.of(Role.COMPONENT, Role.BAR, Role.CABLE, Role.LINK, Role.NOTE);

    private Hits() {}

    static Optional<SceneItem> itemAt(Scene scene, double x, double y, double tolerance) {
        SceneItem best = null;
        int bestRank = Integer.MAX_VALUE;
        double bestDistance = 0;
        for (SceneItem item : scene.items()) {
            int rank = rank(item.role());
            double d = rank == Integer.MAX_VALUE ? Double.POSITIVE_INFINITY : distance(scene, item, x, y);
            boolean nearer = rank < bestRank || (rank == bestRank && d <= bestDistance);
            if (d <= tolerance && nearer) {
                best = item;
                bestRank = rank;
                bestDistance = d;
            }
        }
        return Optional.ofNullable(best);
    }

    /** What is small and lies over others comes first. */
    private static int rank(Role role) {
        return switch (role) {
            case FINDING, MARGIN -> 0;
            case PROPOSED -> 1;
            case COMPONENT -> 2;
            case LABEL -> 3;
            case CABLE, LINK -> 4;
            case BAR -> 5;
            case NOTE -> 6;
            case FRAME, TITLE_BLOCK, LEGEND, CAUTION -> Integer.MAX_VALUE;
        };
    }

    private static double distance(Scene scene, SceneItem item, double x, double y) {
        Route route = scene.routes().get(item.subject());
        if (route != null && (item.role() == Role.CABLE || item.role() == Role.LINK)) {
            return route.nearest(x, y).distanceMm();
        }
        return item.bounds().distance(x, y);
    }

    static List<SceneItem> itemsIn(Scene scene, Rect r) {
        return scene.items().stream()
                .filter(i -> DRAWN.contains(i.role()) && r.contains(i.bounds()))
                .toList();
    }

    static Optional<TerminalSpot> terminalNear(Scene scene, double x, double y, double tolerance) {
        Comparator<TerminalSpot> nearest = Comparator.comparingDouble(s -> Math.hypot(s.xMm() - x, s.yMm() - y));
        Optional<TerminalSpot> fixed = scene.terminals().stream()
                .filter(s -> Math.hypot(s.xMm() - x, s.yMm() - y) <= tolerance)
                .min(nearest);
        if (fixed.isPresent()) {
            return fixed;
        }
        return scene.bars().stream()
                .filter(b -> b.rect().distance(x, y) <= tolerance)
                .map(b -> b.nearest(x, y))
                .min(nearest);
    }

    static Optional<Route.Spot> cableAt(Scene scene, double x, double y, double tolerance) {
        return scene.routes().values().stream()
                .filter(Route::cable)
                .map(r -> r.nearest(x, y))
                .filter(s -> s.distanceMm() <= tolerance)
                .min(Comparator.comparingDouble(Route.Spot::distanceMm));
    }
}
