package orlop.desk;

import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import orlop.drawing.Drawing;
import orlop.study.StudyOptions;
import orlop.study.Workings;
import orlop.study.working.Figure;

/** Works out on another thread how the figures of an item came about. The newest question wins. */
public final class Explainer {
    private final Executor worker;
    private final Executor ui;
    private final Consumer<Throwable> onFailure;
    private final AtomicLong latest = new AtomicLong();

    /**
     * @param worker runs one task at a time, in order
     * @param ui where answers are given
     */
    Explainer(Executor worker, Executor ui, Consumer<Throwable> onFailure) {
        this.worker = worker;
        this.ui = ui;
        this.onFailure = onFailure;
    }

    /**
     * Asks for the workings of an item of a drawing. Any thread.
     *
     * @param condition as of {@link Workings#of(String, String)}
     * @param answer called on the session's thread unless another question has been asked meanwhile
     */
    public void ask(Drawing drawing, String condition, String item, Consumer<Map<Figure, Workings.Shown>> answer) {
        long ticket = latest.incrementAndGet();
        BooleanSupplier stale = () -> ticket != latest.get();
        worker.execute(() -> {
            if (stale.getAsBoolean()) {
                return;
            }
            try {
                Map<Figure, Workings.Shown> found =
                        Workings.of(drawing, StudyOptions.DEFAULT, stale).of(condition, item);
                ui.execute(() -> {
                    if (!stale.getAsBoolean()) {
                        answer.accept(found);
                    }
                });
            } catch (CancellationException e) {
                // overtaken: the newer question is queued
            } catch (RuntimeException | Error e) {
                ui.execute(() -> onFailure.accept(e));
            }
        });
    }

    /** Forgets what was asked. Any thread. */
    public void cancel() {
        latest.incrementAndGet();
    }
}
