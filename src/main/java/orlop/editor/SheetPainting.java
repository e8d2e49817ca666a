package orlop.editor;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import orlop.render.Graphics2DSurface;
import orlop.render.Painter;
import orlop.scene.Palette;
import orlop.scene.Scene;

/** Paints a scene on the screen, by the painter that serves paper too. */
final class SheetPainting {
    private static final Painter LIGHT = Painter.bundled(Palette.LIGHT);
    private static final Painter DARK = Painter.bundled(Palette.DARK);

    private SheetPainting() {}

    /** One unit of {@code g} is one millimetre. */
    @SuppressWarnings("ReferenceEquality") // there are these two palettes
    static void paint(Scene scene, Graphics2D g, Palette palette) {
        Painter painter = palette == Palette.DARK ? DARK : LIGHT;
        g.setColor(new Color(painter.paperRgb()));
        g.fill(new Rectangle2D.Double(0, 0, scene.widthMm(), scene.heightMm()));
        painter.paint(scene, new Graphics2DSurface(g));
    }
}
