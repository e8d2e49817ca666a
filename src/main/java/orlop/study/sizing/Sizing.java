package orlop.study.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import orlop.standards.Conductors;
import orlop.study.GovernedBy;
import orlop.study.model.CableModel;
import orlop.study.model.DeviceModel;
import orlop.study.model.Operation;
import orlop.study.model.Plan;
import orlop.study.model.Rating;

/**
 * Finds the areas of cables that are left to us and the least area that would do for every cable.
 *
 * <p>An area that is left open starts at the least for strength and only ever grows, over all conditions: by ampacity
 * and by the device at the head of its run, then by voltage drop. Where the path to a load is too thin, the cable grows
 * that saves most volts per kilogram of copper.
 */
public final class Sizing {
    private static final List<Double> SERIES = Conductors.published().standardAreasMm2();
    private static final int ROUNDS = 40;

    private final Plan plan;
    private final List<Operation> operations;
    private final Behind behind;
    private final Runs runs;
    private final BooleanSupplier stale;
    private final int count;
    private final double[] area;
    private final @Nullable Rating[] rating;
    private final double[] designA;
    private final int[] designCondition;
    private final double[] dropArea;
    private final int[] dropCondition;
    private final boolean[] unfit;
    private final double[] leastForAmpacity;
    private final double[] leastForDevice;

    public Sizing(Plan plan, List<Operation> operations, Behind behind, Runs runs, BooleanSupplier stale) {
        this.plan = plan;
        this.operations = operations;
        this.behind = behind;
        this.runs = runs;
        this.stale = stale;
        count = plan.cables().size();
        area = new double[count];
        rating = new Rating[count];
        designA = new double[count];
        designCondition = new int[count];
        dropArea = new double[count];
        dropCondition = new int[count];
        unfit = new boolean[count];
        leastForAmpacity = new double[count];
        leastForDevice = new double[count];
        for (int i = 0; i < count; i++) {
            Double installed = plan.cables().get(i).cable().areaMm2();
            setArea(i, installed != null ? installed : ceiling(mechanical(i)));
        }
    }

    /** Grows what may grow until everything fits, then finds the least areas. */
    public void run() {
        solveAll();
        for (int round = 0; round < ROUNDS && growForCurrent(); round++) {
            solveAll();
        }
        for (int round = 0; round < ROUNDS && growForDrop(); round++) {
            solveAll();
            growForCurrent();
        }
        new LeastDropAreas(this).find();
        for (int i = 0; i < count; i++) {
            leastForAmpacity[i] = forAmpacity(i);
            leastForDevice[i] = forDevice(i);
        }
    }

    private void solveAll() {
        for (int c = 0; c < operations.size(); c++) {
            operations.get(c).solve(area, rating, stale);
            for (int i = 0; i < count; i++) {
                double amps = Math.abs(operations.get(c).currentOfCable(i));
                if (amps > designA[i] * (1 + 1e-9)) {
                    designA[i] = amps;
                    designCondition[i] = c;
                }
            }
        }
        if (operations.isEmpty()) {
            return;
        }
        for (int i = 0; i < count; i++) {
            designA[i] = Math.max(designA[i], behind.soleA(i));
        }
    }

    private void setArea(int i, double areaMm2) {
        area[i] = areaMm2;
        rating[i] = plan.cables().get(i).rating(areaMm2).orElse(null);
    }

    private boolean isAuto(int i) {
        return plan.cables().get(i).cable().auto();
    }

    private boolean growForCurrent() {
        boolean grew = false;
        for (int i = 0; i < count; i++) {
            if (isAuto(i) && !unfit[i]) {
                double least = Math.max(forAmpacity(i), forDevice(i));
                if (least == Double.POSITIVE_INFINITY) {
                    unfit[i] = true;
                    setArea(i, SERIES.get(SERIES.size() - 1));
                    grew = true;
                } else if (least > area[i]) {
                    setArea(i, least);
                    grew = true;
                }
            }
        }
        return grew;
    }

    /** One step for each load over its limit, then everything is solved anew: so no area overshoots. */
    private boolean growForDrop() {
        boolean grew = false;
        for (Operation operation : operations) {
            List<LoadDrop> over = new ArrayList<>(LoadDrop.all(plan, operation, behind));
            over.removeIf(d -> !(d.excessV() > 1e-9));
            over.sort(Comparator.comparingDouble(d -> -d.excessV() / Math.max(1e-9, d.nominalV())));
            DropGrowth growth = new DropGrowth(plan, operation, area, operation::activeCurrentOfCable, this::isAuto);
            for (LoadDrop d : over) {
                grew |= take(growth, growth.cure(d.cables(), d.excessV(), 1));
            }
            grew |= growWhereCollapsed(operation);
        }
        return grew;
    }

