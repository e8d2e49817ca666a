package orlop.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Earth;
import orlop.drawing.Group;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.RefitStatus;
import orlop.drawing.Source;
import orlop.drawing.Switching;

/** Reads connections and attachments off a drawing. What is to be removed is left out, and so is what hangs on it. */
final class Wiring {
    private final Drawing drawing;
    private final Settings settings;
    private final Pins pins;
    private final boolean[] used;
    private final List<Connection> connections = new ArrayList<>();
    private final List<Attachment> attachments = new ArrayList<>();

    Wiring(Drawing drawing, Settings settings) {
        this.drawing = drawing;
        this.settings = settings;
        pins = new Pins(drawing);
        used = new boolean[pins.count()];
    }

    Wiring build() {
        for (Cable w : drawing.cables().values()) {
            cable(w);
        }
        for (Link l : drawing.links().values()) {
            int a = pins.of(l.from());
            int b = pins.of(l.to());
            if (present(a) && present(b)) {
                join(Connection.Kind.LINK, l.id(), a, b, l.lengthM(), null, l);
            }
        }
        for (Component c : drawing.components().values()) {
            if (c.refit() != RefitStatus.TO_BE_REMOVED) {
                component(c);
            }
        }
        return this;
    }

    Drawing drawing() {
        return drawing;
    }

    Pins pins() {
        return pins;
    }

    List<Connection> connections() {
        return connections;
    }

    List<Attachment> attachments() {
        return attachments;
    }

    /** Whether a cable, a link or a sheet link ends at the pin. */
    boolean used(int pin) {
        return used[pin];
    }

    private boolean present(int pin) {
        return pin >= 0 && pins.componentOf(pin).refit() != RefitStatus.TO_BE_REMOVED;
    }

    private void cable(Cable w) {
        int a = pins.of(w.from());
        int b = pins.of(w.to());
        if (w.refit() == RefitStatus.TO_BE_REMOVED || !present(a) || !present(b)) {
            return;
        }
        used[a] = true;
        used[b] = true;
        Double length = Resistances.lengthM(drawing, w);
        boolean contracted = !Resistances.hasImpedance(drawing, w);
        connections.add(new Connection(
                Connection.Kind.CABLE,
                w.id(),
                a,
                b,
                Objects.requireNonNullElse(length, 0.0),
                0,
                true,
                contracted,
                w,
                null,
                null));
    }

    private void join(
            Connection.Kind kind,
            String id,
            int a,
            int b,
            double lengthM,
            @org.jspecify.annotations.Nullable Component device,
            @org.jspecify.annotations.Nullable Link link) {
        used[a] = true;
        used[b] = true;
        connections.add(new Connection(kind, id, a, b, lengthM, 0, true, true, null, link, device));
    }

    private void component(Component c) {
        if (c.kind().group() == Group.SOURCES) {
            source(c);
        } else if (c.particulars() instanceof Conversion) {
            conversion(c);
        } else if (c.kind().group() == Group.LOADS) {
            attach(c, Attachment.Role.LOAD);
        } else if (c.particulars() instanceof Distribution.SheetLink s) {
            sheetLink(c, s);
        } else if (c.particulars() instanceof Switching.Changeover s) {
            for (int way = 1; way <= s.ways(); way++) {
                through(Connection.Kind.WAY, c, way, s.ways() + 1, settings.way(c, way), 0);
            }
        } else if (c.particulars() instanceof Switching.DiodeIsolator d) {
            for (int out = 2; out <= d.outputs() + 1; out++) {
                through(Connection.Kind.DIODE, c, 1, out, true, 0);
            }
        } else if (c.particulars() instanceof Switching.Diode d) {
            through(Connection.Kind.DIODE, c, 1, 2, true, d.resistanceOhm());
        } else if (isInline(c.kind())) {
            Double ohm = Resistances.ofDevice(c);
            through(Connection.Kind.DEVICE, c, 1, 2, settings.closed(c), Objects.requireNonNullElse(ohm, 0.0));
        }
    }

    /** Whether current passes from terminal 1 to 2. Bonds of the hull are no part of the circuit. */
    private static boolean isInline(Kind kind) {
        return switch (kind) {
            case FUSE,
                    CIRCUIT_BREAKER,
                    RESIDUAL_CURRENT_DEVICE,
                    TERMINAL,
                    IMPEDANCE,
                    ISOLATOR,
                    CONTACTOR,
                    COMBINING_RELAY,
                    SHUNT -> true;
            default -> false;
        };
    }

    private void through(Connection.Kind kind, Component c, int one, int two, boolean closed, double ohm) {
        boolean impedance = ohm > 0 || Resistances.reactanceOf(drawing, c) != 0;
        boolean contracted = closed && kind != Connection.Kind.DIODE && !impedance;
        connections.add(new Connection(
                kind, c.id(), pins.of(c, one), pins.of(c, two), 0, ohm, closed, contracted, null, null, c));
    }

    private void sheetLink(Component c, Distribution.SheetLink s) {
        Component mate = drawing.components().get(s.mate());
        boolean first = mate != null && pins.positionOf(pins.of(c, 1)) < pins.positionOf(pins.of(mate, 1));
        if (mate != null && first && present(pins.of(mate, 1)) && mate.kind() == Kind.SHEET_LINK) {
            join(Connection.Kind.SHEET, c.id(), pins.of(c, 1), pins.of(mate, 1), 0, c, null);
        }
    }

    private void source(Component c) {
        if (c.particulars() instanceof Source.ShoreInlet && used[pins.of(c, 2)]) {
            through(Connection.Kind.DEVICE, c, 1, 2, true, 0); // the shore itself is drawn
            return;
        }
        boolean holds = switch (c.kind()) {
            case BATTERY, SHORE_PEDESTAL, SHORE_INLET, GENERATOR, SUPPLY -> true;
            default -> false;
        };
        attach(c, holds ? Attachment.Role.VOLTAGE_SOURCE : Attachment.Role.OTHER_SOURCE);
    }

    private void attach(Component c, Attachment.Role role) {
        boolean two = c.kind().terminals() == Kind.Terminals.TWO && c.kind() != Kind.SHORE_INLET;
        int back = two && used[pins.of(c, 2)] ? pins.of(c, 2) : -1;
        attachments.add(new Attachment(c, role, pins.of(c, 1), back, -1, settings.on(c)));
    }

    /** Whether the component is an inverter with a transfer switch. */
    static boolean hasTransfer(Component c) {
        return c.kind() == Kind.INVERTER_CHARGER;
    }

    private void conversion(Component c) {
        int in = 1;
        int out = 2;
        if (hasTransfer(c)) {
            boolean passes = settings.passesThrough(c);
            connections.add(new Connection(
                    Connection.Kind.DEVICE, c.id(), pins.of(c, 3), pins.of(c, 2), 0, 0, passes, passes, null, null, c));
            in = passes ? 3 : 1;
            out = passes ? 1 : 2;
        }
        attachments.add(
                new Attachment(c, Attachment.Role.CONVERTER, pins.of(c, in), -1, pins.of(c, out), settings.on(c)));
    }

    /** Whether the pin is of a hull, an engine block or an earth bar. */
    boolean isEarth(int pin) {
        Object p = pins.componentOf(pin).particulars();
        return p instanceof Earth.Hull || p instanceof Earth.EngineBlock || p instanceof Earth.ProtectiveEarthBar;
    }
}
