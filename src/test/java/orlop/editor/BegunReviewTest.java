package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.Review;
import orlop.drawing.Drawing;

@Timeout(30)
class BegunReviewTest {
    private final Drawing d = TestBoat.drawing();
    private final Review begun = Review.of(d, () -> false);

    @Test
    void the_review_that_was_begun_serves_its_drawing_once() {
        BegunReview maker = new BegunReview(d, CompletableFuture.completedFuture(begun));

        assertThat(maker.of(d, () -> false)).isSameAs(begun);
        assertThat(maker.of(d, () -> false)).isNotSameAs(begun).isEqualTo(begun);
    }

    @Test
    void another_drawing_has_a_review_of_its_own() {
        BegunReview maker = new BegunReview(d, CompletableFuture.completedFuture(begun));
        Drawing other = Drawing.empty("Other");

        assertThat(maker.of(other, () -> false).drawing()).isSameAs(other);
    }

    @Test
    void it_is_not_waited_for_once_it_is_stale() {
        BegunReview maker = new BegunReview(d, new CompletableFuture<>());
        AtomicInteger asked = new AtomicInteger();

        assertThatThrownBy(() -> maker.of(d, () -> asked.incrementAndGet() > 3))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void what_went_wrong_in_it_comes_out_where_it_is_asked_for() {
        BegunReview maker =
                new BegunReview(d, CompletableFuture.failedFuture(new IllegalArgumentException("a fault in the sums")));

        assertThatThrownBy(() -> maker.of(d, () -> false)).hasMessage("a fault in the sums");
    }
}