    private boolean take(DropGrowth growth, Set<Integer> cables) {
        for (int cable : cables) {
            setArea(cable, growth.area(cable));
        }
        return !cables.isEmpty();
    }

    private boolean growWhereCollapsed(Operation operation) {
        if (operation.troubles().isEmpty()) {
            return false;
        }
        NominalCurrents nominal = new NominalCurrents(plan, operation);
        DropGrowth growth = new DropGrowth(plan, operation, area, nominal::amps, this::isAuto);
        boolean grew = false;
        for (NominalCurrents.Starved load : nominal.starved()) {
            grew |= take(growth, growth.cure(load.cables(), load.excessV(), Integer.MAX_VALUE));
        }
        return grew;
    }

    // ---- least areas -----------------------------------------------------------------------------------------

    /** The least standard area of the series that is no less; infinite beyond its end. */
    static double ceiling(double areaMm2) {
        for (double a : SERIES) {
            if (a >= areaMm2 * (1 - 1e-9)) {
                return a;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** The next standard area; infinite at the end. */
    static double next(double areaMm2) {
        for (double a : SERIES) {
            if (a > areaMm2 * (1 + 1e-9)) {
                return a;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** The least standard area for strength. */
    double mechanical(int i) {
        return ceiling(
                plan.rules().leastAreaMm2(plan.cables().get(i).strength()).value());
    }

    /** The least standard area that carries the design current. */
    double forAmpacity(int i) {
        CableModel w = plan.cables().get(i);
        if (w.stated() && w.cable().areaMm2() == null) {
            return 0; // its resistance is given, its area of no consequence
        }
        boolean any = false;
        for (double a : SERIES) {
            Rating r = w.rating(a).orElse(null);
            any |= r != null;
            if (r != null && r.amps() >= designA[i] * (1 - 1e-9)) {
                return a;
            }
        }
        return any ? Double.POSITIVE_INFINITY : 0;
    }

    /** The least standard area that the device at the head of its run guards; 0 where there is no such device. */
    double forDevice(int i) {
        DeviceModel device = runs.head(i);
        if (device == null || device.ratingA() == null) {
            return 0;
        }
        CableModel w = plan.cables().get(i);
        boolean any = false;
        for (double a : SERIES) {
            Rating r = w.rating(a).orElse(null);
            any |= r != null;
            if (r != null && device.guards(plan.rules(), r.amps())) {
                return a;
            }
        }
        return any ? Double.POSITIVE_INFINITY : 0;
    }

    Plan plan() {
        return plan;
    }

    List<Operation> operations() {
        return operations;
    }

    Behind behind() {
        return behind;
    }

    double[] areas() {
        return area;
    }

    void needsForDrop(int cable, double areaMm2, int condition) {
        if (areaMm2 > dropArea[cable]) {
            dropArea[cable] = areaMm2;
            dropCondition[cable] = condition;
        }
    }

    /** Area calculated with: installed, or the least that does. */
    public double areaMm2(int cable) {
        return area[cable];
    }

    /** Whether no standard area would do. */
    public boolean nothingFits(int cable) {
        return leastAreaMm2(cable) == Double.POSITIVE_INFINITY;
    }

    /** What it may carry; null where it is not known. */
    public @Nullable Rating rating(int cable) {
        return rating[cable];
    }

    /** What it is sized for. */
    public double designA(int cable) {
        return designA[cable];
    }

    /** Least standard area that would do in every condition; infinite if none would. */
    public double leastAreaMm2(int cable) {
        double forCurrent = Math.max(leastForAmpacity[cable], leastForDevice[cable]);
        double least = Math.max(Math.max(forCurrent, mechanical(cable)), dropArea[cable]);
        return isAuto(cable) && !unfit[cable] ? Math.max(least, area[cable]) : least;
    }

    /** What asks for the least area. */
    public GovernedBy governedBy(int cable) {
        double least = leastAreaMm2(cable);
        if (least == Double.POSITIVE_INFINITY) {
            return GovernedBy.NOTHING_FITS;
        }
        if (leastForAmpacity[cable] >= least && least > mechanical(cable)) {
            return GovernedBy.AMPACITY;
        }
        if (leastForDevice[cable] >= least && least > mechanical(cable)) {
            return GovernedBy.DEVICE;
        }
        return least > mechanical(cable) ? GovernedBy.DROP : GovernedBy.MECHANICAL;
    }

    /** Number of the condition that asks for the least area; −1 where it does not depend on one. */
    public int governingCondition(int cable) {
        return switch (governedBy(cable)) {
            case AMPACITY -> designA[cable] > behind.soleA(cable) ? designCondition[cable] : -1;
            case DROP -> dropCondition[cable];
            default -> -1;
        };
    }
}
