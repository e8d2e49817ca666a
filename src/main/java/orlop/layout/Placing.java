package orlop.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Particulars;
import orlop.drawing.Place;
import orlop.drawing.Switching;
import orlop.drawing.TerminalRef;
import orlop.symbols.Bounds;
import orlop.symbols.Direction;
import orlop.symbols.Symbol;
import orlop.symbols.SymbolLibrary;
import orlop.symbols.Terminal;
import orlop.symbols.TextPlace;
import orlop.symbols.Turn;

/**
 * Puts the components of a sheet in their places: symbol, extent and terminals in millimetres on the sheet.
 *
 * <p>A component's {@code at} is the origin of its symbol; of a bar, the middle. A bar on which more hangs than has room
 * is drawn longer than it is said to be.
 */
public final class Placing {
    /** How thick a bar is drawn. */
    public static final double BAR_MM = 1.6;

    /** Half the height of the box around a board's bar. */
    public static final double BOARD_HALF_MM = 3.75;

    private static final double GRID_MM = 2.5;

    private static final BarLengths NO_TAPS = new BarLengths(Drawing.empty(""), "");

    private final SymbolLibrary library;

    public Placing(SymbolLibrary library) {
        this.library = library;
    }

    /**
     * The components of a sheet, in the order of the drawing.
     *
     * @param condition says how switches stand; null leaves them as drawn
     */
    public List<Placed> place(Drawing drawing, String sheet, @Nullable OperatingCondition condition) {
        return place(drawing, sheet, condition, List.of());
    }

    /**
     * The same as {@link #place(Drawing, String, OperatingCondition)}, in which what is as it was is the very same.
     *
     * @param before what this has placed on nearly the same sheet
     */
    public List<Placed> place(
            Drawing drawing, String sheet, @Nullable OperatingCondition condition, List<Placed> before) {
        Map<String, Placed> last = new HashMap<>();
        before.forEach(p -> last.put(p.id(), p));
        BarLengths lengths = new BarLengths(drawing, sheet);
        List<Placed> all = new ArrayList<>();
        for (Component c : drawing.components().values()) {
            if (c.place().sheet().equals(sheet)) {
                all.add(place(drawing, c, condition, lengths, last.get(c.id())));
            }
        }
        List<Placed> placed = BarReach.lengthened(all, lengths);
        placed.replaceAll(p -> {
            Placed was = p.bar() == null ? null : last.get(p.id());
            return p.equals(was) ? was : p;
        });
        return placed;
    }

    @SuppressWarnings("ReferenceEquality") // an edit makes another component
    private Placed place(
            Drawing drawing,
            Component c,
            @Nullable OperatingCondition condition,
            BarLengths lengths,
            @Nullable Placed before) {
        Particulars p = c.particulars();
        if (p instanceof Distribution.Busbar b) {
            Rect bar = bar(c.place(), lengths.of(c, b.drawnLengthMm()));
            return new Placed(c, "", bar, List.of(), true, bar);
        }
        if (p instanceof Distribution.DistributionBoard b) {
            Rect bar = bar(c.place(), lengths.of(c, b.drawnLengthMm()));
            double out = BOARD_HALF_MM - BAR_MM / 2;
            return new Placed(c, "", bar.grown(out), List.of(), true, bar);
        }
        String state = SymbolChoice.state(c, condition);
        Symbol s = library.find(c.kind().word(), SymbolChoice.variant(drawing, c), state)
                .orElseThrow(() -> new IllegalStateException("no symbol for " + c.kind()));
        if (before != null && before.component() == c && before.symbol().equals(s.name())) {
            return before;
        }
        List<String> names = c.particulars().terminals();
        boolean many = names.size() > 2 || p instanceof Switching.DiodeIsolator;
        if (many && !s.terminals().keySet().equals(Set.copyOf(names))) {
            return ManyEnds.place(c, names);
        }
        Rect ink = ink(s, c.place());
        boolean any = c.kind().terminals().names().isEmpty();
        return new Placed(c, s.name(), ink, ports(c, s, ink), any, null);
    }

    /** A component by itself at 0, 0, turned by so many degrees, its switches as drawn. */
    Placed alone(Drawing drawing, Component c, int rotationDegree) {
        Place origin = Place.at(c.place().sheet(), 0, 0).withRotationDegree(rotationDegree);
        return place(drawing, c.withPlace(origin), null, NO_TAPS, null);
    }

