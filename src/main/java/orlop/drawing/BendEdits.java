package orlop.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Keeps corners that were set by hand in step with the components that they lead between. */
final class BendEdits {
    private BendEdits() {}

    /**
     * A cable with both ends among the moved components moves with them. Where one end alone moves, its hand-set bends
     * stay: the layout joins the moved terminal to the nearest of them.
     */
    static Drawing follow(Drawing before, Drawing after, Set<String> moved, double dxMm, double dyMm) {
        Drawing result = after;
        for (Cable w : before.cables().values()) {
            if (!w.bends().isEmpty() && moved.contains(w.from().component()) && moved.contains(w.to().component())) {
                List<Point> bends = new ArrayList<>();
                for (Point p : w.bends()) {
                    bends.add(p.plus(dxMm, dyMm));
                }
                result = result.with(w.withBends(bends));
            }
        }
        return result;
    }
}
