package orlop.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.symbols.SymbolLibrary;

/** Finds places for components by what feeds what: from the sources down, on the grid, bars as long as they need. */
public final class FromSources {
    /** A tree of more steps than this is no ship's; it is refused, so that no stack overflows. */
    private static final int DEEPEST = 1_000;

    /** Within the coordinates of a sheet, {@link Point}. */
    private static final double REACH_MM = 9_900;

    private static final double GRID_MM = 2.5;

    /** From airy to close. */
    private static final List<BlockMaker.Pitch> PITCHES = List.of(
            new BlockMaker.Pitch(40, 20, 15),
            new BlockMaker.Pitch(40, 15, 10),
            new BlockMaker.Pitch(35, 15, 10),
            new BlockMaker.Pitch(30, 15, 10));

    /**
     * Where a component goes.
     *
     * @param at its origin; of a bar, the middle
     * @param rotationDegree 0, 90, 180 or 270, clockwise
     * @param drawnLengthMm of a bar; null for all else
     */
    public record Spot(
            Point at, int rotationDegree, @Nullable Double drawnLengthMm) {}

    private final Placing placing;

    public FromSources(SymbolLibrary library) {
        placing = new Placing(library);
    }

    /**
     * Places for some components of one sheet, in the order of the drawing.
     *
     * @param ids whom to place; the others of the drawing are not looked at
     * @param area where to stand, in mm; what has no room goes on below it
     * @return empty if what hangs on what is too deep or too wide to draw so
     */
    public Map<String, Spot> arrange(Drawing drawing, Set<String> ids, Rect area) {
        FeedTree tree = new FeedTree(drawing, ids);
        if (tree.depth() > DEEPEST) {
            return Map.of();
        }
        Block best = null;
        double least = Double.POSITIVE_INFINITY;
        for (BlockMaker.Pitch pitch : PITCHES) {
            Block made = page(tree, drawing, pitch, area.width());
            double beyond = Math.max(0, made.box().width() - area.width())
                    + Math.max(0, made.box().height() - area.height());
            if (beyond < least) {
                best = made;
                least = beyond;
            }
        }
        return best == null || beyondReach(best, area) ? Map.of() : spots(drawing, best, area);
    }

    /** The drawing with components in their spots. Corners set by hand on what runs between them are forgotten. */
    public static Drawing placed(Drawing drawing, Map<String, Spot> spots) {
        Drawing d = drawing;
        for (Map.Entry<String, Spot> e : spots.entrySet()) {
            Component c = d.components().require(e.getKey());
            d = d.with(at(c, e.getValue()));
        }
        for (Cable w : drawing.cables().values()) {
            boolean moved = spots.containsKey(w.from().component()) || spots.containsKey(w.to().component());
            if (moved && (!w.bends().isEmpty() || w.labelAt() != null)) {
                d = d.with(w.withBends(List.of()).withLabelAt(null));
            }
        }
        return d;
    }

    private static Component at(Component c, Spot spot) {
        Place place = c.place();
        Component moved = c.withPlace(new Place(place.sheet(), spot.at(), spot.rotationDegree(), false, null));
        Double length = spot.drawnLengthMm();
        if (length == null) {
            return moved;
        }
        return c.particulars() instanceof Distribution.Bar bar
                ? moved.withParticulars(bar.drawn(Math.min(Distribution.Bar.MOST_DRAWN_MM, length)))
                : moved;
    }

    private static boolean beyondReach(Block page, Rect area) {
        return area.minX() + page.box().width() > REACH_MM
                || area.minY() + page.box().height() > REACH_MM;
    }

    /** The joined parts side by side while there is room, then below. */
    private Block page(FeedTree tree, Drawing drawing, BlockMaker.Pitch pitch, double widthMm) {
        BlockMaker maker = new BlockMaker(tree, (c, degree) -> placing.alone(drawing, c, degree), pitch);
        List<Block> parts = new ArrayList<>();
        tree.roots().forEach(r -> parts.add(maker.of(r, widthMm)));
        Block page = new Block(Rect.of(0, 0, 0, 0));
        double x = 0;
        double y = 0;
        double bottom = 0;
        for (Block part : parts) {
            if (x > 0 && x + part.box().width() > widthMm) {
                x = 0;
                y = bottom + GRID_MM * 4;
            }
            page.take(part, x - floor(part.box().minX()), y - floor(part.box().minY()), false);
            x += part.box().width();
            bottom = Math.max(bottom, y + part.box().height());
            x = Math.ceil(x / GRID_MM) * GRID_MM;
            bottom = Math.ceil(bottom / GRID_MM) * GRID_MM;
        }
        return page;
    }

    private static double floor(double mm) {
        return Math.floor(mm / GRID_MM) * GRID_MM;
    }

    private static Map<String, Spot> spots(Drawing drawing, Block page, Rect area) {
        double dx = Math.ceil(area.minX() / GRID_MM) * GRID_MM;
        double dy = Math.ceil(area.minY() / GRID_MM) * GRID_MM;
        Map<String, Block.Item> found = new LinkedHashMap<>();
        page.items().forEach(i -> found.put(i.id(), i));
        Map<String, Spot> spots = new LinkedHashMap<>();
        drawing.components().values().forEach(c -> {
            Block.Item i = found.get(c.id());
            if (i != null) {
                Point at = new Point(i.x() + dx, i.y() + dy);
                spots.put(c.id(), new Spot(at, i.rotationDegree(), i.lengthMm() > 0 ? i.lengthMm() : null));
            }
        });
        return spots;
    }
}
