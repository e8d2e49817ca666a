package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;

/** The program's mark: a fuse in a line between two decks. */
final class AppIcon {
    private AppIcon() {}

    static List<Image> images() {
        return Stream.of(16, 24, 32, 48, 64, 128).map(AppIcon::image).toList();
    }

    private static Image image(int size) {
        BufferedImage i = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = i.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.scale(size / 32.0, size / 32.0);
        g.setColor(new Color(0x3D4B5F));
        g.fill(new RoundRectangle2D.Double(0, 0, 32, 32, 8, 8));
        g.setColor(Color.WHITE);
        g.setStroke(new BasicStroke(2.6f));
        g.draw(new Line2D.Double(5, 5, 27, 5));
        g.draw(new Line2D.Double(5, 27, 27, 27));
        g.setStroke(new BasicStroke(2f));
        g.draw(new Line2D.Double(16, 5, 16, 27));
        g.draw(new Rectangle2D.Double(12, 10, 8, 12));
        g.dispose();
        return i;
    }
}
