package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.drawing.Drawing;

@Timeout(20)
class RecalculatorTest {
    private final QueueUi ui = new QueueUi();
    private final Queue<Runnable> work = new ArrayDeque<>();
    private final List<Drawing> delivered = new ArrayList<>();
    private final List<Throwable> failures = new ArrayList<>();
    private final Drawing first = Drawing.empty("first");
    private final Drawing second = Drawing.empty("second");

    @Test
    void a_result_is_delivered_on_the_windows_thread() {
        recalculator(Review::of).request(first);

        work.remove().run();

        assertThat(delivered).isEmpty();
        ui.runAll();
        assertThat(delivered).containsExactly(first);
    }

    @Test
    void only_the_newest_drawing_is_worked_out_when_two_wait() {
        List<Drawing> studied = new ArrayList<>();
        Recalculator r = recalculator((d, stale) -> {
            studied.add(d);
            return Review.of(d, stale);
        });

        r.request(first);
        r.request(second);
        work.forEach(Runnable::run);
        ui.runAll();

        assertThat(studied).containsExactly(second);
        assertThat(delivered).containsExactly(second);
    }

    @Test
    void a_result_that_is_overtaken_on_its_way_to_the_window_is_thrown_away() {
        Recalculator r = recalculator(Review::of);
        r.request(first);
        work.remove().run();

        r.request(second);
        ui.runAll();

        assertThat(delivered).isEmpty();
        work.remove().run();
        ui.runAll();
        assertThat(delivered).containsExactly(second);
    }

    @Test
    void a_running_calculation_hears_that_it_was_overtaken() throws InterruptedException {
        CountDownLatch running = new CountDownLatch(1);
        CountDownLatch gaveUp = new CountDownLatch(1);
        ExecutorService worker = Executors.newSingleThreadExecutor();
        try {
            Recalculator r = new Recalculator(
                    (d, stale) -> {
                        if (d.equals(first)) {
                            running.countDown();
                            while (!stale.getAsBoolean()) {
                                Thread.onSpinWait();
                            }
                            gaveUp.countDown();
                            throw new CancellationException();
                        }
                        return Review.of(d, stale);
                    },
                    worker,
                    ui,
                    review -> delivered.add(review.drawing()),
                    failures::add);
            r.request(first);
            running.await();
            r.request(second);
            gaveUp.await();
        } finally {
            worker.shutdown();
            assertThat(worker.awaitTermination(10, TimeUnit.SECONDS)).isTrue();
        }
        ui.runAll();

        assertThat(delivered).containsExactly(second);
        assertThat(failures).isEmpty();
    }

    @Test
    void a_failure_is_delivered_and_the_next_request_works() {
        Recalculator r = recalculator((d, stale) -> {
            if (d.equals(first)) {
                throw new AssertionError("a bug in the sums");
            }
            return Review.of(d, stale);
        });

        r.request(first);
        work.remove().run();
        ui.runAll();
        r.request(second);
        work.remove().run();
        ui.runAll();

        assertThat(failures).singleElement().satisfies(e -> assertThat(e).hasMessage("a bug in the sums"));
        assertThat(delivered).containsExactly(second);
    }

    @Test
    void after_cancel_nothing_comes() {
        Recalculator r = recalculator(Review::of);
        r.request(first);
        work.remove().run();

        r.cancel();
        ui.runAll();

        assertThat(delivered).isEmpty();
    }

    private Recalculator recalculator(Review.Maker maker) {
        return new Recalculator(maker, work::add, ui, review -> delivered.add(review.drawing()), failures::add);
    }
}
