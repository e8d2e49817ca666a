package orlop.study.protection;

import java.util.Collections;
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
        private @Nullable Arrival next; // at the same pin, guarded as well or better
        private @Nullable Arrival after; // in the row in which it stands: of those yet to be looked at, then of all
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

        /** The next at the same pin, guarded as well or better; null after the last. */
        @Nullable
        Arrival next() {
            return next;
        }

        boolean behindGap() {
            return behindGap;
        }
    }

    /** Arrivals one after the other; each stands in one row at a time. */
    private static final class Row {
        private @Nullable Arrival first;
        private @Nullable Arrival last;

        void add(Arrival a) {
            if (last == null) {
                first = a;
            } else {
                last.after = a;
            }
            last = a;
        }

        /** The first, which leaves the row; null if there is none. */
        @Nullable
        Arrival take() {
            Arrival a = first;
            if (a != null) {
                first = a.after;
                last = first == null ? null : last;
                a.after = null;
            }
            return a;
        }
    }

    private final Grid grid;
    private final double[] passesA;
    private final @Nullable Arrival[] first; // by pin
    private final int[] size;
    private final Row all = new Row();
    private final TreeMap<Double, Row> open = new TreeMap<>(Collections.reverseOrder());
    private Row pushed = all; // where the last one went
    private double pushedA = Double.NaN;
    private boolean simplified;

    /**
     * @param passesA by connection: least ampacity guarded by what stands there, a proposed device at a cable's end
     *     included; infinite without one
     */
    Arrivals(Grid grid, double[] passesA, List<Entrance> entrances) {
        this.grid = grid;
        this.passesA = passesA;
        int pins = entrances.isEmpty() ? 0 : grid.pins();
        first = new Arrival[pins];
        size = new int[pins];
        for (Entrance e : entrances) {
            push(start(e));
        }
        while (!open.isEmpty()) {
            var worst = open.firstEntry();
            empty(worst.getValue());
            open.remove(worst.getKey());
            pushedA = Double.NaN;
        }
    }

    /** Nothing that is found from here on is guarded worse than these. */
    private void empty(Row alike) {
        for (Arrival a = alike.take(); a != null; a = alike.take()) {
            if (isNew(a.pin(), a.needs)) {
                keep(a);
                spread(a);
            }
        }
    }

    private static Arrival start(Entrance e) {
        return new Arrival(e.pin(), -1, Double.POSITIVE_INFINITY, e.needs(), e, null);
    }

    private void push(Arrival a) {
        if (a.passesA() != pushedA) {
            pushedA = a.passesA();
            pushed = open.computeIfAbsent(pushedA, k -> new Row());
        }
        pushed.add(a);
    }

    private boolean isNew(int pin, int needs) {
        for (Arrival old = first[pin]; old != null; old = old.next) { // all are guarded as badly or worse
            if (grid.positions().within(old.needs, needs)) {
                return false;
            }
        }
        return true;
    }

    private void keep(Arrival a) {
        Arrival last = first[a.pin()];
        while (last != null && last.next != null) {
            last = last.next;
        }
        if (last == null) {
            first[a.pin()] = a;
        } else {
            last.next = a;
        }
        size[a.pin()]++;
        all.add(a);
    }

    private void spread(Arrival a) {
        for (int k = grid.start(a.pin()); k < grid.start(a.pin() + 1); k++) {
            int e = grid.edge(k);
            if (e == a.via() || !grid.leaves(e, a.pin())) {
                continue;
            }
            int needs = grid.pass(a.needs, e);
            if (needs >= 0 && size[a.pin()] > MOST) {
                needs = 0;
                simplified = true;
            }
            int to = grid.other(e, a.pin());
            if (needs >= 0 && isNew(to, needs)) {
                push(new Arrival(to, e, Math.min(a.passesA(), passesA[e]), needs, a.entrance(), a));
            }
        }
    }

    /** The worst guarded arrival at a pin, the others after it; null if nothing arrives. */
    @Nullable
    Arrival first(int pin) {
        return first.length == 0 ? null : first[pin];
    }

    /** Whether positions were not told apart somewhere. */
    boolean simplified() {
        return simplified;
    }

    /** Marks those that have passed a bare cable, each after the one before it. */
    void markBehind(boolean[] isBareEnd) {
        for (Arrival a = all.first; a != null; a = a.after) {
            Arrival before = a.before;
            a.behindGap = before != null && (before.behindGap || isBareEnd[grid.end(a.via, before.pin)]);
        }
    }
}
