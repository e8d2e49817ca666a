package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import orlop.desk.QueueUi;
import orlop.desk.Review;
import orlop.desk.Session;
import orlop.drawing.Edits;
import orlop.drawing.OperatingCondition;

/** The blink after an edit, with a clock that rings when the test lets it. */
class BlinkTest {
    private final Queue<Runnable> studies = new ArrayDeque<>();
    private final QueueUi ui = new QueueUi();
    private final AtomicInteger told = new AtomicInteger();
    private final Session session = new Session(
            TestBoat.drawing().with(OperatingCondition.asDrawn("x", "Other")),
            null,
            Review::of,
            studies::add,
            ui,
            e -> {
                throw new AssertionError(e);
            });
    private Runnable ring = () -> {};
    private boolean running;
    private int longestMs;
    private final Blink blink = new Blink(session, end -> {
        ring = end;
        return new Blink.Clock() {
            @Override
            public void start(int ms) {
                longestMs = ms;
                running = true;
            }

            @Override
            public void stop() {
                running = false;
            }
        };
    });

    BlinkTest() {
        blink.listen(told::incrementAndGet);
    }

    private void studied() {
        studies.forEach(Runnable::run);
        studies.clear();
        ui.runAll();
    }

    private void edit() {
        session.apply(Edits.move(Set.of("FC1"), 2.5, 0, new Object()));
    }

    @Test
    void before_the_first_figures_there_is_nothing_to_wait_for() {
        edit();

        assertThat(blink.waits()).isFalse();
    }

    @Test
    void after_an_edit_the_figures_are_waited_for_until_they_come() {
        studied();
        assertThat(blink.waits()).isFalse();

        edit();
        assertThat(blink.waits()).isTrue();
        assertThat(running).isTrue();
        studied();

        assertThat(session.state().fresh()).isTrue();
        assertThat(blink.waits()).isFalse();
        assertThat(running).isFalse();
        ring.run();
        assertThat(told).as("figures that have come need no word").hasValue(0);
    }

    @Test
    void when_it_is_over_the_window_is_told_once_and_the_next_edit_is_not_waited_for_while_figures_are_old() {
        studied();
        edit();

        ring.run();
        blink.end();

        assertThat(told).hasValue(1);
        assertThat(blink.waits()).isFalse();
        edit();
        assertThat(blink.waits()).isFalse();
        studied();
        edit();
        assertThat(blink.waits()).isTrue();
    }

    @Test
    void the_figures_of_a_large_drawing_are_waited_for_longer() {
        studied();
        edit();
        assertThat(longestMs).isEqualTo(Blink.LONGEST_MS);

        session.open(GrownBoat.of(400), null);
        studied();
        session.apply(Edits.move(Set.of("GB1"), 2.5, 0, new Object()));

        assertThat(longestMs).isEqualTo(Blink.LONGEST_OF_LARGE_MS);
    }

    @Test
    void a_picture_that_is_nearly_there_is_waited_for_but_not_for_ever() {
        blink.coming(d -> d.components().contains("FC1"));
        studied();
        edit();

        ring.run();
        assertThat(blink.waits()).isTrue();
        assertThat(told).hasValue(0);
        for (int i = 0; i < 10; i++) {
            ring.run();
        }

        assertThat(blink.waits()).isFalse();
        assertThat(told).hasValue(1);
    }

    @Test
    void what_is_selected_with_the_edit_does_not_end_it() {
        studied();
        edit();

        session.select(Set.of("FC2"));

        assertThat(blink.waits()).isTrue();
    }

    @Test
    void another_condition_or_a_drag_is_shown_at_once() {
        studied();
        edit();
        session.showCondition("x");
        assertThat(blink.waits()).isFalse();

        studied();
        edit();
        session.preview(Edits.move(Set.of("FC2"), 5, 0, "drag"));
        assertThat(blink.waits()).isFalse();
    }

    @Test
    void undo_is_waited_for_like_any_edit() {
        studied();
        edit();
        studied();

        session.undo();

        assertThat(blink.waits()).isTrue();
    }
}
