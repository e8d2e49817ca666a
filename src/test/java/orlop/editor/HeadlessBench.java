package orlop.editor;

import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.lang.reflect.InvocationTargetException;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import orlop.desk.Review;
import orlop.desk.Session;
import orlop.drawing.Drawing;

/** The contents of a window without a screen, the calculation done at once on the same thread. */
final class HeadlessBench {
    private static final int WIDTH = 1366;
    private static final int HEIGHT = 740;

    private final Answers answers = new Answers();
    private final Session session;
    private final Workbench bench;
    private BufferedImage image = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);

    private HeadlessBench(Drawing start, Settings settings) {
        Look.install(false);
        session = new Session(start, null, Review::of, Runnable::run, new EventThread(), e -> {
            throw new AssertionError(e);
        });
        bench = new Workbench(session, answers, settings, new NoDesks(), Runnable::run, "ctrl", () -> {}, () -> {});
        bench.panel().setSize(WIDTH, HEIGHT);
        lay(bench.panel());
    }

    static HeadlessBench open(Drawing start) throws Exception {
        return open(start, new Settings(null));
    }

    static HeadlessBench open(Drawing start, Settings settings) throws Exception {
        HeadlessBench[] made = new HeadlessBench[1];
        onUi(() -> made[0] = new HeadlessBench(start, settings));
        onUi(made[0]::paint); // the first review has come by now
        return made[0];
    }

    void close() throws Exception {
        onUi(() -> {
            session.close();
            Look.install(false);
        });
    }

    /** What a person answers. */
    Answers answers() {
        return answers;
    }

    /** Does a command on the event thread, and lays out what has come of it. */
    void run(CommandId id) throws Exception {
        onUi(() -> bench.commands().get(id).run());
        onUi(this::paint);
    }

    Session session() {
        return session;
    }

    Workbench bench() {
        return bench;
    }

    BufferedImage image() {
        return image;
    }

    @FunctionalInterface
    interface Step {
        void run() throws Exception;
    }

    /** On the event thread. */
    static void onUi(Step step) throws Exception {
        try {
            SwingUtilities.invokeAndWait(() -> {
                try {
                    step.run();
                } catch (RuntimeException | Error e) {
                    throw e;
                } catch (Exception e) {
                    throw new IllegalStateException(e);
                }
            });
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    private static void lay(Container c) {
        c.doLayout();
        for (java.awt.Component child : c.getComponents()) {
            if (child instanceof Container k) {
                lay(k);
            }
        }
    }

    /** As if a person had drawn the window to this width, in pixels. */
    void resize(int width) {
        resize(width, HEIGHT);
    }

    void resize(int width, int height) {
        bench.panel().setSize(width, height);
    }

    void paint() {
        lay(bench.panel());
        JPanel all = bench.panel();
        image = new BufferedImage(all.getWidth(), all.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        bench.panel().paint(g);
        g.dispose();
    }

    Optional<JComponent> named(String name) {
        return named(bench.panel(), name);
    }

    private static Optional<JComponent> named(Container in, String name) {
        for (java.awt.Component c : in.getComponents()) {
            if (c instanceof JComponent j && name.equals(c.getName())) {
                return Optional.of(j);
            }
            if (c instanceof Container k) {
                Optional<JComponent> found = named(k, name);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }
}
