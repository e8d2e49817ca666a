package orlop.study.sizing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
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
        for (int i = 0; i < connectionOf.length; i++) {
            int far = behind.farPin(i);
            boolean dc = plan.cables().get(i).system().nature().isDc();
            heads.add(
                    far < 0
                            ? null
                            : head(reach.connections().get(connectionOf[i]).other(far), dc));
        }
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
