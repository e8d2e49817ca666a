package orlop.study.working;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Unit;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.study.CableResult;
import orlop.study.model.CableModel;
import orlop.study.model.Operation;

/** How the figures of one cable came about in one condition. */
final class CableWorkings {
    private final Solved solved;
    private final Operation operation;
    private final Network network;
    private final int condition;
    private final int cable;
    private final CableModel w;
    private final CableResult result;
    private final ConductorWorkings conductor;
    private final double areaMm2;

    CableWorkings(Solved solved, int condition, int cable, CableResult result) {
        this.solved = solved;
        this.condition = condition;
        this.cable = cable;
        this.result = result;
        operation = solved.operations().get(condition);
        network = operation.network();
        w = solved.plan().cables().get(cable);
        conductor = new ConductorWorkings(w);
        areaMm2 = solved.sizing().areaMm2(cable);
    }

    Map<Figure, List<Working>> all() {
        Map<Figure, List<Working>> all = new EnumMap<>(Figure.class);
        boolean live = result.currentA() != null && operation.connectionOfCable(cable) >= 0;
        put(all, Figure.CURRENT, live ? current() : null);
        put(
                all,
                Figure.AMPACITY,
                result.ampacityA() == null ? null : conductor.ampacity(areaMm2).orElse(null));
        put(all, Figure.CONDUCTOR, live ? temperature() : null);
        put(all, Figure.DROP, live && result.dropPercent() != null ? drop() : null);
        put(all, Figure.DROP_FROM_SOURCE, live && result.dropFromSourcePercent() != null ? dropFromSource() : null);
        put(all, Figure.LOSS, live && result.lossW() != null ? loss() : null);
        if (result.leastAreaMm2() != null) {
            put(all, Figure.LEAST_AREA, new AreaWorkings(solved, cable).least());
        }
        int near = network.numbering().fromPin(cable);
        int far = network.numbering().toPin(cable);
        if (near >= 0 && far >= 0) {
            FaultWorkings faults = new FaultWorkings(solved, condition);
            put(all, Figure.FAULT_NEAR, faults.at(near, true, result.from().toString()));
            put(
                    all,
                    Figure.FAULT_NEAR_LEAST,
                    faults.at(near, false, result.from().toString()));
            put(all, Figure.FAULT_FAR, faults.at(far, true, result.to().toString()));
            put(all, Figure.FAULT_FAR_LEAST, faults.at(far, false, result.to().toString()));
        }
        List<Working> guards = new AreaWorkings(solved, cable).guards(result.protectedBy());
        if (!guards.isEmpty()) {
            all.put(Figure.PROTECTED_BY, guards);
        }
        return all;
    }

    private static void put(Map<Figure, List<Working>> all, Figure figure, @Nullable Working one) {
        if (one != null) {
            all.put(figure, List.of(one));
        }
    }

    private double amps() {
        return result.currentA() == null ? 0 : Math.abs(result.currentA());
    }

    private Connection connection() {
        return network.connections().get(operation.connectionOfCable(cable));
    }

    private boolean isAc() {
        return operation.isAc(connection().a());
    }

    private Working temperature() {
        double conductorC = result.conductorC() == null ? w.ambientC() : result.conductorC();
        return conductor.temperature(areaMm2, conductorC, amps());
    }

    private Working resistance() {
        return conductor.resistance(areaMm2, operation.ohm(cable), temperature());
    }

    // ---- current ---------------------------------------------------------------------------------------------

    private Working current() {
        int edge = operation.connectionOfCable(cable);
        Working sum = isAc()
                ? new AcCurrents(operation).along(connection(), edge, w, areaMm2, operation.conductorC(cable), amps())
                : new BranchCurrents(operation).through(edge, amps());
        return sum != null ? sum : Working.given(Say.what("current"), "I", amps(), Unit.AMPERE, Say.from("network"));
    }

    // ---- drop ------------------------------------------------------------------------------------------------

    private Working drop() {
        double percent = result.dropPercent() == null ? 0 : result.dropPercent();
        List<Working> inputs = List.of(volts(), nominal());
        return Working.found(Say.what("drop-percent"), "u", "100 · ΔU / Un", percent, Unit.PERCENT, inputs);
    }

    private Working nominal() {
        return Working.given(
                Say.what("nominal", w.system().id()), "Un", operation.nominalV(cable), Unit.VOLT, Say.from("drawn"));
    }

    private Working volts() {
        double dropV = result.dropV() == null ? 0 : result.dropV();
        if (!isAc()) {
            double signed = result.currentA() == null ? 0 : result.currentA();
            Working current =
                    Working.given(Say.what("current-towards", result.to().toString()), "I", signed, Unit.AMPERE, null);
            return Working.found(
                    Say.what("drop-volts"), "ΔU", "I · R", dropV, Unit.VOLT, List.of(current, resistance()));
        }
        Connection c = connection();
        double a = operation.voltage(c.a());
        double b = operation.voltage(c.b());
        if (Math.abs(a - b - dropV) > 1e-9 * Math.max(1, Math.abs(a))) {
            return Working.given(Say.what("drop-volts"), "ΔU", dropV, Unit.VOLT, Say.from("worst-phase"));
        }
        List<Working> inputs = List.of(
                Working.given(Say.what("volts-at", result.from().toString()), "Ua", a, Unit.VOLT, Say.from("network")),
                Working.given(Say.what("volts-at", result.to().toString()), "Ub", b, Unit.VOLT, Say.from("network")),
                resistance(),
                Working.given(Say.what("reactance"), "X", w.reactanceOhm(), Unit.OHM, Say.from("reactance")));
        return Working.found(Say.what("drop-volts"), "ΔU", "Ua − Ub", dropV, Unit.VOLT, inputs);
    }

    /** Over each cable and device on the way from the source. */
    private Working dropFromSource() {
        double percent = result.dropFromSourcePercent() == null ? 0 : result.dropFromSourcePercent();
        int far = operation.farPin(operation.connectionOfCable(cable));
        Working way = new WayDrops(operation).to(far);
        return Working.found(
                Say.what("drop-from-source"),
                "u",
                "max(0; 100 · ΔU / Un)",
                percent,
                Unit.PERCENT,
                List.of(way, nominal()));
    }

    // ---- heat ------------------------------------------------------------------------------------------------

    private Working loss() {
        double watts = result.lossW() == null ? 0 : result.lossW();
        double ohm = operation.ohm(cable);
        double plain = w.phases() * amps() * amps() * ohm;
        if (Math.abs(plain - watts) > 1e-9 * Math.max(1, watts)) {
            return Working.given(Say.what("loss"), "P", watts, Unit.WATT, Say.from("each-conductor"));
        }
        List<Working> inputs = new ArrayList<>();
        inputs.add(Working.given(Say.what("current"), "I", amps(), Unit.AMPERE, null));
        inputs.add(resistance());
        return Working.found(
                Say.what("loss"), "P", w.phases() == 3 ? "3 · I² · R" : "I² · R", watts, Unit.WATT, inputs);
    }
}
