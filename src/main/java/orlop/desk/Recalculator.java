package orlop.desk;

import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Drawing;

/**
 * Works reviews out on another thread. The newest drawing wins: a run that it overtakes is told to stop, and if it
 * doesn't hear in time its result is thrown away. Where a drawing differs from the one before on paper only, nothing is
 * worked out anew.
 *
 * <p>A run is never interrupted by {@code Thread.interrupt}: it asks a flag inside its loops.
 */
final class Recalculator {
    private final Review.Maker maker;
    private final Executor worker;
    private final Executor ui;
    private final Consumer<Review> onReview;
    private final Consumer<Throwable> onFailure;
    private final AtomicLong latest = new AtomicLong();
    private volatile Consumer<Review> ahead = review -> {};
    private volatile @Nullable Review last;

    /**
     * @param worker runs one task at a time, in order
     * @param ui where the two callbacks are called
     */
    Recalculator(
            Review.Maker maker,
            Executor worker,
            Executor ui,
            Consumer<Review> onReview,
            Consumer<Throwable> onFailure) {
        this.maker = maker;
        this.worker = worker;
        this.ui = ui;
        this.onReview = onReview;
        this.onFailure = onFailure;
    }

    /** @param first told of each review by the worker, before {@code onReview}; must not fail */
    void ahead(Consumer<Review> first) {
        ahead = first;
    }

    /** Asks for a review of this drawing and no other. Any thread. */
    void request(Drawing drawing) {
        long ticket = latest.incrementAndGet();
        worker.execute(() -> run(drawing, ticket));
    }

    /** Gives up what runs and what waits. Any thread. */
    void cancel() {
        latest.incrementAndGet();
    }

    private void run(Drawing drawing, long ticket) {
        BooleanSupplier stale = () -> ticket != latest.get();
        if (stale.getAsBoolean()) {
            return;
        }
        try {
            Review before = last;
            Review review = before == null
                    ? maker.of(drawing, stale)
                    : before.onPaper(drawing).orElseGet(() -> maker.of(drawing, stale));
            last = review;
            if (!stale.getAsBoolean()) {
                ahead.accept(review);
            }
            deliver(stale, () -> onReview.accept(review));
        } catch (CancellationException e) {
            // overtaken: the newer run is queued
        } catch (RuntimeException | Error e) {
            deliver(stale, () -> onFailure.accept(e));
        }
    }

    private void deliver(BooleanSupplier stale, Runnable result) {
        ui.execute(() -> {
            if (!stale.getAsBoolean()) {
                result.run();
            }
        });
    }
}
