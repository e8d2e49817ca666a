package orlop.network;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.OperatingCondition;
import orlop.drawing.TerminalRef;

/**
 * A drawing in one operating condition as an electrical network.
 *
 * <p>Terminals are numbered as <em>pins</em>. <em>Connections</em> join pins; pins joined without impedance are one
 * <em>point</em>. Devices that were contracted keep their connection, so that a path still says what it passes.
 * Immutable; built in time proportional to the size of the drawing.
 */
public final class Network {
    private final Numbering numbering;
    private final Pins pins;
    private final List<Connection> connections;
    private final List<Attachment> attachments;
    private final Points points;
    private final Feeding feeding;

    private Network(Wiring wiring, List<Network> made) {
        numbering = wiring.numbering();
        pins = numbering.pins();
        Network alike = alike(wiring, made);
        connections = alike == null ? List.copyOf(wiring.connections()) : alike.connections;
        attachments = List.copyOf(wiring.attachments());
        points = alike == null ? new Points(wiring) : alike.points;
        feeding = alike == null || !sameSources(alike)
                ? new Feeding(pins.count(), connections, attachments)
                : alike.feeding;
    }

    /** One in which every switch stands as in this; null if there is none. */
    private static @Nullable Network alike(Wiring wiring, List<Network> made) {
        for (Network n : made) {
            if (n.numbering == wiring.numbering()
                    && sameWays(n.connections, wiring.connections())
                    && samePins(n.attachments, wiring.attachments())) {
                return n;
            }
        }
        return null;
    }

    @SuppressWarnings("ReferenceEquality") // the very same connection need not be looked at
    private static boolean sameWays(List<Connection> some, List<Connection> others) {
        if (some.size() != others.size()) {
            return false;
        }
        for (int i = 0; i < some.size(); i++) {
            Connection a = some.get(i);
            Connection b = others.get(i);
            if (a.a() != b.a() || a.b() != b.b() || a.closed() != b.closed()) {
                return false;
            }
        }
        return true;
    }

    private static boolean samePins(List<Attachment> some, List<Attachment> others) {
        if (some.size() != others.size()) {
            return false;
        }
        for (int i = 0; i < some.size(); i++) {
            Attachment a = some.get(i);
            Attachment b = others.get(i);
            if (a.pin() != b.pin() || a.returnPin() != b.returnPin() || a.outputPin() != b.outputPin()) {
                return false;
            }
        }
        return true;
    }

    private boolean sameSources(Network other) {
        for (int i = 0; i < attachments.size(); i++) {
            Attachment t = attachments.get(i);
            if (t.role() != Attachment.Role.LOAD
                    && t.on() != other.attachments.get(i).on()) {
                return false;
            }
        }
        return true;
    }

    /** The network as it stands in a condition. */
    public static Network of(Drawing drawing, OperatingCondition condition) {
        return of(new Numbering(drawing), condition, List.of());
    }

    /**
     * The network as it stands in a condition.
     *
     * @param made networks of other conditions, made from the same numbering: what holds here as there is shared
     */
    public static Network of(Numbering numbering, OperatingCondition condition, List<Network> made) {
        Network first = new Network(new Wiring(numbering, new Settings.In(condition, c -> false)).build(), made);
        for (Connection c : first.connections) {
            if (c.kind() == Connection.Kind.DEVICE
                    && Wiring.hasTransfer(c.theDevice())
                    && first.inputLive(c.theDevice())) {
                Settings passing = new Settings.In(condition, first::inputLive);
                return new Network(new Wiring(numbering, passing).build(), made);
            }
        }
        return first;
    }

    /** Whether something else than the inverter itself brings voltage to its input. */
    private boolean inputLive(Component inverter) {
        int input = pins.of(inverter, 3);
        return feeding.feeds(input)
                && !attachments.get(feeding.root(input)).component().id().equals(inverter.id());
    }

    /** The network with every switch closed that can be, every way of a changeover, every source that is ever on. */
    public static Network reach(Drawing drawing) {
        return reach(new Numbering(drawing), List.of());
    }

    /** As {@link #reach(Drawing)}; {@code made} as in {@link #of(Numbering, OperatingCondition, List)}. */
    public static Network reach(Numbering numbering, List<Network> made) {
        return new Network(new Wiring(numbering, new Settings.Reach(numbering.drawing())).build(), made);
    }

