package orlop.study.sizing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.ElectricalSystem;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Feeding;
import orlop.network.Network;
import orlop.study.model.LoadModel;
import orlop.study.model.Plan;
import orlop.study.model.SourceModel;

/** What lies behind a cable when every switch is closed: the rated current of the only load or charging source there. */
public final class Behind {
    private final double[] soleA;
    private final int[] far;

    public Behind(Plan plan, Network reach) {
        Feeding feeding = reach.feeding();
        int pins = reach.pinCount();
        int[] count = new int[pins];
        double[] amps = new double[pins];
        for (Attachment t : reach.attachments()) {
            boolean converter = t.role() == Attachment.Role.CONVERTER;
            hang(t.pin(), converter ? inputA(plan, t) : ratedA(plan, t), count, amps);
            if (converter) {
                hang(t.outputPin(), outputA(plan, t), count, amps);
            }
        }
        int[] order = feeding.order();
        for (int k = order.length - 1; k >= 0; k--) {
            int up = feeding.before(order[k]);
            if (up >= 0) {
                count[up] += count[order[k]];
                amps[up] += amps[order[k]];
            }
        }
        soleA = new double[plan.cables().size()];
        far = new int[soleA.length];
        java.util.Arrays.fill(far, -1);
        List<Connection> connections = reach.connections();
        for (int pin : order) {
            int via = feeding.via(pin);
            if (via >= 0 && connections.get(via).cable() != null) {
                int cable = reach.cableOf(via);
                soleA[cable] = count[pin] == 1 && Double.isFinite(amps[pin]) ? amps[pin] : 0;
                far[cable] = pin;
            }
        }
    }

    private static void hang(int pin, @Nullable Double ratedA, int[] count, double[] amps) {
        count[pin] += ratedA == null ? 2 : 1; // a battery is never "the only load"
        amps[pin] += ratedA == null ? 0 : ratedA;
    }

    private static @Nullable Double ratedA(Plan plan, Attachment t) {
        if (t.role() == Attachment.Role.VOLTAGE_SOURCE) {
            return null;
        }
        LoadModel load = plan.load(t.pin());
        SourceModel source = plan.source(t.pin());
        return load != null ? (Double) load.ratedA() : source != null ? (Double) source.limitA() : null;
    }

    /** What an inverter gives at most for ever: its direct-current leads are sized for that. */
    private static @Nullable Double alternatingVa(Component c) {
        if (c.particulars() instanceof Conversion.Inverter k) {
            return k.ratedVa();
        }
        return c.particulars() instanceof Conversion.InverterCharger k ? k.ratedVa() : null;
    }

    /** What a converter gives at most for ever: into alternating current its rating, not what it charges with. */
    private static @Nullable Double outputA(Plan plan, Attachment t) {
        ElectricalSystem system = plan.system(t.outputPin());
        if (system.nature().isDc()) {
            SourceModel out = plan.output(t.pin());
            return out == null ? null : (Double) out.limitA();
        }
        Double ratedVa = alternatingVa(t.component());
        double volts = Plan.phaseV(system) * Plan.phases(system);
        return ratedVa != null && volts > 0 ? (Double) (ratedVa / volts) : null;
    }

    private static @Nullable Double inputA(Plan plan, Attachment t) {
        SourceModel out = plan.output(t.pin());
        ElectricalSystem system = plan.system(t.pin());
        double volts = Plan.phaseV(system) * Plan.phases(system);
        Double ratedVa = alternatingVa(t.component());
        double efficiency = plan.efficiency(t.component(), plan.system(t.outputPin()));
        if (ratedVa != null && volts > 0) {
            return ratedVa / efficiency / volts;
        }
        if (out == null || !(volts > 0) || !Double.isFinite(out.third())) {
            return null;
        }
        return out.third() * out.first() / efficiency / volts;
    }

    /** Rated current of the only load or charging source behind a cable; 0 where there is none or more than one. */
    public double soleA(int cable) {
        return soleA[cable];
    }

    /** The pin at the end of a cable that is further from the source; −1 where it closes a ring or nothing feeds it. */
    public int farPin(int cable) {
        return far[cable];
    }
}
