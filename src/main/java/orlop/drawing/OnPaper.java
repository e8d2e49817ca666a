package orlop.drawing;

import java.util.Iterator;
import java.util.function.BiPredicate;

/**
 * What of a drawing is on paper only: where on its sheet a component stands, and how it is turned; where labels stand; the
 * bends of cables; free texts. No current flows otherwise for any of it.
 */
public final class OnPaper {
    private OnPaper() {}

    /** Whether two drawings differ in nothing else; true of equal ones. */
    public static boolean differOnly(Drawing a, Drawing b) {
        return a.vessel().equals(b.vessel())
                && a.systems().equals(b.systems())
                && a.conditions().equals(b.conditions())
                && a.locations().equals(b.locations())
                && a.sheets().equals(b.sheets())
                && a.links().equals(b.links())
                && a.cableways().equals(b.cableways())
                && a.measurements().equals(b.measurements())
                && a.accepted().equals(b.accepted())
                && a.dayPlans().equals(b.dayPlans())
                && a.extras().equals(b.extras())
                && alike(a.components(), b.components(), OnPaper::alike)
                && alike(a.cables(), b.cables(), OnPaper::alike);
    }

    private static boolean alike(Component a, Component b) {
        return a.place().sheet().equals(b.place().sheet())
                && a.withPlace(b.place()).equals(b);
    }

    private static boolean alike(Cable a, Cable b) {
        return a.withBends(b.bends()).withLabelAt(b.labelAt()).equals(b);
    }

    /** The same things in the same order. */
    @SuppressWarnings("ReferenceEquality") // what an edit hasn't touched is the very same
    private static <V> boolean alike(Ledger<V> a, Ledger<V> b, BiPredicate<V, V> alike) {
        if (a == b) {
            return true;
        }
        if (a.size() != b.size()) {
            return false;
        }
        Iterator<V> others = b.values().iterator();
        for (V mine : a.values()) {
            V other = others.next();
            if (mine != other && !alike.test(mine, other)) {
                return false;
            }
        }
        return true;
    }
}
