package orlop.editor;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import orlop.desk.Review;
import orlop.drawing.Drawing;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneRequest;

/**
 * What a start does on other threads while the window is being built: symbols, fonts and the code that lays out a sheet
 * are made ready, and the first review is begun. Whatever goes wrong here goes wrong again where it is needed, and is told
 * there.
 */
final class Readying {
    private static final int MOST_REHEARSED = 300;

    private final ExecutorService parts = Executors.newSingleThreadExecutor(task -> thread("orlop-readying", task));

    private static Thread thread(String name, Runnable task) {
        Thread t = new Thread(task, name);
        t.setDaemon(true);
        return t;
    }

    /** What every window needs. */
    void parts() {
        parts.execute(SheetPainting::ready);
    }

    /**
     * Begins with the review of the first drawing, and lays out and paints its first sheet once for nothing: done
     * again on the event thread it takes a fifth of the time.
     *
     * @return what makes reviews from now on; it has the first one begun already
     */
    Review.Maker review(Drawing drawing) {
        CompletableFuture<Review> first = CompletableFuture.supplyAsync(
                () -> Review.of(drawing, () -> false),
                task -> thread("orlop-first-review", task).start());
        parts.execute(() -> drawing.sheets().stream().findFirst().ifPresent(sheet -> rehearse(drawing, sheet.id())));
        parts.shutdown();
        return new BegunReview(drawing, first);
    }

    private static void rehearse(Drawing drawing, String sheet) {
        if (drawing.components().size() > MOST_REHEARSED) {
            return; // laying it out twice would cost more than is won
        }
        Scene scene =
                SceneBuilder.bundled().build(SceneRequest.screen(drawing, ShownScene.NO_RESULTS, List.of(), sheet));
        Rehearsal.paint(scene);
    }
}