    private static Rect bar(Place place, double length) {
        boolean lying = place.rotationDegree() % 180 == 0;
        double w = lying ? length : BAR_MM;
        double h = lying ? BAR_MM : length;
        return Rect.of(place.at().xMm() - w / 2, place.at().yMm() - h / 2, w, h);
    }

    private static Rect ink(Symbol symbol, Place place) {
        Bounds b = symbol.bounds(new Turn(place.rotationDegree(), place.mirrored()));
        double x = place.at().xMm();
        double y = place.at().yMm();
        return new Rect(x + b.minXMm(), y + b.minYMm(), x + b.maxXMm(), y + b.maxYMm());
    }

    /** A symbol's point on the sheet: mirrored, turned clockwise, moved. */
    static double[] onSheet(double x, double y, Place place) {
        double mx = place.mirrored() ? -x : x;
        double ox = place.at().xMm();
        double oy = place.at().yMm();
        return switch (place.rotationDegree()) {
            case 90 -> new double[] {ox - y, oy + mx};
            case 180 -> new double[] {ox - mx, oy - y};
            case 270 -> new double[] {ox + y, oy - mx};
            default -> new double[] {ox + mx, oy + y};
        };
    }

    private static List<Port> ports(Component c, Symbol s, Rect ink) {
        List<Port> ports = new ArrayList<>();
        for (Terminal t : s.terminals().values()) {
            double[] at = onSheet(t.xMm(), t.yMm(), c.place());
            Heading h = heading(t.direction())
                    .placed(c.place().rotationDegree(), c.place().mirrored());
            ports.add(new Port(new TerminalRef(c.id(), t.id()), at[0], at[1], h));
        }
        int missing = 0;
        for (String name : c.particulars().terminals()) {
            if (!s.terminals().containsKey(name)) {
                ports.add(beyond(c, name, ports.get(0), ink, missing++));
            }
        }
        return ports;
    }

    /** A terminal that the symbol does not place: across from the first one, further ones beside it. */
    private static Port beyond(Component c, String name, Port first, Rect ink, int index) {
        Heading h = first.heading().opposite();
        double aside = (index % 2 == 1 ? (index + 1) / 2 : -index / 2) * 2 * GRID_MM;
        TerminalRef ref = new TerminalRef(c.id(), name);
        double x = first.x();
        double y = first.y();
        return switch (h) {
            case UP -> new Port(ref, x + aside, up(ink.minY() - y, y), h);
            case DOWN -> new Port(ref, x + aside, up(ink.maxY() - y, y), h);
            case LEFT -> new Port(ref, up(ink.minX() - x, x), y + aside, h);
            case RIGHT -> new Port(ref, up(ink.maxX() - x, x), y + aside, h);
        };
    }

    /** The coordinate at least so far from {@code from}, in whole modules. */
    private static double up(double distance, double from) {
        return from + Math.signum(distance) * Math.ceil(Math.abs(distance) / GRID_MM) * GRID_MM;
    }

    private static Heading heading(Direction d) {
        return switch (d) {
            case UP -> Heading.UP;
            case DOWN -> Heading.DOWN;
            case LEFT -> Heading.LEFT;
            case RIGHT -> Heading.RIGHT;
        };
    }

    /** The sides on which a placed component's symbol prefers its texts, the best first. */
    public List<Side> sides(Placed placed) {
        Optional<Symbol> symbol = library.named(placed.symbol());
        if (symbol.isEmpty()) {
            return List.of(Side.RIGHT);
        }
        Place place = placed.component().place();
        List<Side> sides = new ArrayList<>();
        for (TextPlace t : symbol.get().textPlaces()) {
            if (t.side() != TextPlace.Side.INSIDE) {
                Side side = side(t.side()).placed(place.rotationDegree(), place.mirrored());
                if (!sides.contains(side)) {
                    sides.add(side);
                }
            }
        }
        return sides;
    }

    private static Side side(TextPlace.Side s) {
        return switch (s) {
            case RIGHT -> Side.RIGHT;
            case LEFT -> Side.LEFT;
            case ABOVE -> Side.ABOVE;
            case BELOW, INSIDE -> Side.BELOW;
        };
    }
}
