package orlop.editor;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import orlop.desk.Sample;

/** A program of its own: opens a window at the scale that its command sets, and says what of it is cut off. */
final class ScaledWindow {
    private ScaledWindow() {}

    /** @param args the picture to be written */
    public static void main(String[] args) throws Exception {
        MainWindow[] made = new MainWindow[1];
        SwingUtilities.invokeAndWait(() -> {
            made[0] = EditorApp.window(Sample.of("pilot-cutter"), null, new Settings(null));
            made[0].show();
        });
        MainWindow w = made[0];
        for (int i = 0; i < 300; i++) {
            boolean[] fresh = new boolean[1];
            SwingUtilities.invokeAndWait(
                    () -> fresh[0] = w.bench().canvas().session().state().fresh());
            if (fresh[0]) {
                break;
            }
            Thread.sleep(100);
        }
        SwingUtilities.invokeAndWait(() -> {
            w.bench().canvas().session().select(Set.of("W1"));
            w.bench().commands().get(CommandId.SHOW_REGISTER).run();
        });
        Thread.sleep(500);
        SwingUtilities.invokeAndWait(() -> report(w, new File(args[0])));
        System.exit(0);
    }

    private static void report(MainWindow w, File file) {
        Container root = w.frame().getRootPane();
        double scale =
                w.frame().getGraphicsConfiguration().getDefaultTransform().getScaleX();
        System.out.println("scale " + scale);
        cut(root);
        BufferedImage image = new BufferedImage(
                (int) (root.getWidth() * scale), (int) (root.getHeight() * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(scale, scale);
        root.paint(g);
        g.dispose();
        try {
            ImageIO.write(image, "png", file);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static void cut(Container in) {
        for (Component c : in.getComponents()) {
            boolean text = (c instanceof AbstractButton b
                            && b.getText() != null
                            && !b.getText().isEmpty())
                    || (c instanceof JLabel l
                            && l.getText() != null
                            && !l.getText().isEmpty());
            boolean flexible = c instanceof ConditionCard
                    || (c.getName() != null && c.getName().equals("status"));
            if (text
                    && !flexible
                    && c.isShowing()
                    && c.getWidth() > 0
                    && c.getHeight() < c.getPreferredSize().height - 2) {
                System.out.println("cut " + c.getClass().getName() + " " + c.getName());
            }
            if (c instanceof Container k) {
                cut(k);
            }
        }
    }
}
