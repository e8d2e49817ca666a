package orlop.study;

import java.util.List;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Extras;
import orlop.drawing.FaultMethod;
import orlop.drawing.Kind;
import orlop.drawing.Ledger;
import orlop.drawing.Link;
import orlop.drawing.LoadBehaviour;
import orlop.drawing.LoadState;
import orlop.drawing.Nature;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Particulars;
import orlop.drawing.Phase;
import orlop.drawing.Place;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Protection;
import orlop.drawing.Source;
import orlop.drawing.Switching;
import orlop.drawing.TerminalRef;
import orlop.drawing.Vessel;

/** Builds drawings for tests in a few words. */
public final class Sketch {
    private Drawing drawing;

    private Sketch(double nominalV, String ruleSet, FaultMethod method) {
        drawing = Drawing.empty("sketch").with(ElectricalSystem.of("S", Nature.DC, nominalV));
        Vessel v = drawing.vessel();
        drawing = drawing.withVessel(
                new Vessel(v.name(), "", ruleSet, 30, 50, method, null, null, "", "", "", Extras.NONE));
    }

    /** A two-wire system, rule set iec60364, faults without factors. */
    public static Sketch dc(double nominalV) {
        return new Sketch(nominalV, "iec60364", FaultMethod.PLAIN);
    }

    public static Sketch dc(double nominalV, String ruleSet) {
        return new Sketch(nominalV, ruleSet, FaultMethod.PLAIN);
    }

    public static Sketch dc(double nominalV, String ruleSet, FaultMethod method) {
        return new Sketch(nominalV, ruleSet, method);
    }

    public Drawing drawing() {
        return drawing;
    }

    public Study study() {
        return Study.of(drawing);
    }

    public Sketch change(java.util.function.UnaryOperator<Drawing> edit) {
        drawing = edit.apply(drawing);
        return this;
    }

    public Sketch add(String id, Particulars p) {
        return add(id, p, "S");
    }

    public Sketch add(String id, Particulars p, String... systems) {
        drawing = drawing.with(Component.of(id, p, Place.at("1", 10, 10), List.of(systems)));
        return this;
    }

    public Sketch system(String id, double nominalV) {
        drawing = drawing.with(ElectricalSystem.of(id, Nature.DC, nominalV));
        return this;
    }

    public Sketch bar(String id) {
        return add(id, (Distribution.Busbar) Kind.BUSBAR.defaults());
    }

    public Sketch bar(String id, String system) {
        return add(id, (Distribution.Busbar) Kind.BUSBAR.defaults(), system);
    }

    public Sketch supply(String id, double emfV, double ohm) {
        return add(id, new Source.Supply(emfV, 0, ohm, 0, false));
    }

    public Sketch power(String id, double watts) {
        return add(id, load(LoadBehaviour.POWER, watts));
    }

    public Sketch current(String id, double amps) {
        return add(id, load(LoadBehaviour.CURRENT, amps));
    }

    public Sketch resistance(String id, double ohm) {
        return add(id, load(LoadBehaviour.RESISTANCE, ohm));
    }

    public static Consumer.PlainLoad load(LoadBehaviour b, double value) {
        return new Consumer.PlainLoad(
                b,
                b == LoadBehaviour.POWER ? value : null,
                null,
                b == LoadBehaviour.CURRENT ? value : null,
                null,
                b == LoadBehaviour.RESISTANCE ? value : null,
                null,
                Phase.ALL,
                false);
    }

    public Sketch fuse(String id, String family, double ratingA) {
        return add(id, new Protection.Fuse(family, ratingA, null, null, 0.0, Poles.POSITIVE));
    }

    public Sketch isolator(String id, Position position) {
        return add(id, new Switching.Isolator(null, 0.0, Poles.POSITIVE, position));
    }

    public static TerminalRef t(String terminal) {
        return TerminalRef.parse(terminal, "terminal");
    }

    public Sketch link(String from, String to) {
        drawing = drawing.with(Link.of(t(from), t(to)));
        return this;
    }

    public Sketch link(String from, String to, double lengthM) {
        Link l = Link.of(t(from), t(to));
        drawing = drawing.with(new Link(l.id(), l.from(), l.to(), lengthM, null, Extras.NONE));
        return this;
    }

    public Sketch cable(String id, String from, String to, double lengthM, double areaMm2) {
        drawing = drawing.with(Cable.of(id, t(from), t(to)).withLengthM(lengthM).withAreaMm2(areaMm2));
        return this;
    }

    public Sketch auto(String id, String from, String to, double lengthM) {
        drawing = drawing.with(Cable.of(id, t(from), t(to)).withLengthM(lengthM));
        return this;
    }

    /** A cable whose whole loop has this resistance. */
    public Sketch ohm(String id, String from, String to, double loopOhm) {
        Cable w = Cable.of(id, t(from), t(to)).withLengthM(1.0).withAreaMm2(10.0);
        Cable.Measured m = new Cable.Measured(loopOhm, null, null, null, null, null, null);
        drawing = drawing.with(w.withMeasured(m));
        return this;
    }

    public Sketch condition(String id) {
        drawing = drawing.with(OperatingCondition.asDrawn(id, ""));
        return this;
    }

    private Sketch with(
            OperatingCondition c, Ledger<LoadState> loads, Ledger<String> sources, Ledger<String> switches) {
        drawing = drawing.with(new OperatingCondition(c.id(), c.name(), loads, sources, switches, Extras.NONE));
        return this;
    }

    public Sketch load(String condition, String load, boolean running, double simultaneity) {
        OperatingCondition c = drawing.conditions().require(condition);
        return with(
                c,
                c.loads().with(load, new LoadState(running, simultaneity, 1, Extras.NONE)),
                c.sources(),
                c.switches());
    }

    public Sketch source(String condition, String source, String state) {
        OperatingCondition c = drawing.conditions().require(condition);
        return with(c, c.loads(), c.sources().with(source, state), c.switches());
    }

    public Sketch position(String condition, String device, String position) {
        OperatingCondition c = drawing.conditions().require(condition);
        return with(c, c.loads(), c.sources(), c.switches().with(device, position));
    }
}
