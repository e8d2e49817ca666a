package orlop.study.protection;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * By which ways current reaches each pin, the worst guarded first.
 *
 * <p>A path is as well guarded as its best device: the one that guards the least ampacity. A pin keeps its worst path for
 * each set of switch positions; a path that is guarded as well or better and needs the same positions or more says
 * nothing new. So every pin is visited once, where nothing switches, and no position is ever enumerated.
 */
final class Arrivals {
    /** Beyond so many paths at one pin positions are no longer told apart, which errs on the safe side. */
    private static final int MOST = 24;

    /** One way in which current comes to a pin. */
    static final class Arrival {
        private final int pin;
        private final int via; // the last connection, −1 at the source
        private final double passesA;
        private final int needs;
        private final Entrance entrance;
        private final @Nullable Arrival before; // null at the source
        private boolean behindGap;

        Arrival(int pin, int via, double passesA, int needs, Entrance entrance, @Nullable Arrival before) {
            this.pin = pin;
            this.via = via;
            this.passesA = passesA;
            this.needs = needs;
            this.entrance = entrance;
            this.before = before;
        }

        int pin() {
            return pin;
        }

        int via() {
            return via;
        }

        /** Cables of at least this ampacity are guarded; infinite where the path has no device. */
        double passesA() {
            return passesA;
        }

        Entrance entrance() {
            return entrance;
        }

        /** Where it came from; itself at the source. */
        Arrival before() {
            return before == null ? this : before;
        }

        boolean isStart() {
            return before == null;
        }

        boolean behindGap() {
            return behindGap;
        }

        void setBehindGap(boolean value) {
            behindGap = value;
        }
    }

    private final Grid grid;
    private final double[] passesA;
    private final List<List<Arrival>> at;
    private final List<Arrival> all = new ArrayList<>();
    private final TreeMap<Double, Deque<Arrival>> open = new TreeMap<>(Collections.reverseOrder());

    /**
     * @param passesA by connection: least ampacity guarded by what stands there, a proposed device at a cable's end
     *     included; infinite without one
     */
    Arrivals(Grid grid, double[] passesA, List<Entrance> entrances) {
        this.grid = grid;
        this.passesA = passesA;
        at = new ArrayList<>(Collections.nCopies(grid.pins(), List.of()));
        for (Entrance e : entrances) {
            push(start(e));
        }
        while (!open.isEmpty()) {
            var worst = open.firstEntry();
            Arrival a = worst.getValue().poll();
            if (a == null) {
                open.remove(worst.getKey());
            } else if (isNew(a.pin(), a.needs)) {
                keep(a);
                spread(a);
            }
        }
    }

    private static Arrival start(Entrance e) {
        return new Arrival(e.pin(), -1, Double.POSITIVE_INFINITY, e.needs(), e, null);
    }

    private void push(Arrival a) {
        open.computeIfAbsent(a.passesA(), k -> new ArrayDeque<>()).add(a);
    }

    private boolean isNew(int pin, int needs) {
        for (Arrival old : at.get(pin)) { // all of them are guarded as badly or worse
            if (grid.positions().within(old.needs, needs)) {
                return false;
            }
        }
        return true;
    }

    private void keep(Arrival a) {
        List<Arrival> here = at.get(a.pin());
        if (here.isEmpty()) {
            here = new ArrayList<>(1);
            at.set(a.pin(), here);
        }
        here.add(a);
        all.add(a);
    }

    private void spread(Arrival a) {
        for (int e : grid.at(a.pin())) {
            if (e == a.via() || !grid.leaves(e, a.pin())) {
                continue;
            }
            int needs = grid.pass(a.needs, e);
            if (needs >= 0 && at.get(a.pin()).size() > MOST) {
                needs = 0;
            }
            int to = grid.other(e, a.pin());
            if (needs >= 0 && isNew(to, needs)) {
                push(new Arrival(to, e, Math.min(a.passesA(), passesA[e]), needs, a.entrance(), a));
            }
        }
    }

    /** Arrivals at a pin, the worst guarded first. */
    List<Arrival> at(int pin) {
        return at.get(pin);
    }

    /** All arrivals, each after the one before it. */
    List<Arrival> all() {
        return all;
    }
}
