package orlop.study.model;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Conductors;
import orlop.drawing.ElectricalSystem;
import orlop.standards.AmpacityResult;
import orlop.standards.ConductorClass;
import orlop.standards.Finish;
import orlop.standards.Sourced;
import orlop.study.linear.Complex;

/** What the physics needs to know of a cable. Its area may still be open: it is an argument. */
public final class CableModel {
    /** Density of copper, kg per metre and mm². */
    private static final double COPPER_KG = 8.96e-3;

    private static final double REACTANCE_OHM_PER_M = 0.08e-3;

    private final Cable cable;
    private final ElectricalSystem system;
    private final double lengthM;
    private final double ambientC;
    private final Conductors conductors;
    private final AmpacityTable.Curve ampacity;
    private final StandardOhms sort;
    private final @Nullable Double statedOhm;
    private final double greatestC;
    private double memoArea = -1;
    private double memoOhm;

    CableModel(Cable cable, ElectricalSystem system, double lengthM, double ambientC, AmpacityTable ampacities) {
        this.cable = cable;
        this.system = system;
        this.lengthM = lengthM;
        this.ambientC = ambientC;
        conductors = conductors(cable, system);
        ampacity = ampacities.curve(cable, ambientC, loaded());
        Cable.Construction how = cable.construction();
        sort = StandardOhms.of(
                how.conductorClass() == 2 ? ConductorClass.CLASS_2 : ConductorClass.CLASS_5,
                how.finish() == orlop.drawing.Finish.TINNED ? Finish.TINNED : Finish.PLAIN);
        statedOhm = statedOhm();
        greatestC = Math.max(ambientC, how.insulationC());
    }

    private static Conductors conductors(Cable cable, ElectricalSystem system) {
        if (cable.conductors() != null) {
            return cable.conductors();
        }
        return switch (system.nature()) {
            case DC, PV -> Conductors.TWO_WIRE;
            case AC1 -> Conductors.L_N_PE;
            case AC3 -> Conductors.L3_PE;
            case AC3N -> Conductors.L3_N_PE;
        };
    }

    private int loaded() {
        return switch (conductors) {
            case SINGLE, PE -> 1;
            case TWO_WIRE, L_N, L_N_PE -> 2;
            case L3, L3_PE, L3_N, L3_N_PE -> 3;
        };
    }

    public Cable cable() {
        return cable;
    }

    public ElectricalSystem system() {
        return system;
    }

    /** One-way length; 0 where none is known. */
    public double lengthM() {
        return lengthM;
    }

    public Conductors conductors() {
        return conductors;
    }

    public double ambientC() {
        return ambientC;
    }

    /** Whether a measured or stated resistance overrules length and area. */
    public boolean stated() {
        return statedOhm != null;
    }

    private boolean threePhase() {
        return system.nature().isThreePhase();
    }

    /** Whether what counts is one conductor: of several equal phases, or one that is drawn by itself. */
    public boolean oneConductor() {
        boolean several = threePhase() && !Wires.isPair(conductors);
        return several || conductors == Conductors.SINGLE || conductors == Conductors.PE;
    }

    private @Nullable Double statedOhm() {
        Cable.Measured m = cable.measured();
        return stated(m.loopResistanceOhm(), m.conductorResistanceOhm(), m.returnResistanceOhm());
    }

    /** Of the loop, or of one conductor where that is what counts; null where it is not stated. */
    private @Nullable Double stated(@Nullable Double loop, @Nullable Double there, @Nullable Double back) {
        if (!threePhase() || (loop != null && !oneConductor())) {
            return loop;
        }
        return there == null || oneConductor() ? there : (Double) (there + (back == null ? there : back));
    }

    /**
     * Reactance of the loop, of three-phase cables of one conductor, all runs, in ohms: as stated, else 0.08 mΩ per
     * metre of conductor (IEC 60364-5-52, annex G). 0 in direct current.
     */
    public double reactanceOhm() {
        return system.nature().isDc() ? 0 : oneConductor() ? lineX() : lineX() + returnX();
    }

    private double lineX() {
        Cable.Measured m = cable.measured();
        if (threePhase() && m.conductorReactanceOhm() != null) {
            return m.conductorReactanceOhm();
        }
        Double loop = m.loopReactanceOhm();
        if (loop != null && !(threePhase() && oneConductor())) {
            return oneConductor() ? loop : loop / 2;
        }
        return REACTANCE_OHM_PER_M * lengthM / cable.parallel();
    }

    private double returnX() {
        Cable.Measured m = cable.measured();
        if (threePhase() && m.returnReactanceOhm() != null) {
            return m.returnReactanceOhm();
        }
        boolean stated = (threePhase() ? m.conductorReactanceOhm() : null) != null || m.loopReactanceOhm() != null;
        return stated ? lineX() : REACTANCE_OHM_PER_M * backM() / cable.parallel();
    }

    private double backM() {
        Double back = cable.returns().returnLengthM();
        return back == null ? lengthM : back;
    }

    /** Impedance of one line conductor, all runs. */
    public Complex line(double areaMm2, double conductorC) {
        return new Complex(lineOhm(areaMm2, conductorC), lineX());
    }

    /** Impedance of the conductor that leads back, the neutral, all runs: as stated, else like the line conductor. */
    public Complex back(double areaMm2, double conductorC) {
        return new Complex(returnOhm(areaMm2, conductorC), returnX());
    }

