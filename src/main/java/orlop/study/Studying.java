package orlop.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Words;
import orlop.network.Network;
import orlop.study.fault.AcFaults;
import orlop.study.fault.Faults;
import orlop.study.flow.Flow;
import orlop.study.model.CableModel;
import orlop.study.model.Notes;
import orlop.study.model.Operation;
import orlop.study.model.Plan;
import orlop.study.model.Rating;
import orlop.study.protection.Coverage;
import orlop.study.protection.Surroundings;
import orlop.study.sizing.Behind;
import orlop.study.sizing.FaultHeat;
import orlop.study.sizing.Runs;
import orlop.study.sizing.Sizing;
import orlop.study.working.Solved;

/** One study at work: networks, then areas and flows, then faults, then coverage, then the records. */
final class Studying {
    /** Kirchhoff's law holds at every point to this, or the network counts as not solved. */
    private static final double GREATEST_RESIDUAL_A = 1e-6;

    /** Thicker cables carry higher faults: so often are areas found anew. */
    private static final int BEARING_ROUNDS = 3;

    private final Drawing drawing;
    private final StudyOptions options;
    private final BooleanSupplier stale;
    private final Plan plan;
    private final List<OperatingCondition> conditions = new ArrayList<>();
    private final List<Operation> operations = new ArrayList<>();
    private final List<Faults> faults = new ArrayList<>();
    private final List<AcFaults> acFaults = new ArrayList<>();
    private @Nullable Operation allClosedOperation;
    private @Nullable Faults allClosed;
    private @Nullable Solved solved;

    Studying(Drawing drawing, StudyOptions options, BooleanSupplier stale) {
        this.drawing = drawing;
        this.options = options;
        this.stale = stale;
        plan = new Plan(drawing);
    }

    Study run() {
        drawing.conditions().values().forEach(conditions::add);
        if (conditions.isEmpty()) {
            conditions.add(
                    OperatingCondition.asDrawn("as-drawn", Words.english().text("study.condition.as-drawn")));
        }
        List<Network> networks = new ArrayList<>();
        List<OperatingCondition> drawn = List.copyOf(conditions);
        conditions.replaceAll(c -> Relays.settled(plan, c, stale));
        for (OperatingCondition c : conditions) {
            giveUpIfStale();
            Network network = Network.of(plan.numbering(), c, networks);
            networks.add(network);
            operations.add(new Operation(plan, network, c));
        }
        Network reach = Network.reach(plan.numbering(), networks);
        Behind behind = new Behind(plan, reach);
        Runs runs = new Runs(plan, reach, behind);
        Sizing sizing = new Sizing(plan, operations, behind, runs, stale);
        sizing.run();
        operations.forEach(o -> new Together(plan, o).noteSharing(plan.notes()));
        findFaults(sizing);
        FaultHeat heat = new FaultHeat(plan, runs, this::faultMaxA, this::faultMinA);
        for (int n = 0; n < BEARING_ROUNDS && sizing.bear(heat); n++) {
            findFaults(sizing);
        }
        Coverage coverage = new Coverage(plan, reach, new Around(sizing));
        noteDoubts(sizing);
        solved = new Solved(plan, conditions, operations, faults, acFaults, sizing, options.faultOhm());
        return records(sizing, coverage, drawn);
    }

    /** What {@link #run} has worked with. */
    Solved solved() {
        return Objects.requireNonNull(solved, "run first");
    }

    private void findFaults(Sizing sizing) {
        faults.clear();
        acFaults.clear();
        double[] areas = new double[plan.cables().size()];
        for (int i = 0; i < areas.length; i++) {
            areas[i] = sizing.areaMm2(i);
        }
        for (Operation o : operations) {
            giveUpIfStale();
            int alike = standsAs(o.network());
            faults.add(alike >= 0 ? faults.get(alike) : Faults.of(plan, o, areas, options.faultOhm(), stale));
            acFaults.add(alike >= 0 ? acFaults.get(alike) : new AcFaults(plan, o, areas, options.faultOhm(), stale));
        }
        closeAll(areas);
    }