    /** The numbers that this network shares with those of the drawing's other conditions. */
    public Numbering numbering() {
        return numbering;
    }

    /** Number of the cable, in the order of the drawing, that a connection is; −1 for what is no cable. */
    public int cableOf(int connection) {
        return numbering.cableOf(connection);
    }

    /** Number of the component, in the order of the drawing, that a pin belongs to. */
    public int componentNumber(int pin) {
        return pins.positionOf(pin);
    }

    /** How many pins there are; they are numbered from 0. */
    public int pinCount() {
        return pins.count();
    }

    /** The pin of a terminal, −1 if the drawing has no such terminal. */
    public int pin(TerminalRef terminal) {
        return pins.of(terminal);
    }

    /** The pin of a component's terminal 1, 2 …; of a bar, its only one. */
    public int pin(Component c, int terminal) {
        return pins.of(c, terminal);
    }

    /** The component that a pin belongs to. */
    public Component componentOf(int pin) {
        return pins.componentOf(pin);
    }

    /** How many components the drawing has. */
    int componentCount() {
        return pins.componentCount();
    }

    /** The component at this position in the drawing. */
    Component component(int position) {
        return pins.component(position);
    }

    /** Position in the drawing of the component that a pin belongs to. */
    int positionOf(int pin) {
        return pins.positionOf(pin);
    }

    /** The id of the system that a pin belongs to. */
    public String systemOf(int pin) {
        return pins.systemOf(pin);
    }

    /** All ways from pin to pin, open ones included. */
    public List<Connection> connections() {
        return connections;
    }

    /** All sources, loads and converters. */
    public List<Attachment> attachments() {
        return attachments;
    }

    /** The points in the order of the drawing. */
    public List<NetPoint> points() {
        return points.all();
    }

    /** Number of the pin's point; −1 for a return terminal to which nothing is drawn, and for pin −1. */
    public int pointOf(int pin) {
        return pin < 0 ? -1 : points.of(pin);
    }

    /**
     * The points as a person counts them: a cable whose length nobody knows is calculated as if it had none, but what
     * lies at its other end is listed as a point of its own.
     */
    public List<NetPoint> listedPoints() {
        return points.listed().all();
    }

    /** Number of the pin's point in {@link #listedPoints()}; −1 for a return terminal to which nothing is drawn. */
    public int listedPointOf(int pin) {
        return points.listed().of(pin);
    }

    /** Whether the point is the common negative itself: a drawn negative bar, the hull. */
    public boolean isCommonNegative(int point) {
        return point >= 0 && points.isCommonNegative(point);
    }

    /** Whether the point lies in a return that is drawn. */
    public boolean isReturn(int point) {
        return point >= 0 && points.isReturn(point);
    }

    /** Whether every switch and every source is known to stand as in another network of the same drawing. */
    @SuppressWarnings("ReferenceEquality") // networks that stand alike share them
    public boolean standsAs(Network other) {
        return connections == other.connections && feeding == other.feeding;
    }

    /** What feeds what. */
    public Feeding feeding() {
        return feeding;
    }

    /** The pin at which a source or a converter gives its current, a load takes it. */
    public int livePin(int attachment) {
        Attachment t = attachments.get(attachment);
        return t.role() == Attachment.Role.CONVERTER ? t.outputPin() : t.pin();
    }

    /** Tags of the components and cables from the source to the pin, source first; empty where nothing feeds it. */
    public List<String> feedingPath(int pin) {
        return feeding.feeds(pin) ? tags(feeding.root(pin), feeding.pathTo(pin)) : List.of();
    }

    /**
     * Tags of the components and cables on a way, the source first.
     *
     * @param source number of the attachment at which the way starts
     * @param way numbers of its connections, in that order
     */
    public List<String> tags(int source, List<Integer> way) {
        List<String> path = new ArrayList<>();
        path.add(attachments.get(source).component().id());
        int here = livePin(source);
        for (int edge : way) {
            Connection c = connections.get(edge);
            here = c.other(here);
            if (c.cable() != null || c.device() != null) {
                add(path, c.item());
            }
            add(path, pins.componentOf(here).id());
        }
        return path;
    }

    private static void add(List<String> path, String tag) {
        if (!path.get(path.size() - 1).equals(tag)) {
            path.add(tag);
        }
    }
}
