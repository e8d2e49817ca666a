package orlop.study.protection;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.standards.SourceKind;
import orlop.study.model.Rating;

/** Judges single ends of cables: whether current comes in there unguarded, and whether a device follows soon enough. */
final class Ends {
    /**
     * An end at which a cable is not guarded.
     *
     * @param edge the cable's connection
     * @param pin its end
     * @param entrance a source that drives it
     * @param arrival the way by which it comes; null where several limited sources do it together
     * @param stretch what hangs on the end
     * @param permittedM how far the first device may be
     * @param fromM how far the source is from the end
     */
    record Bare(
            int edge,
            int pin,
            Entrance entrance,
            Arrivals.@Nullable Arrival arrival,
            Stretch stretch,
            double permittedM,
            double fromM) {}

    private record Near(Entrance entrance, double fromM) {}

    private final Grid grid;
    private final Surroundings around;
    private final Distances distances;
    private final Map<Integer, List<Entrance>> byPin = new HashMap<>();
    private final Map<Integer, List<Near>> near = new HashMap<>();
    private final BitSet isNear = new BitSet(); // the pins of which that knows
    private final List<Entrance> strong = new ArrayList<>();
    private final List<Entrance> limited = new ArrayList<>();
    private final Bridges whole;
    private final boolean[] bridge;
    private final double[] sources;
    private final double[] limits;
    private final double[] passesA;
    private final Map<Integer, Double> shortRuns = new HashMap<>();
    private final @Nullable Stretch[] stretches; // by end
    private final Stretch.Search search;
    private Arrivals arrivals;
    private Arrivals limitedArrivals;

    Ends(Grid grid, Surroundings around, Distances distances, List<Entrance> entrances) {
        this.grid = grid;
        this.around = around;
        this.distances = distances;
        stretches = new Stretch[2 * grid.count()];
        search = new Stretch.Search(grid);
        sources = new double[grid.pins()];
        limits = entrances.stream().allMatch(Entrance::isStrong) ? new double[0] : new double[grid.pins()];
        for (Entrance e : entrances) {
            byPin.computeIfAbsent(e.pin(), k -> new ArrayList<>(1)).add(e);
            (e.isStrong() ? strong : limited).add(e);
            sources[e.pin()]++;
            if (!e.isStrong()) {
                limits[e.pin()] += e.mostA();
            }
            nearby(e);
        }
        boolean[] all = new boolean[grid.count()];
        Arrays.fill(all, true);
        whole = new Bridges(grid, all);
        bridge = whole.all();
        whole.below(sources);
        if (!limited.isEmpty()) {
            whole.below(limits);
        }
        passesA = grid.passesA();
        arrivals = new Arrivals(grid, passesA, strong);
        limitedArrivals = new Arrivals(grid, passesA, limited);
    }

    /** What is reached from a source without passing a cable or a device belongs to its terminal. */
    private void nearby(Entrance entrance) {
        Map<Integer, Double> seen = new HashMap<>();
        Deque<Integer> open = new ArrayDeque<>();
        seen.put(entrance.pin(), 0.0);
        open.add(entrance.pin());
        while (!open.isEmpty()) {
            int pin = open.remove();
            double here = seen.getOrDefault(pin, 0.0);
            near.computeIfAbsent(pin, k -> new ArrayList<>(1)).add(new Near(entrance, here));
            isNear.set(pin);
            for (int k = grid.start(pin); k < grid.start(pin + 1); k++) {
                int e = grid.edge(k);
                int to = grid.other(e, pin);
                if (grid.cable(e) < 0 && grid.device(e) == null && grid.leaves(e, pin) && !seen.containsKey(to)) {
                    seen.put(to, here + grid.lengthM(e));
                    open.add(to);
                }
            }
        }
    }

    /** Puts a proposed device into a cable: its least guarded ampacity. Arrivals are looked for anew by {@link #again}. */
    void propose(int edge, double leastAmpacityA) {
        passesA[edge] = Math.min(passesA[edge], leastAmpacityA);
    }

    void again() {
        arrivals = new Arrivals(grid, passesA, strong);
        limitedArrivals = new Arrivals(grid, passesA, limited);
    }

    /** By connection: whether the network falls apart without it. */
    boolean[] bridges() {
        return bridge;
    }

    Arrivals arrivals() {
        return arrivals;
    }

    /** What a cable may carry; endless where that is not known, so that any device will do. */
    double ampacityA(int edge) {
        Rating r = around.rating(grid.cable(edge));
        return r == null ? Double.MAX_VALUE : r.amps();
    }

    private boolean isBad(double guardedFromA, double ampacityA) {
        return guardedFromA > ampacityA; // rounding is allowed for where the devices are rated
    }

