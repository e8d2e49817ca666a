package orlop.study.protection;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.ElectricalSystem;
import orlop.network.Connection;
import orlop.study.Gap;
import orlop.study.model.DeviceModel;
import orlop.study.model.Rating;

/** Whether one device can break the highest fault current at its place, and is made for its system's voltage. */
final class DeviceCheck {
    private final Grid grid;
    private final Surroundings around;
    private final Proposer proposer;
    private final int number;
    private final Connection connection;
    private final DeviceModel device;
    private final List<Gap> found = new ArrayList<>(0);

    DeviceCheck(Grid grid, Surroundings around, Proposer proposer, int connection, DeviceModel device) {
        this.grid = grid;
        this.around = around;
        this.proposer = proposer;
        number = connection;
        this.connection = grid.connection(connection);
        this.device = device;
    }

    List<Gap> gaps() {
        double through = around.faultThroughA(number);
        double fault = Double.isFinite(through) ? through : Math.max(fault(connection.a()), fault(connection.b()));
        ElectricalSystem system = grid.plan().system(grid.network().systemOf(connection.a()));
        if (device.breakingA() != null && fault > device.breakingA()) {
            add(Gap.Kind.CANNOT_BREAK, system, fault, around.conditionsAbove(number, device.breakingA()));
        }
        if (device.maxV() != null && system.deviceVoltageV() > device.maxV() * (1 + 1e-9)) {
            add(Gap.Kind.VOLTAGE, system, fault, around.conditions());
        }
        return found;
    }

    private double fault(int pin) {
        double amps = around.faultMaxA(pin);
        return Double.isFinite(amps) ? amps : 0;
    }

    private void add(Gap.Kind kind, ElectricalSystem system, double faultA, List<String> conditions) {
        Integer edge = cable(connection.b());
        int near = connection.b();
        if (edge == null) {
            edge = cable(connection.a());
            near = connection.a();
        }
        Connection c = edge == null ? null : grid.network().connections().get(edge);
        found.add(new Gap(
                kind,
                c == null ? device.component().id() : c.item(),
                c == null || c.a() == near,
                0,
                source(),
                faultA > 0 ? faultA : null,
                false,
                device.component().id(),
                conditions,
                instead(system, edge == null ? -1 : grid.cable(edge), faultA),
                Double.NaN,
                Double.NaN,
                List.of()));
    }

    /** The device that would do in its place; null without anything that its rating could follow. */
    private Gap.@Nullable Proposal instead(ElectricalSystem system, int cable, double faultA) {
        double known = cable < 0 ? 0 : around.designA(cable);
        double design = Double.isFinite(known) ? known : 0;
        double ampacity = cable < 0 ? Double.POSITIVE_INFINITY : ampacityA(cable);
        Double rated = device.ratingA();
        if (rated != null) {
            return proposer.replacement(system, rated, design, ampacity, faultA);
        }
        return Double.isFinite(ampacity) ? proposer.among(system, design, ampacity, faultA) : null;
    }

    private double ampacityA(int cable) {
        Rating r = around.rating(cable);
        return r == null ? Double.POSITIVE_INFINITY : r.amps();
    }

    private String source() {
        int root = grid.network().feeding().root(connection.a());
        return root < 0
                ? ""
                : grid.network().attachments().get(root).component().id();
    }

    private @Nullable Integer cable(int pin) {
        for (int k = grid.start(pin); k < grid.start(pin + 1); k++) {
            int e = grid.edge(k);
            if (grid.network().connections().get(e).cable() != null) {
                return e;
            }
        }
        return null;
    }
}
