package orlop.editor;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import orlop.scene.Ink;
import orlop.scene.Palette;
import orlop.scene.Scene;

/** Paints a scene on the screen by the painter that serves paper too. */
final class SheetPainting {
    private SheetPainting() {}

    /** One unit of {@code g} is one millimetre. */
    static void paint(Scene scene, Graphics2D g, Palette palette) {
        g.setColor(new Color(palette.rgb(Ink.PAPER)));
        g.fill(new Rectangle2D.Double(0, 0, scene.widthMm(), scene.heightMm()));
    }
}
