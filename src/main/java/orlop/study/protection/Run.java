package orlop.study.protection;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.network.Connection;
import orlop.study.model.DeviceModel;

/**
 * Everything that hangs unguarded on one end of a cable, until devices stop it. It is followed no further than what is
 * asked of it needs: the first open end tells that devices don't close it, and one device beyond the greatest distance
 * that is ever permitted, with a second one, that it is neither within the distance nor the affair of one device.
 */
final class Run {
    private record Step(int pin, int via, double distanceM) {}

    private final Coverage coverage;
    private double greatestM;
    private boolean endsOpen;
    private boolean sheathed = true;
    private final double withinM;
    private int deviceCount;
    private @Nullable DeviceModel first;

    /**
     * @param pin where the run starts
     * @param edge the cable by which it leaves
     * @param withinM distances beyond this are all alike to the asker
     */
    Run(Coverage coverage, int pin, int edge, double withinM) {
        this.coverage = coverage;
        this.withinM = withinM;
        Set<Integer> seen = new HashSet<>();
        Deque<Step> open = new ArrayDeque<>();
        seen.add(pin);
        cross(new Step(pin, -1, 0), edge, seen, open);
        while (!open.isEmpty() && !decided()) {
            spread(open.remove(), seen, open);
        }
    }

    private boolean decided() {
        return endsOpen || (deviceCount > 1 && greatestM > withinM);
    }

    private void spread(Step s, Set<Integer> seen, Deque<Step> open) {
        boolean ahead = false;
        for (int e : coverage.at(s.pin())) {
            if (e == s.via() || !Walk.passes(coverage, s.via(), e, s.pin())) {
                continue;
            }
            ahead = true;
            DeviceModel device = coverage.device(e);
            if (device != null) {
                deviceCount++;
                first = first == null ? device : first;
                greatestM = Math.max(greatestM, s.distanceM());
            } else {
                cross(s, e, seen, open);
            }
        }
        endsOpen |= !ahead;
    }

    private void cross(Step s, int edge, Set<Integer> seen, Deque<Step> open) {
        Connection c = coverage.network().connections().get(edge);
        if (c.cable() != null) {
            sheathed &= coverage.plan()
                    .cables()
                    .get(coverage.network().cableOf(edge))
                    .sheathed();
        }
        int other = c.other(s.pin());
        if (seen.add(other)) {
            open.add(new Step(other, edge, s.distanceM() + c.lengthM()));
        }
    }

    /** Whether every way ends at a device, as far as that matters. */
    boolean endsAtDevices() {
        return !endsOpen && deviceCount > 0;
    }

    /** Distance from the start to the furthest of the first devices; beyond the bound, to one that lies beyond it. */
    double greatestM() {
        return greatestM;
    }

    /** The device, if there is exactly one. */
    @Nullable
    DeviceModel onlyDevice() {
        return deviceCount == 1 ? first : null;
    }

    /** Whether every cable of it, as far as it was followed, lies in a sheath or conduit. */
    boolean sheathed() {
        return sheathed;
    }
}