    private double lineOhm(double areaMm2, double conductorC) {
        Double stated = statedOhm;
        if (stated == null) {
            return at(ohm20(areaMm2, lengthM), conductorC);
        }
        Double own = threePhase() && cable.measured().loopResistanceOhm() == null
                ? cable.measured().conductorResistanceOhm()
                : null;
        return own != null ? own : oneConductor() ? stated : stated / 2;
    }

    private double returnOhm(double areaMm2, double conductorC) {
        Double own = threePhase() ? cable.measured().returnResistanceOhm() : null;
        if (own != null) {
            return own;
        }
        Double area = cable.returns().returnAreaMm2();
        return stated() ? lineOhm(areaMm2, conductorC) : at(ohm20(area == null ? areaMm2 : area, backM()), conductorC);
    }

    /** Whether a neutral or other return runs in it. */
    public boolean hasNeutral() {
        return switch (conductors) {
            case TWO_WIRE, L_N, L_N_PE, L3_N, L3_N_PE -> true;
            case SINGLE -> threePhase(); // one core for each conductor
            case L3, L3_PE, PE -> false;
        };
    }

    /**
     * Impedance of the protective conductor, all runs: its resistance as stated, else by its least area beside the
     * line conductor, the same up to 16 mm², then 16 mm², then half (IEC 60364-5-54, table 54.2, from memory).
     */
    public Complex protective(double areaMm2, double conductorC) {
        Double own = cable.measured().peResistanceOhm();
        if (own == null && !stated()) {
            double least = areaMm2 <= 16 ? areaMm2 : areaMm2 <= 35 ? 16 : areaMm2 / 2;
            own = at(ohm20(least, lengthM), conductorC);
        }
        return new Complex(own == null ? lineOhm(areaMm2, conductorC) : own, lineX());
    }

    private static double at(double ohm20, double conductorC) {
        return ohm20 * (1 + orlop.standards.Conductors.ALPHA_20_PER_K * (conductorC - 20));
    }

    /** How many conductors carry the current that is calculated: loss is as many times I²R. */
    public int phases() {
        return threePhase() ? 3 : 1;
    }

    /**
     * Resistance of the whole loop, all runs, in ohms; of three-phase cables, of one conductor: as stated, else from
     * area and conductor temperature.
     */
    public double loopOhm(double areaMm2, double conductorC) {
        Double stated = statedOhm;
        if (stated != null) {
            return stated;
        }
        if (areaMm2 != memoArea) {
            memoOhm = loopOhm20(areaMm2);
            memoArea = areaMm2;
        }
        return at(memoOhm, conductorC);
    }

    private double loopOhm20(double areaMm2) {
        double perKm = ohm20PerKm(areaMm2);
        double there = perKm * lengthM / 1_000 / cable.parallel();
        if (oneConductor()) {
            return there;
        }
        Double backArea = cable.returns().returnAreaMm2();
        double backPerKm = backArea == null ? perKm : ohm20PerKm(backArea);
        return there + backPerKm * backM() / 1_000 / cable.parallel();
    }

    private double ohm20(double areaMm2, double metres) {
        return ohm20PerKm(areaMm2) * metres / 1_000 / cable.parallel();
    }

    /** Of one conductor of one run. */
    private double ohm20PerKm(double areaMm2) {
        return sort.perKm(areaMm2);
    }

    /** Resistance at 20 °C of one conductor of one run in ohms per kilometre, with its source. */
    public Sourced tabulatedOhmPerKm(double areaMm2) {
        return sort.sourced(areaMm2);
    }

    /** Ampacity of one run, with the table's cell and all factors. */
    public AmpacityResult tabulated(double areaMm2) {
        return ampacity.at(areaMm2);
    }

    /** What it may carry with this area; empty where the tables have no figure that may govern. */
    public Optional<Rating> rating(double areaMm2) {
        return ampacity.rating(areaMm2, cable.parallel());
    }

    /** Whether the rule set has a figure that is doubted, and so may not govern. */
    public boolean doubted(double areaMm2) {
        return ampacity.at(areaMm2).carries().filter(c -> !c.mayGovern()).isPresent();
    }

    /**
     * Conductor temperature: as stated, else θ = θa + (θmax − θa)(I/Iz)², at most the insulation's rating, which is
     * also taken where no ampacity is known.
     */
    public double conductorC(@Nullable Rating rating, double currentA) {
        Double stated = cable.conductorC();
        if (stated != null) {
            return stated;
        }
        double most = greatestC;
        if (rating == null || !(rating.amps() > 0)) {
            return most;
        }
        double load = Math.min(1, Math.abs(currentA) / rating.amps());
        return ambientC + (most - ambientC) * load * load;
    }

    /** Mass of the copper of all conductors and runs. */
    public double copperKg(double areaMm2) {
        return areaMm2 * lengthM * conductors.count() * cable.parallel() * COPPER_KG;
    }

    /** Whether a device may stand further from the source, because the cable is in a sheath or conduit all its way. */
    public boolean sheathed() {
        return switch (cable.construction().laying()) {
            case SHEATHED, CONDUIT -> true;
            case FREE_AIR, BUNCHED -> false;
        };
    }

    /** The construction that the least mechanical area depends on. */
    public orlop.standards.Construction strength() {
        return cable.construction().laying() == orlop.drawing.Laying.SHEATHED || conductors.hasPe()
                ? orlop.standards.Construction.MULTICORE
                : orlop.standards.Construction.SINGLE_CORE;
    }
}