    /** The condition done before in which every switch and every source stands as here; loads don't matter. */
    private int standsAs(Network network) {
        for (int i = 0; i < faults.size(); i++) {
            if (network.standsAs(operations.get(i).network())) {
                return i;
            }
        }
        return -1;
    }

    /** Faults with every source on and every switch closed that no interlock holds, unless a condition stands so. */
    private void closeAll(double[] areas) {
        OperatingCondition closed = AllClosed.after(drawing, conditions);
        if (closed != null) {
            allClosedOperation = new Operation(plan, Network.of(plan.numbering(), closed, List.of()), closed);
            allClosed = Faults.of(plan, allClosedOperation, areas, options.faultOhm(), stale);
        }
    }

    private double faultMaxA(int pin) {
        double most = Double.NaN;
        if (allClosed != null && allClosedOperation != null && !allClosedOperation.isAc(pin)) {
            most = allClosed.maxA(allClosedOperation.assembly().node(pin));
        }
        for (int i = 0; i < operations.size(); i++) {
            int node = operations.get(i).assembly().node(pin);
            boolean ac = operations.get(i).isAc(pin);
            double here = ac ? acFaults.get(i).maxA(node) : faults.get(i).maxA(node);
            most = Double.isNaN(most) || here > most ? here : most;
        }
        return most;
    }

    private double faultMinA(int pin) {
        double least = Double.NaN;
        for (int i = 0; i < operations.size(); i++) {
            double here = faultMinA(pin, i);
            least = !(least <= here) && !Double.isNaN(here) ? here : least;
        }
        return least;
    }

    /** In one condition; NaN where nothing feeds the pin in it. */
    private double faultMinA(int pin, int condition) {
        Operation o = operations.get(condition);
        int node = o.assembly().node(pin);
        boolean fed = o.network().feeding().feeds(pin);
        return !fed
                ? Double.NaN
                : o.isAc(pin)
                        ? acFaults.get(condition).minA(node)
                        : faults.get(condition).minA(node);
    }

    private void giveUpIfStale() {
        if (stale.getAsBoolean()) {
            throw new CancellationException("superseded");
        }
    }

    private Study records(Sizing sizing, Coverage coverage, List<OperatingCondition> drawn) {
        Map<String, Results> byCondition = new LinkedHashMap<>();
        Ids rows = new Ids(plan);
        List<SizedCable> sized = SizedCable.all(sizing, plan.cables().size());
        List<String> ids = conditions.stream().map(OperatingCondition::id).toList();
        for (int i = 0; i < conditions.size(); i++) {
            giveUpIfStale();
            Operation o = operations.get(i);
            Gatherer g =
                    new Gatherer(plan, o, faults.get(i), acFaults.get(i), sized, coverage, sizing.drops(i), ids, rows);
            OperatingCondition c = conditions.get(i);
            Notes notes = new Notes();
            boolean fine = troubles(o, c.id(), notes);
            ServiceNotes.into(notes, plan, o, c.id());
            g.noteUndivided(notes, c.id());
            Relays.note(notes, drawn.get(i), c, o, drawing);
            List<Remark> remarks = new ArrayList<>(plan.notes().all());
            remarks.addAll(notes.all());
            byCondition.put(
                    c.id(),
                    new Results(
                            c.id(),
                            c.title(),
                            fine && o.residualA() <= GREATEST_RESIDUAL_A,
                            o.residualA(),
                            g.points(),
                            g.cables(),
                            g.components(),
                            remarks));
        }
        Results governing = Governing.of(new ArrayList<>(byCondition.values()));
        return new Study(drawing, byCondition, governing, coverage.gaps(), sizing.copper());
    }

