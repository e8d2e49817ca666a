package orlop.editor;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import orlop.desk.Review;
import orlop.drawing.Drawing;

/**
 * Makes reviews. That of one drawing was begun before there was a session to ask for it: who asks first gets it, everybody
 * else a new one. Any thread.
 */
final class BegunReview implements Review.Maker {
    private static final int LOOK_MS = 5;

    private record Begun(Drawing drawing, CompletableFuture<Review> review) {}

    private final AtomicReference<@Nullable Begun> begun;

    BegunReview(Drawing drawing, CompletableFuture<Review> review) {
        begun = new AtomicReference<>(new Begun(drawing, review));
    }

    @Override
    @SuppressWarnings("ReferenceEquality") // the very drawing of which it was begun
    public Review of(Drawing drawing, BooleanSupplier stale) {
        Begun b = begun.getAndSet(null);
        return b != null && b.drawing == drawing ? awaited(b.review, stale) : Review.of(drawing, stale);
    }

    private static Review awaited(CompletableFuture<Review> review, BooleanSupplier stale) {
        try {
            while (!stale.getAsBoolean()) {
                Review ready = within(review);
                if (ready != null) {
                    return ready;
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        throw new CancellationException();
    }

    private static @Nullable Review within(CompletableFuture<Review> review) throws InterruptedException {
        try {
            return review.get(LOOK_MS, TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            return null;
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
