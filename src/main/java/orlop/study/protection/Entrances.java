package orlop.study.protection;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Kind;
import orlop.drawing.Source;
import orlop.network.Attachment;
import orlop.network.Network;
import orlop.standards.SourceKind;
import orlop.study.model.AcSourceModel;
import orlop.study.model.Plan;
import orlop.study.model.SourceModel;

/** Finds the sources, direct and alternating, that can drive a fault. */
final class Entrances {
    private final Plan plan;
    private final Network network;
    private final Grid grid;
    private final List<Entrance> found = new ArrayList<>();

    Entrances(Grid grid) {
        this.grid = grid;
        plan = grid.plan();
        network = grid.network();
        for (Attachment t : network.attachments()) {
            boolean converter = t.role() == Attachment.Role.CONVERTER;
            int pin = converter ? t.outputPin() : t.pin();
            boolean charges = t.component().kind() == Kind.INVERTER_CHARGER;
            if (plan.isAc(pin)) {
                alternating(t, pin);
            } else if (isDc(pin)) {
                direct(t, pin, converter);
            }
            if (charges && isDc(t.pin())) {
                direct(t, t.pin(), true);
            }
        }
    }

    List<Entrance> all() {
        return found;
    }

    private boolean isDc(int pin) {
        return plan.isDc(pin);
    }

    private void direct(Attachment t, int pin, boolean converter) {
        Component c = t.component();
        SourceModel m = converter ? plan.output(t.pin()) : plan.source(t.pin());
        if (m == null) {
            return;
        }
        boolean harmless = m.carriesItself() && Double.isFinite(m.limitA());
        SourceKind kind = m.battery() && !converter ? SourceKind.BATTERY : SourceKind.CHARGING_SOURCE;
        int needs = c.kind() == Kind.INVERTER_CHARGER ? needs(c, true) : 0;
        found.add(new Entrance(pin, kind, c, harmless ? m.limitA() : Double.POSITIVE_INFINITY, needs));
    }

    private int needs(Component c, boolean passes) {
        return grid.positions().with(0, new int[] {grid.transfer(c, passes)});
    }

    /**
     * What lies behind the breaker of a pedestal gets no more, for long, than that lets through; an inverter limits itself
     * to its fault current, where that is known.
     */
    private void alternating(Attachment t, int pin) {
        Component c = t.component();
        boolean converter = t.role() == Attachment.Role.CONVERTER;
        AcSourceModel m = converter ? null : plan.acSource(c);
        if (m == null && !converter) {
            return;
        }
        @Nullable Double breaker = c.particulars() instanceof Source.ShorePedestal p ? p.ratingA() : null;
        SourceKind kind = m != null && m.shore() ? SourceKind.SHORE_INLET : SourceKind.AC_SOURCE;
        int needs = c.kind() == Kind.INVERTER_CHARGER ? needs(c, false) : 0;
        double inverterA = converter ? plan.inverterFaultA(c) : Double.NaN;
        double most = breaker != null ? breaker : inverterA > 0 ? inverterA : Double.POSITIVE_INFINITY;
        found.add(new Entrance(pin, kind, c, most, needs));
    }
}
