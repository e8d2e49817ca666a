package orlop.render;

import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Point;
import orlop.layout.Rect;
import orlop.scene.Ink;
import orlop.scene.Mark;
import orlop.scene.Palette;
import orlop.scene.Scene;
import orlop.scene.SceneItem;
import orlop.symbols.Symbol;
import orlop.symbols.SymbolLibrary;

/** Paints scenes on surfaces. Immutable; safe for use by many threads, each with its own surface. */
public final class Painter {
    private final Palette palette;
    private final SymbolLibrary symbols;

    public Painter(Palette palette, SymbolLibrary symbols) {
        this.palette = palette;
        this.symbols = symbols;
    }

    /** A painter with the program's own symbols. */
    public static Painter bundled(Palette palette) {
        return new Painter(palette, SymbolLibrary.bundled());
    }

    /** Every item, in the order of the scene. The paper itself is not painted. */
    public void paint(Scene scene, Surface surface) {
        paint(scene, surface, item -> true);
    }

    /** The items that the filter lets through, in the order of the scene. */
    public void paint(Scene scene, Surface surface, Predicate<SceneItem> filter) {
        Marks marks = new Marks(surface);
        for (SceneItem item : scene.items()) {
            if (filter.test(item)) {
                surface.beginItem(item);
                item.marks().forEach(m -> m.match(marks));
                surface.endItem();
            }
        }
    }

    /** The colour of the paper, 0xRRGGBB. */
    public int paperRgb() {
        return palette.rgb(Ink.PAPER);
    }

    private int rgb(@Nullable Ink ink) {
        return ink == null ? Surface.NONE : palette.rgb(ink);
    }

    /** Turns each mark into a call. The result says nothing. */
    private final class Marks implements Mark.Cases<Boolean> {
        private final Surface surface;

        Marks(Surface surface) {
            this.surface = surface;
        }

        @Override
        public Boolean line(Mark.Line m) {
            surface.line(m.points(), m.widthMm(), m.dash(), m.roundEnds(), rgb(m.ink()));
            return true;
        }

        @Override
        public Boolean area(Mark.Area m) {
            surface.area(m.points(), rgb(m.fill()), rgb(m.stroke()), m.widthMm(), Mark.Dash.SOLID);
            return true;
        }

        @Override
        public Boolean disc(Mark.Disc m) {
            surface.disc(m.xMm(), m.yMm(), m.radiusMm(), rgb(m.fill()), rgb(m.stroke()), m.widthMm());
            return true;
        }

        @Override
        public Boolean box(Mark.Box m) {
            Rect r = m.rect();
            List<Point> corners = List.of(
                    new Point(r.minX(), r.minY()),
                    new Point(r.maxX(), r.minY()),
                    new Point(r.maxX(), r.maxY()),
                    new Point(r.minX(), r.maxY()));
            surface.area(corners, rgb(m.fill()), rgb(m.stroke()), m.widthMm(), m.dash());
            return true;
        }

        @Override
        public Boolean symbol(Mark.SymbolAt m) {
            Symbol symbol =
                    symbols.named(m.name()).orElseThrow(() -> new IllegalArgumentException("no symbol " + m.name()));
            surface.symbol(symbol, m.xMm(), m.yMm(), m.rotationDegree(), m.mirrored(), m.scale(), rgb(m.ink()));
            return true;
        }

        @Override
        public Boolean text(Mark.Text m) {
            surface.text(m.leftMm(), m.yMm(), m.sizeMm(), m.weight(), rgb(m.ink()), m.text(), m.widthMm());
            return true;
        }
    }
}
