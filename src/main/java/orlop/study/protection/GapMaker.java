package orlop.study.protection;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.network.Attachment;
import orlop.standards.SourceKind;
import orlop.study.Gap;
import orlop.study.model.CableModel;
import orlop.study.model.DeviceModel;
import orlop.study.model.Rating;

/** Puts a bare end into words: what is wrong there, and which device would do. */
final class GapMaker {
    private final Grid grid;
    private final Surroundings around;
    private final Proposer proposer;
    private final Map<String, Integer> company;

    GapMaker(Grid grid, Surroundings around, Proposer proposer) {
        this.grid = grid;
        this.around = around;
        this.proposer = proposer;
        company = sourcesOfSystems();
    }

    /**
     * @param weakest rating of the thinnest cable that the device has to guard; null if not known
     * @param pointKind what the place is where it is no source's terminal
     */
    Gap of(Ends.Bare b, @Nullable Rating weakest, SourceKind pointKind) {
        int cable = grid.cable(b.edge());
        CableModel w = grid.plan().cables().get(cable);
        boolean branched = isBranched(b.arrival());
        DeviceModel upstream = upstream(b.arrival());
        DeviceModel wrong = null;
        Gap.Kind kind = Gap.Kind.NO_DEVICE;
        DeviceModel last = b.stretch().endsAtDevices() ? b.stretch().onlyDevice() : null;
        if (upstream != null && !branched) {
            kind = Gap.Kind.TOO_LARGE;
            wrong = upstream;
        } else if (upstream == null && last != null) {
            boolean near = b.fromM() + b.stretch().greatestM() <= b.permittedM() + 1e-9;
            kind = near ? Gap.Kind.TOO_LARGE : Gap.Kind.TOO_FAR;
            wrong = last;
        }
        double fault = around.faultMaxA(b.pin());
        boolean lead = upstream == null && !branched && hasCompany(w.system().id());
        return new Gap(
                kind,
                w.cable().id(),
                grid.connection(b.edge()).a() == b.pin(),
                0,
                b.entrance().component().id(),
                Double.isFinite(fault) ? fault : null,
                Double.isInfinite(fault),
                wrong == null ? null : wrong.component().id(),
                around.conditions(),
                lead ? proposer.forLead(cable, b.pin(), weakest) : proposer.forCable(cable, b.pin(), weakest),
                b.permittedM(),
                b.fromM() + b.stretch().greatestM(),
                List.of());
    }

    private @Nullable DeviceModel upstream(Arrivals.@Nullable Arrival arrival) {
        for (Arrivals.Arrival a = arrival; a != null && !a.isStart(); a = a.before()) {
            DeviceModel device = grid.device(a.via());
            if (device != null) {
                return device;
            }
        }
        return null;
    }

    /** Whether a branch was passed since the last device. */
    private boolean isBranched(Arrivals.@Nullable Arrival arrival) {
        for (Arrivals.Arrival a = arrival; a != null; a = a.before()) {
            if (grid.degree(a.pin()) > 2) {
                return true;
            }
            if (a.isStart() || grid.device(a.via()) != null) {
                return false;
            }
        }
        return true;
    }

    /** Whether other sources feed the system too, so that what one gives at present says little of its duty. */
    private boolean hasCompany(String system) {
        return company.getOrDefault(system, 0) > 1;
    }

    private Map<String, Integer> sourcesOfSystems() {
        Map<String, Integer> count = new HashMap<>();
        for (Attachment t : grid.network().attachments()) {
            if (t.isSource() || t.role() == Attachment.Role.CONVERTER) {
                new HashSet<>(t.component().systems()).forEach(s -> count.merge(s, 1, Integer::sum));
            }
        }
        return count;
    }
}
