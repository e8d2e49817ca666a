package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.drawing.Point;
import orlop.scene.Role;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

/**
 * What is dragged over a sheet too big to be laid out anew at every step: it is painted as it is, where it would stand,
 * with thin lines to what it hangs on, and the texts of these half as far. The layout follows at release.
 */
final class MovingItems {
    private final Scene scene;
    private final Set<SceneItem> items = new LinkedHashSet<>();
    private final Set<SceneItem> halfway = new LinkedHashSet<>();
    private final List<Line> lines = new ArrayList<>();

    /** From an end that moves to one that stays. */
    private record Line(Point moving, Point staying) {}

    MovingItems(Drawing d, Scene scene, Set<String> movable) {
        this.scene = scene;
        Set<String> whole = new HashSet<>(movable);
        Set<String> half = new HashSet<>();
        for (Cable c : d.cables().values()) {
            Route way = scene.routes().get(c.id());
            boolean from = movable.contains(c.from().component());
            boolean to = movable.contains(c.to().component());
            if (from && to) {
                whole.add(c.id());
            } else if (way != null && from != to) {
                half.add(c.id());
                Point first = way.points().get(0);
                Point last = way.points().get(way.points().size() - 1);
                lines.add(from ? new Line(first, last) : new Line(last, first));
            }
        }
        for (SceneItem i : scene.items()) {
            boolean moves = i.role() == Role.COMPONENT
                    || i.role() == Role.BAR
                    || i.role() == Role.CABLE
                    || i.role() == Role.NOTE
                    || i.role() == Role.LABEL;
            if (moves && whole.contains(i.subject())) {
                items.add(i);
            } else if (i.role() == Role.LABEL && half.contains(i.subject())) {
                halfway.add(i);
            }
        }
    }

    /** Whether it was made of this very scene. */
    @SuppressWarnings("ReferenceEquality")
    boolean of(Scene other) {
        return scene == other;
    }

    void paint(Graphics2D g, double dx, double dy, double pxMm) {
        g.setColor(Look.accent());
        g.setStroke(new BasicStroke((float) pxMm));
        for (Line l : lines) {
            Point moved = l.moving().plus(dx, dy);
            g.draw(Overlay.path(
                    List.of(moved, new Point(moved.xMm(), l.staying().yMm()), l.staying())));
        }
        items.stream()
                .filter(i -> i.role() != Role.LABEL && i.role() != Role.CABLE)
                .forEach(i -> Overlay.rubber(g, i.bounds().moved(dx, dy), pxMm));
        paint(g, items, dx, dy);
        paint(g, halfway, dx / 2, dy / 2);
    }

    private void paint(Graphics2D g, Set<SceneItem> moved, double dx, double dy) {
        AffineTransform before = g.getTransform();
        g.translate(dx, dy);
        SheetPainting.paint(scene, g, Look.palette(), moved::contains);
        g.setTransform(before);
    }
}
