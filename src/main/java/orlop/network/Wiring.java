package orlop.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Earth;
import orlop.drawing.Group;
import orlop.drawing.Kind;
import orlop.drawing.RefitStatus;
import orlop.drawing.Source;
import orlop.drawing.Switching;

/** Reads connections and attachments off a drawing. What is to be removed is left out, and so is what hangs on it. */
final class Wiring {
    private final Numbering numbering;
    private final Drawing drawing;
    private final Settings settings;
    private final Pins pins;
    private final boolean[] used;
    private final List<Connection> connections;
    private final List<Attachment> attachments = new ArrayList<>();
    private int first; // pin before terminal 1 of the component at hand

    Wiring(Numbering numbering, Settings settings) {
        this.numbering = numbering;
        this.settings = settings;
        drawing = numbering.drawing();
        pins = numbering.pins();
        used = numbering.used();
        connections = new ArrayList<>(numbering.fixed());
    }

    Wiring build() {
        for (int i = 0; i < numbering.componentCount(); i++) {
            Component c = numbering.component(i);
            if (c.refit() != RefitStatus.TO_BE_REMOVED) {
                first = pins.at(i, 1) - 1;
                component(c);
            }
        }
        return this;
    }

    Numbering numbering() {
        return numbering;
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
        connections.add(
                new Connection(kind, c.id(), first + one, first + two, 0, ohm, closed, contracted, null, null, c));
    }

    private void sheetLink(Component c, Distribution.SheetLink s) {
        Component mate = drawing.components().get(s.mate());
        boolean earlier = mate != null && pins.positionOf(first + 1) < pins.positionOf(pins.of(mate, 1));
        if (mate != null && earlier && numbering.present(pins.of(mate, 1)) && mate.kind() == Kind.SHEET_LINK) {
            int a = first + 1;
            int b = pins.of(mate, 1);
            used[a] = true;
            used[b] = true;
            connections.add(new Connection(Connection.Kind.SHEET, c.id(), a, b, 0, 0, true, true, null, null, c));
        }
    }

    private void source(Component c) {
        if (c.particulars() instanceof Source.ShoreInlet && used[first + 2]) {
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
        int back = two && used[first + 2] ? first + 2 : -1;
        attachments.add(new Attachment(c, role, first + 1, back, -1, settings.on(c)));
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
                    Connection.Kind.DEVICE, c.id(), first + 3, first + 2, 0, 0, passes, passes, null, null, c));
            in = passes ? 3 : 1;
            out = passes ? 1 : 2;
        }
        attachments.add(new Attachment(c, Attachment.Role.CONVERTER, first + in, -1, first + out, settings.on(c)));
    }

    /** Whether the pin is of a hull, an engine block or an earth bar. */
    boolean isEarth(int pin) {
        Object p = pins.componentOf(pin).particulars();
        return p instanceof Earth.Hull || p instanceof Earth.EngineBlock || p instanceof Earth.ProtectiveEarthBar;
    }
}