    /** Remarks on islands without operating point; true if there are none. */
    private boolean troubles(Operation o, String condition, Notes notes) {
        for (Flow.Trouble t : o.troubles()) {
            String place = o.network().points().get(t.node()).id();
            String item = componentAt(o.network(), t.node());
            if (t.contradiction()) {
                new Together(plan, o).noteContradiction(t, item, place, condition, notes);
            } else {
                notes.add(Remark.Kind.COLLAPSE, item, condition, "study.collapse", place);
            }
        }
        if (!o.settled()) {
            notes.add(Remark.Kind.CONTRADICTION, "", condition, "study.converter-loop");
        }
        return o.troubles().isEmpty() && o.settled();
    }

    private static String componentAt(Network network, int point) {
        for (int pin = 0; pin < network.pinCount(); pin++) {
            if (network.pointOf(pin) == point) {
                return network.componentOf(pin).id();
            }
        }
        return "";
    }

    private void noteDoubts(Sizing sizing) {
        for (int i = 0; i < plan.cables().size(); i++) {
            CableModel w = plan.cables().get(i);
            if (plan.calculates(w.system()) && sizing.rating(i) == null) {
                String key = w.doubted(sizing.areaMm2(i))
                        ? "study.not-calculated.ampacity-doubted"
                        : "study.not-calculated.ampacity";
                plan.notes()
                        .notCalculated(
                                w.cable().id(),
                                key,
                                w.cable().id(),
                                plan.rules().title());
            }
        }
        for (ElectricalSystem s : drawing.systems().values()) {
            if (!s.nature().isDc() && !(s.nominalV() > 0)) {
                drawing.components().stream()
                        .filter(c -> c.systems().contains(s.id()))
                        .findFirst()
                        .ifPresent(c -> noteAlternating(c, s));
            }
        }
    }

    private void noteAlternating(Component c, ElectricalSystem s) {
        plan.notes().notCalculated(c.id(), "study.not-calculated.ac", s.id());
    }

    /** What coverage asks of the rest. */
    private final class Around implements Surroundings {
        private final Sizing sizing;
        private final List<String> ids =
                conditions.stream().map(OperatingCondition::id).toList();

        Around(Sizing sizing) {
            this.sizing = sizing;
        }

        @Override
        public @Nullable Rating rating(int cable) {
            return sizing.rating(cable);
        }

        @Override
        public double designA(int cable) {
            return sizing.designA(cable);
        }

        @Override
        public double faultMaxA(int pin) {
            return Studying.this.faultMaxA(pin);
        }

        @Override
        public double faultMinA(int pin) {
            return Studying.this.faultMinA(pin);
        }

        @Override
        public double faultMinA(int pin, int condition) {
            return Studying.this.faultMinA(pin, condition);
        }

        @Override
        public double faultThroughA(int connection) {
            double most = allClosed == null ? Double.NaN : allClosed.throughA(connection);
            for (int i = 0; i < operations.size(); i++) {
                int pin = operations
                        .get(i)
                        .network()
                        .connections()
                        .get(connection)
                        .a();
                boolean ac = operations.get(i).isAc(pin);
                double here = ac
                        ? acFaults.get(i).throughA(connection)
                        : faults.get(i).throughA(connection);
                most = Double.isNaN(most) || here > most ? here : most;
            }
            return most;
        }

        @Override
        public List<String> conditions() {
            return ids;
        }

        @Override
        public boolean isOn(int condition, Component source) {
            OperatingCondition c = conditions.get(condition);
            return c.sourceOn(source.id()) && c.load(source.id()).running();
        }

        @Override
        public List<String> conditionsAbove(int connection, double amps) {
            if (allClosed != null && allClosedOperation != null) {
                FaultsOfOne closed = new FaultsOfOne(allClosedOperation, allClosed, null);
                if (closed.worstA(connection) > amps) {
                    return conditions();
                }
            }
            List<String> above = new ArrayList<>();
            for (int i = 0; i < operations.size(); i++) {
                FaultsOfOne own = new FaultsOfOne(operations.get(i), faults.get(i), acFaults.get(i));
                if (own.worstA(connection) > amps) {
                    above.add(conditions.get(i).id());
                }
            }
            return above.isEmpty() ? conditions() : above;
        }
    }
}
