package orlop.layout;

/**
 * Where the texts of a component will most likely stand: lines are kept away from it. Its size hangs on nothing that is
 * calculated, so that no result can move a line.
 */
final class LabelZone {
    private static final double WIDTH_MM = 22;
    private static final double HEIGHT_MM = 7;

    private LabelZone() {}

    static Rect of(Placed p) {
        Rect ink = p.ink();
        double left = ink.centreX() - WIDTH_MM / 2;
        boolean down = leaves(p, Heading.DOWN);
        if (!down && p.ports().size() == 1 && leaves(p, Heading.UP)) {
            return Rect.of(left, ink.maxY(), WIDTH_MM, HEIGHT_MM);
        }
        double top = ink.centreY() - HEIGHT_MM / 2;
        if (!leaves(p, Heading.RIGHT)) {
            return Rect.of(ink.maxX(), top, WIDTH_MM, HEIGHT_MM);
        }
        if (!leaves(p, Heading.LEFT)) {
            return Rect.of(ink.minX() - WIDTH_MM, top, WIDTH_MM, HEIGHT_MM);
        }
        return Rect.of(left, down ? ink.minY() - HEIGHT_MM : ink.maxY(), WIDTH_MM, HEIGHT_MM);
    }

    private static boolean leaves(Placed p, Heading h) {
        return p.ports().stream().anyMatch(q -> q.heading() == h);
    }
}