    /** Adds the ends of a cable that are not guarded, its {@code from} end first. */
    void bare(int edge, List<Bare> found) {
        int a = grid.connection(edge).a();
        int b = grid.connection(edge).b();
        if (a == b || Stretch.isBankJumper(grid, edge)) {
            return;
        }
        Exposure atA = exposure(edge, a);
        Exposure atB = exposure(edge, b);
        Bare one = judge(edge, a, atA);
        Bare two = judge(edge, b, atB);
        if (one == null && two == null && atA != null && atA.isUnsure()) {
            one = judge(edge, a, exactly(edge, a));
        }
        if (one == null && two == null && atB != null && atB.isUnsure()) {
            two = judge(edge, b, exactly(edge, b));
        }
        if (one != null) {
            found.add(one);
        }
        if (two != null) {
            found.add(two);
        }
    }

    private @Nullable Exposure exposure(int edge, int pin) {
        if (bridge[edge] && whole.behind(edge, pin, sources) < 0.5) {
            return null;
        }
        double ampacity = ampacityA(edge);
        boolean throughItself = false;
        for (Arrivals.Arrival a = arrivals.first(pin); a != null && isBad(a.passesA(), ampacity); a = a.next()) {
            if (a.via() != edge) {
                return new Exposure(a.entrance(), a);
            }
            throughItself = true;
        }
        if (throughItself) {
            return Exposure.UNSURE;
        }
        Arrivals.Arrival worst = limitedArrivals.first(pin);
        boolean some = worst != null && isBad(worst.passesA(), ampacity);
        boolean enough = some && limits[whole.rootOf(pin)] > ampacity * (1 + 1e-9);
        return enough ? exactly(edge, pin) : null;
    }

    private @Nullable Exposure exactly(int edge, int pin) {
        double ampacity = ampacityA(edge);
        Backward back = new Backward(grid, passesA, byPin, edge, pin, ampacity);
        if (back.strong() != null) {
            return new Exposure(back.strong(), null);
        }
        Entrance first = back.firstLimited();
        return first != null && back.limitedA() > ampacity * (1 + 1e-9) ? new Exposure(first, null) : null;
    }

    private @Nullable Bare judge(int edge, int pin, @Nullable Exposure exposure) {
        Entrance entrance = exposure == null ? null : exposure.entrance();
        if (exposure == null || entrance == null) {
            return null;
        }
        Stretch stretch = stretch(edge, pin);
        boolean soon = stretch.endsAtDevices() && !isBad(stretch.neededA(), ampacityA(edge));
        double permitted = Double.POSITIVE_INFINITY;
        double from = 0;
        List<Near> nearby = isNear.get(pin) ? near.getOrDefault(pin, List.of()) : List.of();
        for (int k = 0; k < nearby.size(); k++) {
            Near n = nearby.get(k);
            if (n.entrance().isStrong() || (!entrance.isStrong() && n.entrance().equals(entrance))) {
                double here =
                        distances.permittedM(n.entrance().kind(), n.entrance().component(), stretch);
                soon &= n.fromM() + stretch.greatestM() <= here + 1e-9;
                permitted = Math.min(permitted, here);
                from = Math.max(from, n.fromM());
            }
        }
        if (Double.isInfinite(permitted)) {
            permitted = distances.permittedM(pointKind(pin), entrance.component(), stretch);
            soon &= stretch.greatestM() <= permitted + 1e-9;
        }
        if (soon) {
            noteShort(edge, from + stretch.greatestM(), stretch);
            return null;
        }
        return new Bare(edge, pin, entrance, exposure.arrival(), stretch, permitted, from);
    }

    /** It does not depend on what is proposed. */
    private Stretch stretch(int edge, int pin) {
        Stretch known = stretches[grid.end(edge, pin)];
        if (known == null) {
            known = new Stretch(grid, search, pin, edge);
            stretches[grid.end(edge, pin)] = known;
        }
        return known;
    }

    private void noteShort(int edge, double metres, Stretch stretch) {
        if (distances.isConditional() && metres > Distances.SHORT_M + 1e-9 && stretch.onlyDevice() != null) {
            shortRuns.merge(edge, metres, Math::max);
        }
    }

    /** Cables, by connection, that a device further on guards by a permission with conditions: metres to it. */
    Map<Integer, Double> shortRuns() {
        return shortRuns;
    }

    /** What counts for the distance to the next device at any place that is no source's terminal. */
    SourceKind pointKind(int pin) {
        boolean dc = grid.plan().isDc(pin);
        return dc ? SourceKind.DC_POINT : SourceKind.AC_SOURCE;
    }
}
