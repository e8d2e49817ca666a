package orlop.study.protection;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.network.Connection;
import orlop.study.Gap;
import orlop.study.model.CableModel;
import orlop.study.model.DeviceModel;
import orlop.study.model.Rating;

/** Walks a zone from one entrance and notes what it does not guard. */
final class Walk {
    /**
     * Where the walk stands.
     *
     * @param pin at which pin
     * @param via the connection it came by, −1 at the start
     * @param distanceM from the entrance along what is not guarded
     * @param branched whether a branch was passed since the entrance
     */
    private record Step(int pin, int via, double distanceM, boolean branched) {}

    private final Coverage coverage;
    private final Coverage.Entrance entrance;
    private final Set<Long> seen = new HashSet<>();
    private final Deque<Step> open = new ArrayDeque<>();

    Walk(Coverage coverage, Coverage.Entrance entrance) {
        this.coverage = coverage;
        this.entrance = entrance;
    }

    void run() {
        go(new Step(entrance.pin(), -1, 0, false));
        while (!open.isEmpty()) {
            Step s = open.remove();
            boolean branched = s.branched() || coverage.at(s.pin()).length > 2;
            for (int e : coverage.at(s.pin())) {
                if (e != s.via() && passes(coverage, s.via(), e, s.pin()) && coverage.device(e) == null) {
                    on(new Step(s.pin(), s.via(), s.distanceM(), branched), e);
                }
            }
        }
    }

    /** Whether current can go on by {@code next}: not from way to way of a changeover, not against a diode. */
    static boolean passes(Coverage coverage, int via, int next, int pin) {
        Connection c = coverage.network().connections().get(next);
        if (c.kind() == Connection.Kind.DIODE) {
            return c.a() == pin;
        }
        if (c.kind() != Connection.Kind.WAY || via < 0) {
            return true;
        }
        Connection came = coverage.network().connections().get(via);
        return came.kind() != Connection.Kind.WAY || !came.item().equals(c.item());
    }

    private void on(Step s, int edge) {
        Connection c = coverage.network().connections().get(edge);
        double distance = s.distanceM() + c.lengthM();
        if (c.cable() == null) {
            go(new Step(c.other(s.pin()), edge, distance, s.branched()));
            return;
        }
        int cable = coverage.network().cableOf(edge);
        Rating rating = coverage.around().rating(cable);
        if (entrance.guards(coverage.plan(), rating)) {
            coverage.guarded(cable, entrance);
            go(new Step(c.other(s.pin()), edge, 0, s.branched()));
        } else {
            unguarded(s, edge, cable, rating);
        }
    }

    private void go(Step s) {
        boolean viaWay =
                s.via() >= 0 && coverage.network().connections().get(s.via()).kind() == Connection.Kind.WAY;
        if (seen.add(2L * s.pin() + (viaWay ? 1 : 0))) {
            open.add(s);
        }
    }

    private void unguarded(Step s, int edge, int cable, @Nullable Rating rating) {
        double from = entrance.device() == null ? s.distanceM() : 0;
        Run run = new Run(coverage, s.pin(), edge, coverage.greatestPermittedM(entrance.kind()) + 1e-9 - from);
        CableModel w = coverage.plan().cables().get(cable);
        double permitted = coverage.permittedM(entrance.kind(), run.sheathed());
        if (run.endsAtDevices() && from + run.greatestM() <= permitted + 1e-9) {
            return;
        }
        boolean atFrom = coverage.network().connections().get(edge).a() == s.pin();
        DeviceModel tooFar = entrance.device() == null && run.endsAtDevices() ? run.onlyDevice() : null;
        Gap.Kind kind = tooFar != null ? Gap.Kind.TOO_FAR : Gap.Kind.NO_DEVICE;
        DeviceModel wrong = tooFar;
        if (entrance.device() != null && !s.branched()) {
            kind = Gap.Kind.TOO_LARGE;
            wrong = entrance.device();
        }
        double fault = coverage.around().faultMaxA(s.pin());
        coverage.add(new Gap(
                kind,
                w.cable().id(),
                atFrom,
                0,
                entrance.source(),
                Double.isFinite(fault) ? fault : null,
                wrong == null ? null : wrong.component().id(),
                coverage.around().conditionOf(entrance.source()),
                entrance.device() == null && !s.branched() && coverage.hasCompany(w.system())
                        ? coverage.proposer().forLead(cable, s.pin(), rating)
                        : coverage.proposer().forCable(cable, s.pin(), rating)));
        branchesBehind(s, edge, cable, rating);
    }

    /** With the missing device in place, which branches behind it would it not guard? */
    private void branchesBehind(Step s, int edge, int cable, @Nullable Rating rating) {
        if (entrance.device() != null || rating == null) {
            return;
        }
        Connection c = coverage.network().connections().get(edge);
        DeviceModel virtual =
                coverage.proposer().virtual(c.theCable(), coverage.around().designA(cable), rating);
        new Walk(
                        coverage,
                        new Coverage.Entrance(
                                c.other(s.pin()),
                                coverage.pointKind(s.pin()),
                                virtual,
                                false,
                                entrance.source(),
                                entrance.mostA()))
                .runBeyond(edge);
    }

    private void runBeyond(int edge) {
        Connection c = coverage.network().connections().get(edge);
        int back = c.other(entrance.pin());
        seen.add(2L * back);
        seen.add(2L * back + 1);
        go(new Step(entrance.pin(), edge, 0, false));
        while (!open.isEmpty()) {
            Step s = open.remove();
            boolean branched = s.branched() || coverage.at(s.pin()).length > 2;
            for (int e : coverage.at(s.pin())) {
                if (e != s.via() && passes(coverage, s.via(), e, s.pin()) && coverage.device(e) == null) {
                    onBranch(new Step(s.pin(), s.via(), 0, branched), e);
                }
            }
        }
    }

    private void onBranch(Step s, int edge) {
        if (s.branched()) {
            on(s, edge);
        } else {
            Connection c = coverage.network().connections().get(edge);
            go(new Step(c.other(s.pin()), edge, 0, false)); // the same run: its device is proposed for its thinnest
        }
    }
}
