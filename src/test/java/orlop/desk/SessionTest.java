package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Message;
import orlop.study.Results;

class SessionTest {
    private final QueueUi ui = new QueueUi();
    private final Queue<Runnable> work = new ArrayDeque<>();
    private final List<Throwable> failures = new ArrayList<>();
    private final Drawing start = SmallBoat.drawing();
    private final Session session = new Session(start, null, Review::of, work::add, ui, failures::add);

    private void workOut() {
        work.forEach(Runnable::run);
        work.clear();
        ui.runAll();
    }

    @Test
    void it_begins_with_the_first_sheet_the_governing_condition_and_no_results() {
        SessionState s = session.state();

        assertThat(s.sheet()).isEqualTo("1");
        assertThat(s.condition()).isEqualTo(Results.GOVERNING);
        assertThat(s.review()).isNull();
        assertThat(s.dirty()).isFalse();
    }

    @Test
    void an_edit_makes_the_old_results_stale_until_the_new_ones_come() {
        workOut();
        Review old = session.state().review();
        assertThat(session.state().fresh()).isTrue();

        session.apply(Edits.change(start.cables().require("W1").withLengthM(9.0)));

        assertThat(session.state().review()).isSameAs(old);
        assertThat(session.state().fresh()).isFalse();
        workOut();
        assertThat(session.state().fresh()).isTrue();
        assertThat(session.state().review()).isNotSameAs(old);
    }

    @Test
    void what_is_edited_is_told_before_its_review_is_asked_for() {
        workOut();
        List<SessionState> told = new ArrayList<>();
        List<Integer> asked = new ArrayList<>();
        session.asking(s -> {
            asked.add(work.size());
            told.add(s);
        });

        session.apply(Edits.move(Set.of("GB1"), 5, 0, "a"));
        session.undo();
        session.select(Set.of("W1"));

        assertThat(asked).as("reviews asked for until then").containsExactly(0, 1);
        assertThat(told.get(1).drawing()).isSameAs(start);
        assertThat(told.get(0).drawing()).isNotSameAs(start);
    }

    @Test
    void a_refused_edit_changes_nothing_and_says_why() {
        Message reason = session.apply(Edits.rename("GB1", "QB1")).orElseThrow();

        assertThat(reason.key()).isEqualTo("drawing.refuse.tag-taken");
        assertThat(session.state().notice()).isEqualTo(reason);
        assertThat(session.state().drawing()).isSameAs(start);
        assertThat(session.state().undo()).isNull();
    }

    @Test
    void a_value_out_of_range_is_a_refusal_too() {
        Message reason = session.apply(CardEdits.set("W1", "lengthM", -1.0, "")).orElseThrow();

        assertThat(reason.key()).isEqualTo("drawing.range.not-negative");
        assertThat(session.state().drawing()).isSameAs(start);
    }

    @Test
    void undo_gives_the_very_first_drawing_back_and_it_is_clean_again() {
        session.apply(Edits.move(Set.of("GB1"), 5, 0, "a"));
        session.seal();
        session.apply(Edits.delete(Set.of("W2")));
        assertThat(session.state().dirty()).isTrue();

        session.undo();
        session.undo();

        assertThat(session.state().drawing()).isSameAs(start);
        assertThat(session.state().dirty()).isFalse();
        assertThat(session.state().undo()).isNull();
        assertThat(session.state().redo()).isNotNull();
    }

    @Test
    void a_preview_is_shown_beside_the_history_and_asks_for_no_results() {
        workOut();

        session.preview(Edits.move(Set.of("GB1"), 5, 0, "a"));

        assertThat(session.state().shown()).isNotSameAs(start);
        assertThat(session.state().drawing()).isSameAs(start);
        assertThat(session.state().fresh()).isTrue();
        assertThat(work).isEmpty();
        session.endPreview();
        assertThat(session.state().shown()).isSameAs(start);
    }

    @Test
    void what_is_deleted_is_selected_no_longer() {
        session.select(Set.of("GB1", "W1"));

        session.apply(Edits.delete(Set.of("W1")));

        assertThat(session.state().selection()).containsExactly("GB1");
    }

    @Test
    void a_listener_that_changes_the_session_is_told_in_order() {
        List<String> told = new ArrayList<>();
        session.listen((before, after) -> {
            if (before.selection().isEmpty() && after.selection().contains("GB1")) {
                session.select(Set.of("QB1"));
            }
        });
        session.listen((before, after) -> told.add(before.selection() + " " + after.selection()));

        session.select(Set.of("GB1"));

        assertThat(told).containsExactly("[] [GB1]", "[GB1] [QB1]");
    }

    @Test
    void a_listener_that_throws_keeps_nobody_else_from_hearing() {
        List<SessionState> heard = new ArrayList<>();
        session.listen((before, after) -> {
            throw new IllegalStateException("a bug in a widget");
        });
        session.listen((before, after) -> heard.add(after));

        assertThatThrownBy(() -> session.select(Set.of("GB1"))).hasMessage("a bug in a widget");

        assertThat(heard).hasSize(1);
    }

    @Test
    void saving_makes_it_clean_and_undo_makes_it_dirty_again() {
        session.apply(Edits.delete(Set.of("W2")));

        session.saved(Path.of("boat.orlop"));

        assertThat(session.state().dirty()).isFalse();
        assertThat(session.state().file()).hasFileName("boat.orlop");
        session.undo();
        assertThat(session.state().dirty()).isTrue();
    }

    @Test
    void a_failing_calculation_is_told_and_the_drawing_stays() {
        Session s = new Session(
                start,
                null,
                (d, stale) -> {
                    throw new IllegalStateException("a bug in the sums");
                },
                work::add,
                ui,
                failures::add);
        workOut();

        assertThat(failures).singleElement().satisfies(e -> assertThat(e).hasMessage("a bug in the sums"));
        assertThat(s.state().drawing()).isSameAs(start);
    }

    @Test
    void another_thread_is_refused() throws InterruptedException {
        AtomicReference<Throwable> thrown = new AtomicReference<>();
        Thread t = new Thread(() -> session.select(Set.of("GB1")));
        t.setUncaughtExceptionHandler((thread, e) -> thrown.set(e));
        t.start();
        t.join();

        assertThat(thrown.get()).isInstanceOf(IllegalStateException.class);
        assertThat(session.state().selection()).isEmpty();
    }

    @Test
    void undoing_the_sheet_that_is_shown_falls_back_to_the_first() {
        session.apply(Edit.of(Message.of("editor.edit.sheet", "3"), d -> d.with(orlop.drawing.Sheet.of("3", ""))));
        session.showSheet("3");

        session.undo();

        assertThat(session.state().sheet()).isEqualTo("1");
    }
}
