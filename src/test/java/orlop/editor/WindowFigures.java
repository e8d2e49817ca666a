package orlop.editor;

import java.awt.Graphics2D;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.swing.SwingUtilities;
import orlop.desk.RecordParts;
import orlop.desk.Review;
import orlop.desk.Sample;
import orlop.desk.Session;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.Drawing;
import orlop.drawing.Edits;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Phase;
import orlop.drawing.Place;
import orlop.drawing.Sheet;
import orlop.drawing.SheetSize;
import orlop.drawing.TerminalRef;

/**
 * Measures the window; no test, since a busy machine would fail it. Run on a quiet machine with a display:
 *
 * <pre>mvn test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=orlop.editor.WindowFigures</pre>
 *
 * <p>Start: a program of its own, from its process to the first sample painted with its figures. Frame: painting at
 * 1920 × 1080 while a component among 1,000 is dragged. Edit: from a changed length among 200 components to the study,
 * the findings and the scene with its annotations.
 */
final class WindowFigures {
    private static final int WARM = 60;
    private static final int FRAMES = 400;
    private static final int EDITS = 400;

    private WindowFigures() {}

    public static void main(String[] args) throws Exception {
        if (args.length > 0) {
            start();
            return;
        }
        double[] starts = new double[5];
        for (int i = 0; i < starts.length; i++) {
            starts[i] = startOfAProgram();
        }
        say("start to the first sample", starts, "<= 2000 ms");
        say("frame while dragging, 1000 components", frames(grown(1000)), "<= 8 ms p99");
        say("edit to annotations, 200 components", edits(grown(200)), "<= 5 ms median, <= 16 ms p99");
    }

    private static void say(String what, double[] ms, String budget) {
        double[] sorted = ms.clone();
        Arrays.sort(sorted);
        System.out.printf(
                Locale.ROOT,
                "%-40s median %8.2f ms   p99 %8.2f ms   budget %s%n",
                what,
                sorted[sorted.length / 2],
                sorted[Math.min(sorted.length - 1, (int) (sorted.length * 0.99))],
                budget);
    }

    private static double startOfAProgram() throws Exception {
        Process p = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        WindowFigures.class.getName(),
                        "start")
                .redirectErrorStream(true)
                .start();
        String said = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        p.waitFor();
        return Double.parseDouble(said.strip());
    }

    /** Opens the sample and says how long after the start of this process it was painted. */
    private static void start() throws Exception {
        MainWindow[] made = new MainWindow[1];
        SwingUtilities.invokeAndWait(() -> {
            made[0] = EditorApp.window(Sample.of("pilot-cutter"), null, new Settings(null));
            made[0].show();
        });
        boolean[] done = new boolean[1];
        while (!done[0]) {
            Thread.sleep(2);
            SwingUtilities.invokeAndWait(() -> {
                SheetCanvas canvas = made[0].bench().canvas();
                if (canvas.session().state().fresh() && canvas.getWidth() > 0) {
                    canvas.paintImmediately(0, 0, canvas.getWidth(), canvas.getHeight());
                    done[0] = true;
                }
            });
        }
        long born = ProcessHandle.current().info().startInstant().orElseThrow().toEpochMilli();
        System.out.println(System.currentTimeMillis() - born);
        System.exit(0);
    }

    private static double[] frames(Drawing d) throws Exception {
        double[] ms = new double[FRAMES];
        SwingUtilities.invokeAndWait(() -> {
            Look.install(false);
            Session session = session(d);
            SheetCanvas canvas = new SheetCanvas(session, new ShownScene(), new Pointing());
            canvas.setSize(1920, 1080);
            canvas.fit();
            BufferedImage image = new BufferedImage(1920, 1080, BufferedImage.TYPE_INT_RGB);
            paint(canvas, image);
            Component c = d.components().require("E500");
            Point2D p = canvas.viewport()
                    .toView(c.place().at().xMm(), c.place().at().yMm());
            mouse(canvas, MouseEvent.MOUSE_PRESSED, p, 0);
            for (int i = -WARM; i < FRAMES; i++) {
                long from = System.nanoTime();
                mouse(canvas, MouseEvent.MOUSE_DRAGGED, p, 5 + (i + WARM) % 90);
                paint(canvas, image);
                if (i >= 0) {
                    ms[i] = (System.nanoTime() - from) / 1e6;
                }
            }
        });
        return ms;
    }

    private static void mouse(SheetCanvas canvas, int id, Point2D p, int off) {
        int x = (int) p.getX() + off;
        int y = (int) p.getY() + off / 2;
        canvas.dispatchEvent(
                new MouseEvent(canvas, id, 0, InputEvent.BUTTON1_DOWN_MASK, x, y, 1, false, MouseEvent.BUTTON1));
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

    private static double[] edits(Drawing d) throws Exception {
        double[] ms = new double[EDITS];
        SwingUtilities.invokeAndWait(() -> {
            Session session = session(d);
            ShownScene shown = new ShownScene();
            shown.of(session.state());
            for (int i = -WARM * 4; i < EDITS; i++) {
                Cable w = session.state().drawing().cables().require("W" + (20 + Math.floorMod(i, 150)));
                long from = System.nanoTime();
                session.apply(Edits.change(w.withLengthM(3 + Math.floorMod(i, 17) / 2.0)));
                shown.of(session.state());
                if (i >= 0) {
                    ms[i] = (System.nanoTime() - from) / 1e6;
                }
            }
        });
        return ms;
    }

    /** Bars with their loads in rows on one A1 sheet. */
    private static Drawing grown(int components) {
        Drawing d = Drawing.empty("Grown")
                .with(RecordParts.with(Sheet.of("1", "Grown"), "size", SheetSize.A1))
                .with(ElectricalSystem.of("24", Nature.DC, 24))
                .with(OperatingCondition.asDrawn("c", "All"))
                .with(Component.of("GB1", Kind.BATTERY, Place.at("1", 40, 20), List.of("24")));
        int perBar = 40;
        int bars = 0;
        for (int i = 1; i < components; i++) {
            int place = i % perBar;
            int row = i / perBar;
            double y = 40 + 18.0 * row;
            if (place == 1 || bars == 0) {
                bars++;
                d = d.with(Component.of("B" + bars, Kind.BUSBAR, Place.at("1", 40, y), List.of("24")));
                String from = bars == 1 ? "GB1.1" : "B" + (bars - 1) + ".z";
                d = cable(d, "W" + i, from, "B" + bars + ".a", 70);
            } else {
                var load = new Consumer.Lighting(20.0, 1, 2, false, Phase.ALL, false);
                d = d.with(Component.of("E" + i, load, Place.at("1", 40 + 18.0 * place, y + 9), List.of("24")));
                d = cable(d, "W" + i, "B" + bars + ".t" + i, "E" + i + ".1", 4);
            }
        }
        return d;
    }

    private static Drawing cable(Drawing d, String id, String from, String to, double areaMm2) {
        return d.with(Cable.of(id, TerminalRef.parse(from, "from"), TerminalRef.parse(to, "to"))
                .withLengthM(3.0)
                .withAreaMm2(areaMm2));
    }
}
