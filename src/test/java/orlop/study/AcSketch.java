package orlop.study;

import orlop.drawing.Cable;
import orlop.drawing.Consumer;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.LoadBehaviour;
import orlop.drawing.Nature;
import orlop.drawing.Phase;

/** What {@link Sketch} needs besides for alternating current: its system S, impedances, loads with reactive power. */
final class AcSketch {
    private AcSketch() {}

    /** Single-phase or three-phase, rule set iec60364, faults without factors. */
    static Sketch of(Nature nature, double nominalV) {
        return Sketch.dc(nominalV).change(d -> d.with(ElectricalSystem.of("S", nature, nominalV)));
    }

    /** A cable of which resistance and reactance are stated: the loop, of three phases one conductor. */
    static void impedance(Sketch s, String id, String from, String to, double ohm, double reactanceOhm) {
        boolean three = s.drawing().systems().require("S").nature().isThreePhase();
        Cable w = Cable.of(id, Sketch.t(from), Sketch.t(to)).withLengthM(1.0).withAreaMm2(10.0);
        Cable.Measured m = three
                ? new Cable.Measured(null, null, ohm, reactanceOhm, null, null, null)
                : new Cable.Measured(ohm, reactanceOhm, null, null, null, null, null);
        s.change(d -> d.with(w.withMeasured(m)));
    }

    static Consumer.PlainLoad power(double watts, double var) {
        return new Consumer.PlainLoad(LoadBehaviour.POWER, watts, var, null, null, null, null, Phase.ALL, false);
    }

    static Consumer.PlainLoad current(double amps, double powerFactor) {
        return new Consumer.PlainLoad(
                LoadBehaviour.CURRENT, null, null, amps, powerFactor, null, null, Phase.ALL, false);
    }

    static Consumer.PlainLoad impedance(double ohm, double reactanceOhm) {
        return new Consumer.PlainLoad(
                LoadBehaviour.RESISTANCE, null, null, null, null, ohm, reactanceOhm, Phase.ALL, false);
    }
}
