package orlop.study.protection;

import org.jspecify.annotations.Nullable;
import orlop.drawing.ElectricalSystem;
import orlop.network.Connection;
import orlop.study.Gap;
import orlop.study.model.DeviceModel;

/** Whether one device can break the highest fault current at its place, and is made for its system's voltage. */
final class DeviceCheck {
    private final Coverage coverage;
    private final int number;
    private final Connection connection;
    private final DeviceModel device;

    DeviceCheck(Coverage coverage, int connection, DeviceModel device) {
        this.coverage = coverage;
        number = connection;
        this.connection = coverage.network().connections().get(connection);
        this.device = device;
    }

    void run() {
        double through = coverage.around().faultThroughA(number);
        double fault = Double.isFinite(through) ? through : Math.max(fault(connection.a()), fault(connection.b()));
        ElectricalSystem system = coverage.plan().system(coverage.network().systemOf(connection.a()));
        if (device.breakingA() != null && fault > device.breakingA()) {
            add(Gap.Kind.CANNOT_BREAK, system, fault);
        }
        if (device.maxV() != null && system.deviceVoltageV() > device.maxV() * (1 + 1e-9)) {
            add(Gap.Kind.VOLTAGE, system, fault);
        }
    }

    private double fault(int pin) {
        double amps = coverage.around().faultMaxA(pin);
        return Double.isFinite(amps) ? amps : 0;
    }

    private void add(Gap.Kind kind, ElectricalSystem system, double faultA) {
        Integer edge = cable(connection.b());
        int near = connection.b();
        if (edge == null) {
            edge = cable(connection.a());
            near = connection.a();
        }
        Connection c = edge == null ? null : coverage.network().connections().get(edge);
        double rating = device.ratingA() == null ? 1 : device.ratingA();
        coverage.add(new Gap(
                kind,
                c == null ? device.component().id() : c.item(),
                c == null || c.a() == near,
                0,
                source(),
                faultA > 0 ? faultA : null,
                device.component().id(),
                coverage.around().conditionOf(source()),
                coverage.proposer().among(system, rating, rating * 2, faultA)));
    }

    private String source() {
        int root = coverage.network().feeding().root(connection.a());
        return root < 0
                ? ""
                : coverage.network().attachments().get(root).component().id();
    }

    private @Nullable Integer cable(int pin) {
        for (int e : coverage.at(pin)) {
            if (coverage.network().connections().get(e).cable() != null) {
                return e;
            }
        }
        return null;
    }
}
