package orlop.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Point;
import orlop.scene.Scene;
import orlop.scene.TerminalSpot;

/**
 * Finds with what the things that are being moved stand in line: terminals and centres with those of what stays.
 *
 * <p>Made once when a move begins, of the drawing as it was then.
 */
public final class Guides {
    private static final int MOST_EACH_WAY = 3;
    private static final double SAME_MM = 0.01;

    private final List<Point> moving = new ArrayList<>();
    private final Map<Long, List<Double>> uprights = new HashMap<>();
    private final Map<Long, List<Double>> levels = new HashMap<>();

    /**
     * A line that shows what stands in line.
     *
     * @param upright whether it runs up and down
     * @param atMm its x if it is upright, else its y
     * @param fromMm where it begins on the other axis
     * @param toMm where it ends, not before {@code fromMm}
     */
    public record Guide(boolean upright, double atMm, double fromMm, double toMm) {}

    private Guides() {}

    /** The guides for moving these components on this scene of the drawing. */
    public static Guides of(Drawing d, Scene scene, Set<String> moving) {
        Guides g = new Guides();
        for (TerminalSpot t : scene.terminals()) {
            g.add(moving.contains(t.terminal().component()), new Point(t.xMm(), t.yMm()));
        }
        for (Component c : d.components().values()) {
            if (c.place().sheet().equals(scene.sheet())) {
                g.add(moving.contains(c.id()), c.place().at());
            }
        }
        return g;
    }

    private void add(boolean moves, Point p) {
        if (moves) {
            moving.add(p);
        } else {
            uprights.computeIfAbsent(key(p.xMm()), k -> new ArrayList<>()).add(p.yMm());
            levels.computeIfAbsent(key(p.yMm()), k -> new ArrayList<>()).add(p.xMm());
        }
    }

    private static long key(double mm) {
        return Math.round(mm / SAME_MM);
    }

    /** The lines that show, once everything has moved so far: at most three each way, those to the nearest things. */
    public List<Guide> at(double dxMm, double dyMm) {
        Map<Long, Guide> upright = new HashMap<>();
        Map<Long, Guide> level = new HashMap<>();
        for (Point p : moving) {
            double x = p.xMm() + dxMm;
            double y = p.yMm() + dyMm;
            add(upright, uprights.getOrDefault(key(x), List.of()), true, x, y);
            add(level, levels.getOrDefault(key(y), List.of()), false, y, x);
        }
        List<Guide> all = new ArrayList<>(nearest(upright));
        all.addAll(nearest(level));
        return all;
    }

    private static void add(Map<Long, Guide> lines, List<Double> others, boolean upright, double at, double own) {
        others.stream().min(Comparator.comparingDouble(o -> Math.abs(o - own))).ifPresent(o -> {
            Guide g = new Guide(upright, at, Math.min(own, o), Math.max(own, o));
            lines.merge(key(at), g, (a, b) -> length(a) <= length(b) ? a : b);
        });
    }

    private static double length(Guide g) {
        return g.toMm() - g.fromMm();
    }

    private static List<Guide> nearest(Map<Long, Guide> lines) {
        return lines.values().stream()
                .sorted(Comparator.comparingDouble(Guides::length).thenComparingDouble(Guide::atMm))
                .limit(MOST_EACH_WAY)
                .toList();
    }
}
