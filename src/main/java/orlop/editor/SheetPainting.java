package orlop.editor;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.function.Predicate;
import orlop.desk.OwnSymbols;
import orlop.render.Graphics2DSurface;
import orlop.render.Painter;
import orlop.scene.Palette;
import orlop.scene.Scene;
import orlop.scene.SceneItem;
import orlop.symbols.SymbolLibrary;

/** Paints a scene on the screen, by the painter that serves paper too. */
final class SheetPainting {
    private static volatile Painters painters = Painters.of(OwnSymbols.library());

    private SheetPainting() {}

    /** One for each look, with the same symbols. */
    private record Painters(SymbolLibrary library, Painter light, Painter dark) {
        static Painters of(SymbolLibrary library) {
            return new Painters(library, new Painter(Palette.LIGHT, library), new Painter(Palette.DARK, library));
        }
    }

    /** Reads symbols and fonts, which is done once. Any thread. */
    static void ready() {
        painter(Palette.LIGHT).paperRgb();
    }

    /** One unit of {@code g} is one millimetre. */
    static void paint(Scene scene, Graphics2D g, Palette palette) {
        paper(scene, g, palette);
        painter(palette).paint(scene, new Graphics2DSurface(g));
    }

    /** The paper without what is drawn on it. */
    static void paper(Scene scene, Graphics2D g, Palette palette) {
        g.setColor(new Color(painter(palette).paperRgb()));
        g.fill(new Rectangle2D.Double(0, 0, scene.widthMm(), scene.heightMm()));
    }

    /** Some items of a scene, without the paper. */
    static void paint(Scene scene, Graphics2D g, Palette palette, Predicate<SceneItem> which) {
        painter(palette).paint(scene, new Graphics2DSurface(g), which);
    }

    @SuppressWarnings("ReferenceEquality") // there are these two palettes, and a library is read anew or it is the same
    private static Painter painter(Palette palette) {
        Painters now = painters;
        if (now.library != OwnSymbols.library()) {
            now = Painters.of(OwnSymbols.library());
            painters = now;
        }
        return palette == Palette.DARK ? now.dark : now.light;
    }
}
