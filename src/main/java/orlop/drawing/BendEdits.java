package orlop.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Keeps corners that were set by hand in step with the components that they lead between. */
final class BendEdits {
    private BendEdits() {}

    /**
     * A cable with both ends among the moved components moves with them, and so does its label that was set by hand. Where
     * one end alone moves, they stay: the layout joins the moved terminal to the nearest bend.
     */
    static Drawing follow(Drawing before, Drawing after, Set<String> moved, double dxMm, double dyMm) {
        Drawing result = after;
        for (Cable w : before.cables().values()) {
            boolean byHand = !w.bends().isEmpty() || w.labelAt() != null;
            if (byHand && moved.contains(w.from().component()) && moved.contains(w.to().component())) {
                List<Point> bends = new ArrayList<>();
                for (Point p : w.bends()) {
                    bends.add(p.plus(dxMm, dyMm));
                }
                Point label = w.labelAt();
                result = result.with(w.withBends(bends).withLabelAt(label == null ? null : label.plus(dxMm, dyMm)));
            }
        }
        return result;
    }
}
