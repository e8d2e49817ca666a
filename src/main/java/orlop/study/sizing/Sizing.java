package orlop.study.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import orlop.study.CableSizing;
import orlop.study.Copper;
import orlop.study.GovernedBy;
import orlop.study.model.CableModel;
import orlop.study.model.DeviceModel;
import orlop.study.model.Operation;
import orlop.study.model.Plan;
import orlop.study.model.PointCurrents;
import orlop.study.model.Rating;

/**
 * Finds the areas of cables that are left to us and the least area that would do for every cable.
 *
 * <p>An area that is left open starts at what strength, the device at the head of its run and nominal currents ask for
 * and grows, over all conditions: by voltage drop, where copper saves most, and by ampacity. A load whose limit no areas
 * could keep makes nothing grow. What was thickened for drop is then chosen anew so that it takes least copper, where
 * {@link CopperChoice} can tell. Installed areas are facts and stay.
 */
public final class Sizing {
    private static final int ROUNDS = 40;
    /** Rounds in which a path grows by one step only, so that no area overshoots; then faster. */
    private static final int CAREFUL_ROUNDS = 16;
    /** The start: below what flows even where a source stands far above its nominal voltage. */
    private static final double START = 0.8;

    private final Plan plan;
    private final List<Operation> operations;
    private final Behind behind;
    private final BooleanSupplier stale;
    private final int count;
    private final double[] area;
    private final @Nullable Rating[] rating;
    private final double[] designA;
    private final int[] designCondition;
    private final boolean[] unfit;
    private final Needs needs;
    private final List<NominalCurrents> nominal = new ArrayList<>();
    private final Least least;
    private final CopperSearch copper;
    private final List<@Nullable List<LoadDrop>> drops = new ArrayList<>(); // by operation, at its operating point

    public Sizing(Plan plan, List<Operation> operations, Behind behind, Runs runs, BooleanSupplier stale) {
        this.plan = plan;
        this.operations = operations;
        this.behind = behind;
        this.stale = stale;
        count = plan.cables().size();
        area = new double[count];
        rating = new Rating[count];
        designA = new double[count];
        designCondition = new int[count];
        unfit = new boolean[count];
        needs = new Needs(plan, runs, i -> designA[i]);
        operations.forEach(o -> {
            nominal.add(new NominalCurrents(plan, o));
            drops.add(null);
        });
        least = new Least(this);
        copper = new CopperSearch(this);
    }

    /** Grows what may grow until everything fits, then finds the least areas. */
    public void run() {
        start();
        solveAll();
        boolean grew = true;
        for (int n = 0; n < ROUNDS && grew; n++) {
            growUntilDropsHold();
            grew = growForCurrent();
            if (grew) {
                solveAll();
            }
        }
        copper.search();
        least.find();
    }

    /** Asks for areas that bear the heat of faults; true if some area had to grow, and everything was found anew. */
    public boolean bear(FaultHeat heat) {
        boolean more = false;
        for (int i = 0; i < count; i++) {
            boolean raised = needs.raiseFault(i, heat.leastAreaMm2(i, rating[i]));
            more |= raised && isAuto(i) && needs.fault(i) > area[i];
        }
        if (more) {
            run();
        }
        return more;
    }

    private void start() {
        Arrays.fill(unfit, false);
        for (int i = 0; i < count; i++) {
            designA[i] = behind.soleA(i);
            for (NominalCurrents n : nominal) {
                designA[i] = Math.max(designA[i], START * n.amps(i));
            }
            Double installed = plan.cables().get(i).cable().areaMm2();
            if (installed != null) {
                setArea(i, installed);
            } else {
                setArea(i, needs.mechanical(i));
                growForCurrent(i);
            }
        }
    }

    void solveAll() {
        Arrays.fill(designA, 0);
        for (int c = 0; c < operations.size(); c++) {
            operations.get(c).solve(area, rating, stale);
            drops.set(c, null);
            PointCurrents within = joins(operations.get(c)) ? new PointCurrents(plan, operations.get(c)) : null;
            for (int i = 0; i < count; i++) {
                double amps = Math.abs(currentA(operations.get(c), i, within));
                if (amps > designA[i] * (1 + 1e-9)) {
                    designA[i] = amps;
                    designCondition[i] = c;
                }
            }
        }
        for (int i = 0; i < count; i++) {
            designA[i] = Math.max(designA[i], behind.soleA(i));
        }
    }

    /** Whether some cable has no resistance at all: its length is not known yet. */
    private boolean joins(Operation operation) {
        for (int i = 0; i < count; i++) {
            int edge = operation.connectionOfCable(i);
            if (edge >= 0 && operation.network().connections().get(edge).contracted()) {
                return true;
            }
        }
        return false;
    }

    private static double currentA(Operation operation, int i, @Nullable PointCurrents within) {
        double amps = operation.currentOfCable(i);
        int edge = operation.connectionOfCable(i);
        return Double.isNaN(amps) && edge >= 0 && within != null ? within.of(edge) : amps;
    }

    void setArea(int i, double areaMm2) {
        area[i] = areaMm2;
        rating[i] = plan.cables().get(i).rating(areaMm2).orElse(null);
    }

    boolean isAuto(int i) {
        return plan.cables().get(i).cable().auto();
    }

    private boolean growForCurrent() {
        boolean grew = false;
        for (int i = 0; i < count; i++) {
            grew |= isAuto(i) && growForCurrent(i);
        }
        return grew;
    }

