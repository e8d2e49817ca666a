package orlop.editor;

import java.awt.Component;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import org.jspecify.annotations.Nullable;
import orlop.desk.Keeper;
import orlop.desk.OpenFile;
import orlop.desk.Review;
import orlop.desk.Session;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Message;
import orlop.store.FileProblem;
import orlop.store.Journal;

/** The windows of the program. On the event thread. */
final class Windows implements Desks {
    private final Settings settings;
    private final Review.Maker maker;
    private final List<MainWindow> open = new ArrayList<>();
    private final Map<MainWindow, Keeper> keepers = new HashMap<>();
    private final Unexpected unexpected;

    Windows(Settings settings, Review.Maker maker) {
        this.settings = settings;
        this.maker = maker;
        unexpected = new Unexpected(settings.home().resolve("error.log"), this::front, this::writeNow);
    }

    /** The window at which somebody works; else any; null if there is none. */
    private @Nullable Component front() {
        return open.stream()
                .filter(w -> w.frame().isActive())
                .findFirst()
                .or(() -> open.stream().findFirst())
                .map(MainWindow::frame)
                .orElse(null);
    }

    /** Writes down what is not saved in any window: an error in one may be the end of all. */
    private void writeNow() {
        keepers.values().forEach(Keeper::writeNow);
    }

    @Override
    public boolean show(Path file) {
        Optional<MainWindow> there =
                open.stream().filter(w -> w.bench().files().has(file)).findFirst();
        there.ifPresent(MainWindow::toFront);
        return there.isPresent();
    }

    @Override
    public void open(Drawing drawing, @Nullable OpenFile file) {
        window(drawing, file, true).show();
    }

    /**
     * Lays what a crash left of a file on the desk that has the file open, if nothing there would be pushed aside. What
     * stands in the file can be had back with Undo.
     *
     * @return whether there is such a desk; the drawing stands in its journal then
     */
    boolean recovered(Path file, Drawing drawing) {
        for (MainWindow w : open) {
            Session session = w.bench().canvas().session();
            if (w.bench().files().has(file) && !session.state().dirty()) {
                session.apply(Edit.of(Message.of("editor.edit.recover"), before -> drawing));
                writeNow(keepers.get(w));
                w.toFront();
                return true;
            }
        }
        return false;
    }

    @Override
    public void quit() {
        for (MainWindow w : List.copyOf(open)) {
            w.toFront();
            if (!w.bench().files().close()) {
                return;
            }
        }
    }

    /**
     * A window, not shown yet.
     *
     * @param saved whether the drawing stands in the file, or in none, as it is; false for a recovered one
     */
    MainWindow window(Drawing drawing, @Nullable OpenFile file, boolean saved) {
        ScheduledExecutorService worker = thread("orlop-study");
        ScheduledExecutorService clock = thread("orlop-journal");
        MainWindow[] made = new MainWindow[1];
        Keeper[] keeper = new Keeper[1];
        Thread.currentThread().setUncaughtExceptionHandler(unexpected);
        Path path = file == null ? null : file.path();
        Session session = new Session(drawing, path, maker, worker, new EventThread(), unexpected::tell);
        if (!saved) {
            session.openUnsaved(drawing, path);
        }
        made[0] = new MainWindow(session, settings, this, gone -> {
            open.remove(gone);
            keepers.remove(gone);
            worker.shutdown();
            if (keeper[0] != null) {
                keeper[0].close();
            }
            clock.shutdown();
        });
        made[0].bench().files().take(file);
        settings.journals().ifPresent(folder -> keeper[0] = keeper(made[0], session, folder, clock));
        if (keeper[0] != null) {
            keepers.put(made[0], keeper[0]);
        }
        open.add(made[0]);
        return made[0];
    }

    private static void writeNow(@Nullable Keeper keeper) {
        if (keeper != null) {
            keeper.writeNow();
        }
    }

    private static @Nullable Keeper keeper(
            MainWindow window, Session session, Path folder, ScheduledExecutorService clock) {
        try {
            clock.execute(Journal::warmUp);
            Keeper keeper = new Keeper(session, Journal.begin(folder), clock, new EventThread());
            keeper.onKept(window::inJournal);
            keeper.writeNow();
            return keeper;
        } catch (FileProblem e) {
            window.inJournal(false);
            session.say(Message.of("desk.no-journal", e.reason()));
            return null;
        }
    }

    private static ScheduledExecutorService thread(String name) {
        return Executors.newSingleThreadScheduledExecutor(task -> {
            Thread t = new Thread(task, name);
            t.setDaemon(true);
            return t;
        });
    }
}
