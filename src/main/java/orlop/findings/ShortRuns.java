package orlop.findings;

import java.util.List;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.standards.TimeCurrentBand;
import orlop.study.ComponentResult;
import orlop.study.Results;
import orlop.study.TerminalResult;
import orlop.study.model.DeviceModel;

/** Machines behind a device that run for minutes at most: a device carries more than its rating for so long. */
final class ShortRuns {
    /**
     * A device of which no least time is tabulated carries, for this share of the time within which it surely opens, what
     * is below the current that surely opens it: common practice, no source.
     */
    private static final double SHARE_OF_OPENING = 0.01;

    private final Case c;
    private final List<Component> machines;

    ShortRuns(Case c) {
        this.c = c;
        machines = c.drawing().components().stream()
                .filter(k -> k.particulars() instanceof Consumer.ShortTimeMachine)
                .toList();
    }

    /** Whether the device carries what is beyond its rating as long as the short-time machines behind it run. */
    boolean carries(DeviceModel device, Results r, double amps) {
        Double ratedA = device.ratingA();
        double shortA = 0;
        double longestS = 0;
        for (Component k : machines) {
            ComponentResult result = r.components().get(k.id());
            if (result == null || !(k.particulars() instanceof Consumer.ShortTimeMachine m)) {
                continue;
            }
            double own = result.feedingPath().contains(device.component().id()) ? current(result) : 0;
            shortA += own;
            longestS = own > 0 ? Math.max(longestS, 60 * m.runMinutes()) : longestS;
        }
        return ratedA != null && longestS > 0 && amps - shortA <= ratedA && holds(device, ratedA, amps, longestS);
    }

    private static double current(ComponentResult result) {
        double most = 0;
        for (TerminalResult t : result.terminals()) {
            Double amps = t.currentA();
            most = amps == null ? most : Math.max(most, Math.abs(amps));
        }
        return most;
    }

    private static boolean holds(DeviceModel device, double ratedA, double amps, double seconds) {
        if (device.family().isEmpty()) {
            return false;
        }
        TimeCurrentBand band = new TimeCurrentBand(device.family().get(), ratedA);
        Double operatesA = device.operatesAtA();
        if (band.notBeforeS(amps) >= seconds || operatesA == null) {
            return band.notBeforeS(amps) >= seconds;
        }
        boolean unlisted = !band.hasLeastTimes() && amps < operatesA;
        return unlisted && band.surelyByS(operatesA) * SHARE_OF_OPENING >= seconds;
    }

    /** Whether nothing but such machines is behind the device, so that a cable's design current is theirs. */
    boolean only(DeviceModel device, double amps) {
        for (Results r : c.study().byCondition().values()) {
            if (carries(device, r, amps)) {
                return true;
            }
        }
        return false;
    }
}
