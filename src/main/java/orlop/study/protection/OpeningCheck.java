package orlop.study.protection;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.network.Zones;
import orlop.study.Gap;
import orlop.study.model.DeviceModel;
import orlop.study.model.Rating;

/**
 * Whether a device opens on the lowest fault current of the cables behind it, up to the next devices: that current has to
 * reach the device's conventional operating current (IEC 60364-4-43 434.5.2 in its simplest form; from memory).
 *
 * <p>Judged in each condition in which the device is the only way for current into its zone: else it bears only a share,
 * which changes as the others open. Where several feed a zone in every condition, the least current of all together has
 * to open the smallest of them. Silent where nothing but limited sources lies before it and the cable carries what they
 * hold.
 */
final class OpeningCheck {
    private final Grid grid;
    private final Surroundings around;
    private final Proposer proposer;
    private final Zones zones;
    private final List<Feeds> feeds = new ArrayList<>(); // by condition
    private final double[] leastOperatesA; // by zone, of the devices that feed it

    /** Who feeds which zone while these sources are on. */
    private static final class Feeds {
        private final Zones zones;
        private final int[] waysIn; // by zone: devices with sources beyond, and sources

        Feeds(Grid grid, boolean[] cut, List<Entrance> on) {
            int[] strong = new int[grid.pins()];
            double[] limited = new double[grid.pins()];
            for (Entrance e : on) {
                strong[e.pin()] += e.isStrong() ? 1 : 0;
                limited[e.pin()] += e.isStrong() ? 0 : e.mostA();
            }
            zones = new Zones(grid.network(), cut, strong, limited);
            waysIn = new int[zones.count()];
            for (Entrance e : on) {
                waysIn[zones.zoneOf(e.pin())]++;
            }
            for (int e = 0; e < cut.length; e++) {
                if (cut[e]) {
                    int a = grid.connection(e).a();
                    int b = grid.connection(e).b();
                    waysIn[zones.zoneOf(a)] += isFed(e, a) ? 1 : 0;
                    waysIn[zones.zoneOf(b)] += isFed(e, b) ? 1 : 0;
                }
            }
        }

        boolean isFed(int edge, int pin) {
            return zones.strongBeyond(edge, pin) > 0 || zones.limitedBeyond(edge, pin) > 0;
        }

        int waysIn(int pin) {
            return waysIn[zones.zoneOf(pin)];
        }

        boolean isLimited(int edge, int pin) {
            return zones.strongBeyond(edge, pin) == 0;
        }
    }

    /** A current into a fault that the device has to open on, and whether nothing but limited sources give it. */
    private record Least(double amps, boolean limited) {}

    OpeningCheck(Grid grid, Surroundings around, Proposer proposer, Zones zones, List<Entrance> entrances) {
        this.grid = grid;
        this.around = around;
        this.proposer = proposer;
        this.zones = zones;
        boolean[] cut = new boolean[grid.count()];
        for (int e = 0; e < cut.length; e++) {
            cut[e] = grid.device(e) != null;
        }
        Map<List<Entrance>, Feeds> alike = new HashMap<>();
        for (int i = 0; i < around.conditions().size(); i++) {
            int condition = i;
            List<Entrance> on = entrances.stream()
                    .filter(e -> around.isOn(condition, e.component()))
                    .toList();
            feeds.add(alike.computeIfAbsent(on, o -> new Feeds(grid, cut, o)));
        }
        leastOperatesA = new double[zones.count()];
        Arrays.fill(leastOperatesA, Double.POSITIVE_INFINITY);
        for (int e = 0; e < cut.length; e++) {
            DeviceModel device = grid.device(e);
            Double operatesA = device == null ? null : device.operatesAtA();
            if (operatesA != null) {
                lower(e, grid.connection(e).a(), operatesA);
                lower(e, grid.connection(e).b(), operatesA);
            }
        }
    }