    private boolean growForCurrent(int i) {
        double asked = unfit[i] ? 0 : needs.all(i);
        if (asked == Double.POSITIVE_INFINITY) {
            unfit[i] = true;
            setArea(i, Series.greatestMm2());
            return true;
        }
        if (asked > area[i]) {
            setArea(i, asked);
            return true;
        }
        return false;
    }

    private void growUntilDropsHold() {
        int steps = 1;
        for (int round = 0; round < ROUNDS && growForDrop(steps); round++) {
            solveAll();
            steps = round < CAREFUL_ROUNDS ? 1 : Math.min(1_000, 2 * steps);
        }
    }

    /** Some steps for each load over its limit, then everything is solved anew. */
    private boolean growForDrop(int steps) {
        boolean grew = false;
        for (int c = 0; c < operations.size(); c++) {
            Operation operation = operations.get(c);
            List<LoadDrop> over = new ArrayList<>(drops(c));
            over.removeIf(d -> !(d.excessV() > 1e-9));
            over.sort(Comparator.comparingDouble(d -> -d.excessV() / Math.max(1e-9, d.nominalV())));
            DropGrowth growth = new DropGrowth(plan, operation, area, operation::activeCurrentOfCable, this::isAuto);
            for (LoadDrop d : over) {
                if (growth.canSave(d.cables(), d.dropV() - d.budgetV())) {
                    grew |= take(growth, growth.cure(d.cables(), d.excessV(), steps));
                }
            }
            grew |= !operation.troubles().isEmpty() && growWhereCollapsed(operation, nominal.get(c));
        }
        return grew;
    }

    private boolean take(DropGrowth growth, Set<Integer> cables) {
        for (int cable : cables) {
            setArea(cable, growth.area(cable));
        }
        return !cables.isEmpty();
    }

    private boolean growWhereCollapsed(Operation operation, NominalCurrents currents) {
        DropGrowth growth = new DropGrowth(plan, operation, area, currents::amps, this::isAuto);
        boolean grew = false;
        for (NominalCurrents.Starved load : currents.starved(plan, operation)) {
            if (growth.canSave(load.cables(), load.excessV())) {
                grew |= take(growth, growth.cure(load.cables(), load.excessV(), Integer.MAX_VALUE));
            }
        }
        return grew;
    }

    // ---- for the rest of the room ----------------------------------------------------------------------------

    Plan plan() {
        return plan;
    }

    List<Operation> operations() {
        return operations;
    }

    /** The drops to all loads of an operation, as it was solved last. */
    public List<LoadDrop> drops(int operation) {
        List<LoadDrop> known = drops.get(operation);
        if (known == null) {
            known = LoadDrop.all(plan, operations.get(operation), behind);
            drops.set(operation, known);
        }
        return known;
    }

    Behind behind() {
        return behind;
    }

    double[] areas() {
        return area;
    }

    Needs needs() {
        return needs;
    }

    boolean unfit(int cable) {
        return unfit[cable];
    }

    /** Number of the condition in which most flows; −1 where the rating of the only load behind asks for more. */
    public int designCondition(int cable) {
        return designA[cable] > behind.soleA(cable) ? designCondition[cable] : -1;
    }

    // ---- results ---------------------------------------------------------------------------------------------

    /** Area calculated with: installed, or the least that does. */
    public double areaMm2(int cable) {
        return area[cable];
    }

    /** Whether the area is left to us and no standard area would do. */
    public boolean nothingFits(int cable) {
        return unfit[cable];
    }

    /** What it may carry; null where it is not known. */
    public @Nullable Rating rating(int cable) {
        return rating[cable];
    }

    /** What it is sized for. */
    public double designA(int cable) {
        return designA[cable];
    }

    /** Least standard area with which it would do in every condition, all others as they are; infinite if none would. */
    public double leastAreaMm2(int cable) {
        return least.areaMm2(cable);
    }

    /** What asks for the least area. */
    public GovernedBy governedBy(int cable) {
        return least.governedBy(cable);
    }

    /** Number of the condition that asks for the least area; −1 where it does not depend on one. */
    public int governingCondition(int cable) {
        return least.governingCondition(cable);
    }

    /** The least standard area that one thing asks for, all others left out; 0 for nothing, infinite if none would do. */
    public double neededMm2(int cable, GovernedBy by) {
        return least.neededMm2(cable, by);
    }

    /** The next standard area below; 0 where there is none. */
    public static double thinnerMm2(double areaMm2) {
        double found = 0;
        for (double a : Series.areasMm2()) {
            found = a < areaMm2 ? a : found;
        }
        return found;
    }

    /** Number of the condition in which the voltage drop asks for most; −1 where it asks for nothing. */
    public int dropCondition(int cable) {
        return least.dropCondition(cable);
    }

    /** Whether it has one load or charging source alone behind it. */
    public boolean isSole(int cable) {
        return behind.soleA(cable) > 0;
    }

    /** The device at the head of the cable's run; null where there is none. */
    public @Nullable DeviceModel headDevice(int cable) {
        return needs.head(cable);
    }

    /** What there is to say besides. */
    public CableSizing sizing(int cable) {
        CableModel w = plan.cables().get(cable);
        boolean fits = least.butDrop(cable) < Double.POSITIVE_INFINITY;
        CableSizing said = new CableSizing(
                w.cable().auto() ? copper.leastMm2(cable) : null,
                least.togetherMm2(cable),
                least.fromMemory(cable),
                fits || !plan.calculates(w.system()) ? null : needs.parallel(cable),
                needs.faultMm2(cable));
        return said.equals(CableSizing.NONE) ? CableSizing.NONE : said; // most say nothing: they share one
    }

    /** Copper in the cables of which we chose the area. */
    public Copper copper() {
        return copper.result();
    }
}
