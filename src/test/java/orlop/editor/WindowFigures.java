package orlop.editor;

import java.awt.Graphics2D;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import javax.swing.SwingUtilities;
import orlop.desk.Review;
import orlop.desk.Session;
import orlop.drawing.Component;
import orlop.drawing.Drawing;

/**
 * Measures the window, in some two minutes; no test, since a busy machine would fail it. Run on a quiet machine with a
 * display, after {@code mvn package}:
 *
 * <pre>mvn test-compile exec:java -Dexec.classpathScope=test -Dmain.class=orlop.editor.WindowFigures</pre>
 *
 * <p>Start: the program in its jar, in a process of its own, from its birth to the first sample painted with its figures.
 * Frame: moving the mouse and painting at 1920 × 1080 while a component among 1,000 is dragged. Edit: see {@link
 * EditFigures}.
 */
final class WindowFigures {
    private static final Path JAR = Path.of("target", "orlop.jar");
    private static final int STARTS = 5;
    private static final long WARM_NS = 4_000_000_000L;
    private static final int MOST = 1_000;

    private WindowFigures() {}

    public static void main(String[] args) throws Exception {
        List<Double> starts = new ArrayList<>();
        List<Double> processor = new ArrayList<>();
        for (int i = 0; i < STARTS; i++) {
            String[] said = start();
            starts.add(Double.parseDouble(said[0]));
            processor.add(Double.parseDouble(said[1]));
        }
        say("start to the first sample", starts, "<= 2000 ms");
        say("  time of all processors for it", processor, "none");
        Drawing large = GrownBoat.of(1000);
        say("frame while dragging, 1000 components", frames(large, InputEvent.SHIFT_DOWN_MASK), "<= 8 ms p99");
        say("frame while running a cable among them", frames(large, 0), "<= 8 ms p99");
        EditFigures.say(EditFigures.measure(EditFigures.drawing(200, 5), EditFigures.WARM_UP, 400));
        System.exit(0);
    }

    private static void say(String what, List<Double> ms, String budget) {
        List<Double> sorted = ms.stream().sorted().toList();
        if (sorted.isEmpty()) {
            System.out.printf(Locale.ROOT, "%-40s not once within the time%n", what);
            return;
        }
        System.out.printf(
                Locale.ROOT,
                "%-40s median %8.2f ms   p99 %8.2f ms   of %4d   budget %s%n",
                what,
                sorted.get(sorted.size() / 2),
                sorted.get(Math.min(sorted.size() - 1, (int) (sorted.size() * 0.99))),
                sorted.size(),
                budget);
    }

    private static void say(String what, Steps steps, String budget) {
        say(what, steps.clock, budget);
        say("  time of its processor for it", steps.processor, "none");
    }

    /** The milliseconds of the clock and of the processors that one start takes. */
    private static String[] start() throws Exception {
        if (!Files.isRegularFile(JAR)) {
            throw new IllegalStateException("no " + JAR + ": mvn package makes it");
        }
        String tests = Path.of(StartFigure.class
                        .getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .toURI())
                .toString();
        ProcessBuilder start = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        JAR + File.pathSeparator + tests,
                        StartFigure.class.getName())
                .redirectErrorStream(true);
        start.environment()
                .put("XDG_CONFIG_HOME", Files.createTempDirectory("orlop-start").toString());
        Process p = start.start();
        String said = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        p.waitFor();
        return said.strip().split(" ");
    }

    /** @param key held down: with the shift key the component moves, without it a cable runs from its terminal */
    private static Steps frames(Drawing d, int key) throws Exception {
        Steps steps = new Steps();
        SwingUtilities.invokeAndWait(() -> {
            Look.install(false);
            Session session = session(d);
            SheetCanvas canvas = new SheetCanvas(session, new ShownScene(), new Pointing());
            canvas.setSize(1920, 1080);
            canvas.view().fitDrawn();
            BufferedImage image = new BufferedImage(1920, 1080, BufferedImage.TYPE_INT_RGB);
            paint(canvas, image);
            Component c = d.components().require("E7_8");
            Point2D p = canvas.viewport()
                    .toView(c.place().at().xMm(), c.place().at().yMm());
            mouse(canvas, MouseEvent.MOUSE_PRESSED, p, 0, key);
            steps.measure(i -> {
                mouse(canvas, MouseEvent.MOUSE_DRAGGED, p, 5 + i % 90, key);
                paint(canvas, image);
            });
        });
        return steps;
    }

    private static void mouse(SheetCanvas canvas, int id, Point2D p, int off, int key) {
        int x = (int) p.getX() + off;
        int y = (int) p.getY() + off / 2;
        canvas.dispatchEvent(
                new MouseEvent(canvas, id, 0, InputEvent.BUTTON1_DOWN_MASK | key, x, y, 1, false, MouseEvent.BUTTON1));
    }

    private static void paint(SheetCanvas canvas, BufferedImage image) {
        Graphics2D g = image.createGraphics();
        canvas.paint(g);
        g.dispose();
    }

    private static Session session(Drawing d) {
        return new Session(
                d,
                null,
                Review::of,
                Runnable::run,
                new orlop.desk.UiThread() {
                    @Override
                    public boolean isCurrent() {
                        return true;
                    }

                    @Override
                    public void execute(Runnable task) {
                        task.run();
                    }
                },
                e -> {
                    throw new IllegalStateException(e);
                });
    }

    /** One thing done again and again, on one thread. */
    private static final class Steps {
        private final List<Double> clock = new ArrayList<>();
        private final List<Double> processor = new ArrayList<>();

        /** Warms up for four seconds, and then measures for as long. */
        void measure(IntConsumer step) {
            ThreadMXBean threads = ManagementFactory.getThreadMXBean();
            long measured = System.nanoTime() + WARM_NS;
            for (int i = 0; System.nanoTime() < measured + WARM_NS && clock.size() < MOST; i++) {
                long cpu = threads.getCurrentThreadCpuTime();
                long from = System.nanoTime();
                step.accept(i);
                if (from >= measured) {
                    clock.add((System.nanoTime() - from) / 1e6);
                    processor.add((threads.getCurrentThreadCpuTime() - cpu) / 1e6);
                }
            }
        }
    }
}
