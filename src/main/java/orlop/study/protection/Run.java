package orlop.study.protection;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.network.Connection;
import orlop.study.model.DeviceModel;

/** Everything that hangs unguarded on one end of a cable, until devices stop it. */
final class Run {
    private record Step(int pin, int via, double distanceM) {}

    private final Coverage coverage;
    private double greatestM;
    private boolean endsOpen;
    private boolean sheathed = true;
    private int deviceCount;
    private @Nullable DeviceModel first;

    /**
     * @param pin where the run starts
     * @param edge the cable by which it leaves
     */
    Run(Coverage coverage, int pin, int edge) {
        this.coverage = coverage;
        Set<Integer> seen = new HashSet<>();
        Deque<Step> open = new ArrayDeque<>();
        seen.add(pin);
        cross(new Step(pin, -1, 0), edge, seen, open);
        while (!open.isEmpty()) {
            spread(open.remove(), seen, open);
        }
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

    /** Whether every way ends at a device. */
    boolean endsAtDevices() {
        return !endsOpen && deviceCount > 0;
    }

    /** Distance from the start to the furthest of the first devices. */
    double greatestM() {
        return greatestM;
    }

    /** The device, if there is exactly one. */
    @Nullable
    DeviceModel onlyDevice() {
        return deviceCount == 1 ? first : null;
    }

    /** Whether every cable of it lies in a sheath or conduit. */
    boolean sheathed() {
        return sheathed;
    }
}
