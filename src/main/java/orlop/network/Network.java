package orlop.network;

import java.util.ArrayList;
import java.util.List;
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
    private final Pins pins;
    private final List<Connection> connections;
    private final List<Attachment> attachments;
    private final Points points;
    private final Feeding feeding;

    private Network(Wiring wiring) {
        pins = wiring.pins();
        connections = List.copyOf(wiring.connections());
        attachments = List.copyOf(wiring.attachments());
        points = new Points(wiring);
        feeding = new Feeding(pins.count(), connections, attachments);
    }

    /** The network as it stands in a condition. */
    public static Network of(Drawing drawing, OperatingCondition condition) {
        Network first = new Network(new Wiring(drawing, new Settings.In(condition, c -> false)).build());
        if (first.connections.stream()
                .noneMatch(c -> c.kind() == Connection.Kind.DEVICE
                        && Wiring.hasTransfer(c.theDevice())
                        && first.feeding.feeds(c.a()))) {
            return first;
        }
        return new Network(new Wiring(
                        drawing, new Settings.In(condition, c -> first.feeding.feeds(first.pins.of(c, 3))))
                .build());
    }

    /** The network with every switch closed that can be, every way of a changeover, every source that is ever on. */
    public static Network reach(Drawing drawing) {
        return new Network(new Wiring(drawing, new Settings.Reach(drawing)).build());
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

    /** Whether the point is the common negative itself: a drawn negative bar, the hull. */
    public boolean isCommonNegative(int point) {
        return point >= 0 && points.isCommonNegative(point);
    }

    /** Whether the point lies in a return that is drawn. */
    public boolean isReturn(int point) {
        return point >= 0 && points.isReturn(point);
    }

    /** What feeds what. */
    public Feeding feeding() {
        return feeding;
    }

    /** Tags of the components and cables from the source to the pin, source first; empty where nothing feeds it. */
    public List<String> feedingPath(int pin) {
        List<String> path = new ArrayList<>();
        if (!feeding.feeds(pin)) {
            return path;
        }
        int at = feeding.root(pin);
        path.add(attachments.get(at).component().id());
        int here = attachments.get(at).role() == Attachment.Role.CONVERTER
                ? attachments.get(at).outputPin()
                : attachments.get(at).pin();
        for (int edge : feeding.pathTo(pin)) {
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
