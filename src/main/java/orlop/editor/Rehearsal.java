package orlop.editor;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.concurrent.TimeUnit;
import orlop.desk.Review;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.drawing.Sheet;
import orlop.scene.Palette;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneRequest;

/**
 * Goes through what follows an edit, some hundred times for nothing: study, findings, scene and painting, of a drawing in
 * which one cable after the other is a little longer. Java translates code into fast code only after it has run often, so
 * that the first edits of a fresh program would take four times as long as later ones.
 *
 * <p>It touches nothing that is on the desk, rests as long as it works, and ends by itself after some seconds. What goes
 * wrong here goes wrong again where it is needed, and is told there.
 */
final class Rehearsal implements Runnable {
    /** What is larger takes so long that nothing is won within the time. */
    private static final int MOST_COMPONENTS = 300;

    private static final int SIDE = 300;
    /** By then a start is over, which it would hold up. */
    private static final long AFTER_MS = 2_000;

    private static final double LONGER_M = 0.1;

    private final SceneBuilder builder = SceneBuilder.bundled();
    private final int rounds;
    private final long mostNs;
    private Drawing drawing;
    private int done;

    /**
     * @param drawing stays as it is
     * @param rounds so many at most
     * @param mostSeconds no round begins later than that after the first
     */
    Rehearsal(Drawing drawing, int rounds, int mostSeconds) {
        this.drawing = drawing;
        this.rounds = rounds;
        this.mostNs = TimeUnit.SECONDS.toNanos(mostSeconds);
    }

    /** Begins soon, on a thread of its own that the program does not wait for. */
    static void begin(Drawing drawing) {
        Thread t = new Thread(
                () -> {
                    if (rested(AFTER_MS)) {
                        new Rehearsal(drawing, 150, 8).run();
                    }
                },
                "orlop-rehearsal");
        t.setDaemon(true);
        t.start();
    }

    @Override
    public void run() {
        int size = drawing.components().size();
        if (drawing.sheets().isEmpty() || drawing.cables().isEmpty() || size > MOST_COMPONENTS) {
            return;
        }
        long from = System.nanoTime();
        try {
            while (done < rounds && System.nanoTime() - from < mostNs) {
                long began = System.nanoTime();
                round();
                done++;
                if (!rested(TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - began))) {
                    return;
                }
            }
        } catch (RuntimeException e) {
            done = rounds; // the same is done, and told, when the drawing is studied for its window
        }
    }

    /** How many rounds have been gone through. */
    int done() {
        return done;
    }

    private void round() {
        drawing = longer(drawing, done);
        Review review = Review.of(drawing, () -> false);
        List<Sheet> sheets = drawing.sheets().stream().toList();
        Sheet sheet = sheets.get(done % sheets.size());
        Scene scene =
                builder.build(SceneRequest.screen(drawing, review.study().governing(), review.findings(), sheet.id()));
        paint(scene);
    }

    /** Paints a scene for nothing, as it is painted on the screen. */
    static void paint(Scene scene) {
        Graphics2D g = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_INT_RGB).createGraphics();
        StaticLayer.hints(g);
        g.scale(SIDE / scene.widthMm(), SIDE / scene.widthMm());
        SheetPainting.paint(scene, g, Palette.LIGHT);
        g.dispose();
    }

    private static Drawing longer(Drawing d, int round) {
        List<Cable> cables = d.cables().stream().toList();
        Cable w = cables.get(round % cables.size());
        Double lengthM = w.lengthM();
        return d.with(w.withLengthM(lengthM == null ? LONGER_M : lengthM + LONGER_M));
    }

    private static boolean rested(long ms) {
        try {
            Thread.sleep(ms);
            return true;
        } catch (InterruptedException e) {
            return false;
        }
    }
}
