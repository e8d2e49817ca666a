package orlop.study.sizing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.network.Connection;
import orlop.network.Feeding;
import orlop.network.Network;
import orlop.study.model.DeviceModel;
import orlop.study.model.Plan;

/** The device at the head of each cable's own run: towards the source, with no branch in between. */
public final class Runs {
    private static final int LONGEST = 200;

    private final Network network;
    private final int[] ends; // how many connections end at a pin
    private final List<@Nullable DeviceModel> heads = new ArrayList<>();
    private final List<@Nullable DeviceModel> clears = new ArrayList<>();
    private final int[] near;
    private final int[] far;

    public Runs(Plan plan, Network reach, Behind behind) {
        network = reach;
        ends = new int[reach.pinCount()];
        int[] connectionOf = new int[plan.cables().size()];
        java.util.Arrays.fill(connectionOf, -1);
        for (int i = 0; i < reach.connections().size(); i++) {
            Connection c = reach.connections().get(i);
            ends[c.a()]++;
            ends[c.b()]++;
            if (c.cable() != null) {
                connectionOf[reach.cableOf(i)] = i;
            }
        }
        near = new int[connectionOf.length];
        far = new int[connectionOf.length];
        @Nullable Component[] before = devicesBefore();
        for (int i = 0; i < connectionOf.length; i++) {
            far[i] = behind.farPin(i);
            near[i] = far[i] < 0 ? -1 : reach.connections().get(connectionOf[i]).other(far[i]);
            boolean dc = plan.cables().get(i).system().nature().isDc();
            heads.add(near[i] < 0 ? null : head(near[i], dc));
            Component device = near[i] < 0 ? null : before[near[i]];
            clears.add(device == null ? null : DeviceModel.of(device, dc));
        }
    }

    /** By pin, the last device against overcurrent on its feeding path. */
    private @Nullable Component[] devicesBefore() {
        @Nullable Component[] before = new Component[network.pinCount()];
        for (int pin : network.feeding().order()) {
            int up = network.feeding().before(pin);
            Component through = up < 0
                    ? null
                    : network.connections().get(network.feeding().via(pin)).device();
            boolean guards = through != null && DeviceModel.of(through, true) != null;
            before[pin] = guards ? through : up < 0 ? null : before[up];
        }
        return before;
    }

    /** The device that clears a fault on the cable: the last one before it, branches or not; null if there is none. */
    @Nullable
    DeviceModel clears(int cable) {
        return clears.get(cable);
    }

    /** The pin at its end towards the source; −1 where it closes a ring or nothing feeds it. */
    int nearPin(int cable) {
        return near[cable];
    }

    /** The pin at its other end. */
    int farPin(int cable) {
        return far[cable];
    }

    private @Nullable DeviceModel head(int nearPin, boolean dc) {
        Feeding feeding = network.feeding();
        int pin = nearPin;
        for (int n = 0; n < LONGEST && pin >= 0 && ends[pin] <= 2; n++) {
            int via = feeding.via(pin);
            if (via < 0) {
                return null;
            }
            Connection c = network.connections().get(via);
            DeviceModel device = c.device() == null ? null : DeviceModel.of(c.device(), dc);
            if (device != null) {
                return device;
            }
            pin = c.other(pin);
        }
        return null;
    }

    /** Null where no device stands at the head of the cable's run. */
    public @Nullable DeviceModel head(int cable) {
        return heads.get(cable);
    }
}
