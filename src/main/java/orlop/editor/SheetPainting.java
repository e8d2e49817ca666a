package orlop.editor;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.function.Predicate;
import orlop.render.Graphics2DSurface;
import orlop.render.Painter;
import orlop.scene.Palette;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

/** Paints a scene on the screen, by the painter that serves paper too. */
final class SheetPainting {
    private static final Painter LIGHT = Painter.bundled(Palette.LIGHT);
    private static final Painter DARK = Painter.bundled(Palette.DARK);

    private SheetPainting() {}

    /** Reads symbols and fonts, which is done once. Any thread. */
    static void ready() {
        LIGHT.paperRgb();
    }

    /** One unit of {@code g} is one millimetre. */
    static void paint(Scene scene, Graphics2D g, Palette palette) {
        g.setColor(new Color(painter(palette).paperRgb()));
        g.fill(new Rectangle2D.Double(0, 0, scene.widthMm(), scene.heightMm()));
        painter(palette).paint(scene, new Graphics2DSurface(g));
    }

    /** Some items of a scene, without the paper. */
    static void paint(Scene scene, Graphics2D g, Palette palette, Predicate<SceneItem> which) {
        painter(palette).paint(scene, new Graphics2DSurface(g), which);
    }

    @SuppressWarnings("ReferenceEquality") // there are these two palettes
    private static Painter painter(Palette palette) {
        return palette == Palette.DARK ? DARK : LIGHT;
    }
}
