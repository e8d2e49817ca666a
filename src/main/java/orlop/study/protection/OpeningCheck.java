package orlop.study.protection;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
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
 * <p>Judged where the device is the only way for current into its zone: elsewhere it bears only a share, which changes as
 * the others open. Silent where nothing but limited sources lies before it and the cable carries what they hold.
 */
final class OpeningCheck {
    private final Grid grid;
    private final Surroundings around;
    private final Proposer proposer;
    private final Zones zones;
    private final int[] waysIn; // by zone: devices with sources beyond, and sources

    OpeningCheck(Grid grid, Surroundings around, Proposer proposer, Zones zones, List<Entrance> entrances) {
        this.grid = grid;
        this.around = around;
        this.proposer = proposer;
        this.zones = zones;
        waysIn = new int[zones.count()];
        for (Entrance e : entrances) {
            waysIn[zones.zoneOf(e.pin())]++;
        }
        for (int e = 0; e < grid.count(); e++) {
            if (grid.device(e) != null) {
                count(e, grid.connection(e).a());
                count(e, grid.connection(e).b());
            }
        }
    }

    private void count(int edge, int pin) {
        waysIn[zones.zoneOf(pin)] += isFed(edge, pin) ? 1 : 0;
    }

    private boolean isFed(int edge, int pin) {
        return zones.strongBeyond(edge, pin) > 0 || zones.limitedBeyond(edge, pin) > 0;
    }

    /** The worst cable behind a device that it would not open for; null if there is none. */
    @Nullable
    Gap of(int edge, DeviceModel device) {
        Gap a = behind(edge, device, grid.connection(edge).a());
        return a != null ? a : behind(edge, device, grid.connection(edge).b());
    }

    private @Nullable Gap behind(int edge, DeviceModel device, int pin) {
        Double operatesA = device.operatesAtA();
        boolean dc = grid.plan().isDc(pin);
        if (operatesA == null || !dc || !isFed(edge, pin) || waysIn[zones.zoneOf(pin)] != 1) {
            return null;
        }
        boolean limited = zones.strongBeyond(edge, pin) == 0;
        Gap worst = null;
        Set<Integer> seen = new HashSet<>();
        Deque<Integer> open = new ArrayDeque<>();
        seen.add(pin);
        open.add(pin);
        while (!open.isEmpty()) {
            int at = open.remove();
            for (int e : grid.at(at)) {
                int far = grid.other(e, at);
                if (grid.device(e) == null && grid.leaves(e, at) && seen.add(far)) {
                    open.add(far);
                    Gap here = grid.cable(e) < 0 ? null : judge(device, operatesA, e, far, limited);
                    worst = worse(worst, here);
                }
            }
        }
        return worst;
    }

    private static @Nullable Gap worse(@Nullable Gap a, @Nullable Gap b) {
        if (a == null || b == null || a.faultA() == null || b.faultA() == null) {
            return a == null ? b : a;
        }
        return b.faultA() < a.faultA() ? b : a;
    }

    private @Nullable Gap judge(DeviceModel device, double operatesA, int edge, int far, boolean limited) {
        int cable = grid.cable(edge);
        double least = around.faultMinA(far);
        Rating rating = around.rating(cable);
        boolean guards = rating == null || device.guards(grid.plan().rules(), rating.amps());
        if (!(least < operatesA) || !guards || (limited && rating != null && least <= rating.amps() * (1 + 1e-9))) {
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
