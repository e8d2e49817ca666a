package orlop.study.model;

import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.FaultMethod;
import orlop.drawing.Quantity;
import orlop.drawing.Unit;
import orlop.study.linear.Complex;

/** Turns the particulars of transformers into models. */
final class Transformers {
    /** Short-circuit voltage and load loss of small transformers, percent; engineering estimates. */
    private static final double SHORT_CIRCUIT_PERCENT = 4;

    private static final double LOAD_LOSS_PERCENT = 2;

    private final FaultMethod method;
    private final Notes notes;

    Transformers(FaultMethod method, Notes notes) {
        this.method = method;
        this.notes = notes;
    }

    /** Null, with a remark, where its rating or a nominal voltage is not known. */
    @Nullable
    TransformerModel of(Component c, Conversion.Transformer t, ElectricalSystem first, ElectricalSystem second) {
        boolean turned = second.nature().isThreePhase() && !first.nature().isThreePhase();
        if (t.ratedKva() == null || !(first.nominalV() > 0) || !(second.nominalV() > 0) || turned) {
            notes.notCalculated(c.id(), "study.not-calculated.transformer", c.id());
            return null;
        }
        double ratedVa = t.ratedKva() * 1_000;
        double percent = t.shortCircuitPercent() != null ? t.shortCircuitPercent() : SHORT_CIRCUIT_PERCENT;
        double lossW = t.loadLossW() != null ? t.loadLossW() : LOAD_LOSS_PERCENT / 100 * ratedVa;
        if (t.shortCircuitPercent() == null || t.loadLossW() == null) {
            notes.assumed(
                    c.id(),
                    "study.assumed.transformer",
                    c.id(),
                    new Quantity(percent, Unit.PERCENT),
                    new Quantity(lossW, Unit.WATT));
        }
        double base = second.nominalV() * second.nominalV() / ratedVa;
        double r = Math.min(lossW / ratedVa, percent / 100);
        double x = Math.sqrt(percent * percent / 10_000 - r * r);
        double factor = method == FaultMethod.PLAIN ? 1 : 0.95 * AcSources.mostFactor(second) / (1 + 0.6 * x);
        double noLoadW = t.noLoadLossW() == null ? 0 : t.noLoadLossW();
        double ratio = second.nominalV() / first.nominalV();
        return new TransformerModel(ratio, new Complex(r, x).times(base), factor, noLoadW, t.separate());
    }
}
