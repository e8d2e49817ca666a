package orlop.layout;

import java.util.Optional;

/**
 * Where the texts of a component will most likely stand: lines are kept away from it. Its size hangs on nothing that is
 * calculated, so that no result can move a line.
 */
final class LabelZone {
    private static final double WIDTH_MM = 22;
    private static final double HEIGHT_MM = 7;

    private LabelZone() {}

    static Rect of(Placed p) {
        boolean below = p.ports().stream().noneMatch(q -> q.heading() == Heading.DOWN);
        boolean right = p.ports().stream().noneMatch(q -> q.heading() == Heading.RIGHT);
        Rect ink = p.ink();
        Optional<Port> only = p.ports().size() == 1 ? Optional.of(p.ports().get(0)) : Optional.empty();
        if (below && only.isPresent() && only.get().heading() == Heading.UP) {
            return new Rect(
                    ink.centreX() - WIDTH_MM / 2, ink.maxY(), ink.centreX() + WIDTH_MM / 2, ink.maxY() + HEIGHT_MM);
        }
        double y = ink.centreY();
        return right
                ? new Rect(ink.maxX(), y - HEIGHT_MM / 2, ink.maxX() + WIDTH_MM, y + HEIGHT_MM / 2)
                : new Rect(ink.minX() - WIDTH_MM, y - HEIGHT_MM / 2, ink.minX(), y + HEIGHT_MM / 2);
    }
}