    private void lower(int edge, int pin, double operatesA) {
        if (isFedAnywhere(edge, pin)) {
            int zone = zones.zoneOf(pin);
            leastOperatesA[zone] = Math.min(leastOperatesA[zone], operatesA);
        }
    }

    /** The worst cable behind a device that it would not open for; null if there is none. */
    @Nullable
    Gap of(int edge, DeviceModel device) {
        Gap a = behind(edge, device, grid.connection(edge).a());
        return a != null ? a : behind(edge, device, grid.connection(edge).b());
    }

    private @Nullable Gap behind(int edge, DeviceModel device, int pin) {
        Double operatesA = device.operatesAtA();
        if (operatesA == null || !isFedAnywhere(edge, pin)) {
            return null;
        }
        boolean shared = feeds.stream().allMatch(f -> f.waysIn(pin) != 1);
        if (shared && operatesA > leastOperatesA[zones.zoneOf(pin)]) {
            return null;
        }
        Gap worst = null;
        Set<Integer> seen = new HashSet<>();
        Deque<Integer> open = new ArrayDeque<>();
        seen.add(pin);
        open.add(pin);
        while (!open.isEmpty()) {
            int at = open.remove();
            for (int k = grid.start(at); k < grid.start(at + 1); k++) {
                int e = grid.edge(k);
                int far = grid.other(e, at);
                if (grid.device(e) == null && grid.leaves(e, at) && seen.add(far)) {
                    open.add(far);
                    Gap here = grid.cable(e) < 0 ? null : judge(device, operatesA, e, far, edge, pin, shared);
                    worst = worse(worst, here);
                }
            }
        }
        return worst;
    }

    private boolean isFedAnywhere(int edge, int pin) {
        return feeds.stream().anyMatch(f -> f.isFed(edge, pin));
    }

    /** The least current of the conditions in which the device has to open on it; null if there is none. */
    private @Nullable Least least(int far, int edge, int pin, boolean shared) {
        Least least = null;
        for (int i = 0; i < feeds.size(); i++) {
            Feeds f = feeds.get(i);
            double amps = f.isFed(edge, pin) && (shared || f.waysIn(pin) == 1) ? around.faultMinA(far, i) : Double.NaN;
            if (!Double.isNaN(amps) && (least == null || amps < least.amps())) {
                least = new Least(amps, f.isLimited(edge, pin));
            }
        }
        return least;
    }

    private static @Nullable Gap worse(@Nullable Gap a, @Nullable Gap b) {
        if (a == null || b == null || a.faultA() == null || b.faultA() == null) {
            return a == null ? b : a;
        }
        return b.faultA() < a.faultA() ? b : a;
    }

    private @Nullable Gap judge(
            DeviceModel device, double operatesA, int edge, int far, int at, int pin, boolean shared) {
        int cable = grid.cable(edge);
        Least lowest = least(far, at, pin, shared);
        if (lowest == null) {
            return null;
        }
        double least = lowest.amps();
        boolean limited = lowest.limited();
        Rating rating = around.rating(cable);
        if (!(least < operatesA)) {
            return null;
        }
        boolean guards = rating == null || device.guards(grid.plan().rules(), rating.amps());
        if (!guards || (limited && rating != null && least <= rating.amps() * (1 + 1e-9))) {
            return null;
        }
        double most = Math.min(least / (operatesA / rated(device)), rating == null ? least : rating.amps());
        double design = around.designA(cable);
        double highest = around.faultMaxA(far);
        return new Gap(
                Gap.Kind.DOES_NOT_OPEN,
                grid.connection(edge).item(),
                grid.connection(edge).a() == far,
                0,
                "",
                least,
                false,
                device.component().id(),
                around.conditions(),
                design > most
                        ? null
                        : proposer.among(
                                grid.plan().cables().get(cable).system(),
                                design,
                                most,
                                Double.isNaN(highest) ? 0 : highest),
                Double.NaN,
                Double.NaN,
                List.of());
    }

    private static double rated(DeviceModel device) {
        return device.ratingA() == null ? 1 : device.ratingA();
    }
}
