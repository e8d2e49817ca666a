package orlop.desk;

import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import orlop.drawing.Drawing;
import orlop.drawing.Edits;
import orlop.store.DrawingFile;
import orlop.store.Journal;

/**
 * A program at work, made to be killed: it edits without end, saves now and then, and after each edit prints the time
 * and the number of the edit, which is also the name of the lamp.
 */
final class WorkThatIsKilled {
    private static final int MOST_EDITS = 20_000; // should nobody kill it, it ends by itself

    private WorkThatIsKilled() {}

    /** @param args a folder and the seed of the edits */
    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]);
        Path file = folder.resolve("boat.orlop");
        Random random = new Random(Long.parseLong(args[1]));
        Drawing drawing = SmallBoat.drawing();
        DrawingFile.save(file, drawing);
        QueueUi ui = new QueueUi();
        Session session = new Session(drawing, file, Review::of, task -> {}, ui, e -> e.printStackTrace());
        ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor();
        new Keeper(session, Journal.begin(folder.resolve("journals")), clock, ui);
        for (int n = 1; n < MOST_EDITS; n++) {
            session.apply(Edits.change(session.state()
                    .drawing()
                    .components()
                    .find("EA1")
                    .orElseThrow()
                    .withName(String.valueOf(n))));
            System.out.println(System.currentTimeMillis() + " " + n);
            if (random.nextInt(60) == 0) {
                DrawingFile.save(file, session.state().drawing());
                session.saved(file);
            }
            ui.runAll();
            Thread.sleep(random.nextInt(200) == 0 ? 900 : random.nextInt(12));
        }
    }
}
