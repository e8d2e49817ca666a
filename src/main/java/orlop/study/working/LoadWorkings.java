package orlop.study.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Unit;
import orlop.network.Attachment;
import orlop.network.Network;
import orlop.standards.RuleLimit;
import orlop.study.model.Operation;
import orlop.study.sizing.LoadDrop;

/** How the drop to a load came about in one condition. */
final class LoadWorkings {
    private final Solved solved;
    private final int condition;
    private final Operation operation;

    LoadWorkings(Solved solved, int condition) {
        this.solved = solved;
        this.condition = condition;
        operation = solved.operations().get(condition);
    }

    /** Nothing for what is no load, or is not fed. */
    Map<Figure, List<Working>> all(String tag) {
        Network network = operation.network();
        for (LoadDrop d : solved.sizing().drops(condition)) {
            Attachment t = network.attachments().get(d.attachment());
            if (t.component().id().equals(tag)
                    && !operation.delivery().isDoubtful(t.pin())
                    && Double.isFinite(d.percent())) {
                return Map.of(Figure.DROP_TO_LOAD, List.of(drop(d, t)));
            }
        }
        return Map.of();
    }

    private Working drop(LoadDrop d, Attachment t) {
        List<Working> inputs = new ArrayList<>();
        double flowing = flowing(d, inputs, t);
        double own = d.dropV() - flowing;
        String sum = "ΔU";
        if (Math.abs(own) > 1e-12) {
            sum = "(ΔU + ΔI · R)";
            double ohm = own / d.missingA();
            inputs.add(Working.given(Say.what("missing"), "ΔI", d.missingA(), Unit.AMPERE, Say.from("own-circuit")));
            inputs.add(Working.given(Say.what("own-ohm"), "R", ohm, Unit.OHM, null));
        }
        inputs.add(Working.given(
                Say.what("nominal", t.component().systemOf("1")), "Un", d.nominalV(), Unit.VOLT, Say.from("drawn")));
        Working limit = limit(d, t);
        if (limit != null) {
            inputs.add(limit);
        }
        return Working.found(
                Say.what("drop-to-load"), "u", "100 · " + sum + " / Un", d.percent(), Unit.PERCENT, inputs);
    }

    /** The drop by what flows in this condition; piece by piece where the pieces make it up. */
    private double flowing(LoadDrop d, List<Working> inputs, Attachment t) {
        Working way = new WayDrops(operation).to(t.pin());
        double own = 0;
        if (d.missingA() != 0) {
            for (int cable : d.cables()) {
                own += solved.sizing().isSole(cable) ? d.missingA() * operation.ohm(cable) : 0;
            }
        }
        double flowing = d.dropV() - own;
        boolean same = Math.abs(way.value().value() - flowing) <= 1e-9 * Math.max(1, Math.abs(flowing));
        inputs.add(same ? way : Working.given(Say.what("drop-across"), "ΔU", flowing, Unit.VOLT, Say.from("network")));
        return same ? way.value().value() : flowing;
    }

    private @Nullable Working limit(LoadDrop d, Attachment t) {
        if (d.limitPercent() == null) {
            return null;
        }
        var system = solved.plan().system(t.pin());
        Working limit = Working.given(Say.what("limit"), "u max", d.limitPercent(), Unit.PERCENT, Say.from("drawn"));
        boolean vital = t.component().particulars() instanceof orlop.drawing.Consumer k && k.vital();
        boolean stated = (vital ? system.vitalDropPercent() : system.otherDropPercent()) != null;
        if (stated) {
            return limit;
        }
        RuleLimit rule = solved.plan().rules().dropPercent(system.nature().isDc(), system.nominalV(), vital);
        return limit.because(Say.from(rule)).firm(rule.provenance());
    }
}
