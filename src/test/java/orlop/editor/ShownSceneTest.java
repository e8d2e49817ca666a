package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import orlop.desk.QueueUi;
import orlop.desk.Review;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.drawing.Drawing;
import orlop.drawing.Edits;
import orlop.scene.Annotations;
import orlop.scene.Role;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneItem;
import orlop.scene.SceneRequest;

/** Large sheets are laid out by a worker; what worker and window have to do waits here until it is let go. */
class ShownSceneTest {
    private static final Drawing LARGE = GrownBoat.of(320);

    private final Queue<Runnable> studies = new ArrayDeque<>();
    private final Queue<Runnable> layouts = new ArrayDeque<>();
    private final QueueUi ui = new QueueUi();
    private final AtomicInteger told = new AtomicInteger();
    private final ShownScene shown = new ShownScene();

    private Session session(Drawing d) {
        Session s = new Session(d, null, Review::of, studies::add, ui, e -> {
            throw new AssertionError(e);
        });
        shown.behind(layouts::add, ui, told::incrementAndGet);
        return s;
    }

    private static void all(Queue<Runnable> waiting) {
        for (Runnable r = waiting.poll(); r != null; r = waiting.poll()) {
            r.run();
        }
    }

    private void studied() {
        all(studies);
        ui.runAll();
    }

    private static Scene afresh(SessionState s) {
        return SceneBuilder.bundled()
                .build(SceneRequest.screen(
                        s.drawing(),
                        s.results().orElse(ShownScene.NO_RESULTS),
                        s.review() == null ? List.of() : s.review().findings(),
                        s.sheet()));
    }

    private static List<String> titles(Scene s, String subject) {
        return s.items().stream()
                .filter(i -> i.role() == Role.LABEL && i.subject().equals(subject))
                .map(SceneItem::title)
                .toList();
    }

    @Test
    void a_small_sheet_is_laid_out_at_once() {
        Session s = session(TestBoat.drawing());

        assertThat(shown.of(s.state())).contains(afresh(s.state()));
        assertThat(shown.awaited()).isFalse();
        assertThat(layouts).isEmpty();
    }

    @Test
    void a_large_one_is_awaited_and_told_of_once_however_often_it_is_asked_for() {
        Session s = session(LARGE);

        assertThat(shown.of(s.state())).isEmpty();
        assertThat(shown.of(s.state())).isEmpty();

        assertThat(shown.awaited()).isTrue();
        assertThat(layouts).hasSize(1);
        all(layouts);
        assertThat(shown.of(s.state())).as("before the window has heard").isEmpty();
        ui.runAll();
        assertThat(told).hasValue(1);
        assertThat(shown.awaited()).isFalse();
        assertThat(shown.of(s.state())).contains(afresh(s.state()));
    }

    @Test
    void the_sheet_without_figures_stays_until_the_one_with_figures_is_there() {
        Session s = session(LARGE);
        shown.of(s.state());
        all(layouts);
        ui.runAll();
        Scene bare = shown.of(s.state()).orElseThrow();

        studied();

        assertThat(s.state().fresh()).isTrue();
        assertThat(shown.of(s.state())).containsSame(bare);
        all(layouts);
        ui.runAll();
        Optional<Scene> figures = shown.of(s.state());
        assertThat(figures).contains(afresh(s.state()));
        String cable = LARGE.cables().stream().findFirst().orElseThrow().id();
        assertThat(titles(bare, cable)).hasSize(1);
        assertThat(titles(figures.orElseThrow(), cable)).isNotEqualTo(titles(bare, cable));
    }

    @Test
    void what_was_laid_out_once_is_laid_out_at_once_after_an_edit() {
        Session s = session(LARGE);
        studied();
        shown.of(s.state());
        all(layouts);
        ui.runAll();

        s.apply(Edits.move(Set.of("E3_2"), 2.5, 0, "a"));
        studied();

        assertThat(shown.of(s.state())).contains(afresh(s.state()));
        assertThat(layouts).isEmpty();
    }

    @Test
    void an_edit_while_it_is_awaited_is_not_lost() {
        Session s = session(LARGE);
        studied();
        shown.of(s.state());
        s.apply(Edits.move(Set.of("E3_2"), 2.5, 0, "a"));
        studied();

        assertThat(shown.of(s.state())).as("nothing of the sheet is there yet").isEmpty();
        all(layouts);
        ui.runAll();

        assertThat(shown.of(s.state())).contains(afresh(s.state()));
    }

    @Test
    void another_drawing_is_awaited_anew() {
        Session s = session(LARGE);
        studied();
        shown.of(s.state());
        all(layouts);
        ui.runAll();
        shown.of(s.state());

        s.open(GrownBoat.of(330), null);

        assertThat(shown.of(s.state())).isEmpty();
        assertThat(shown.awaited()).isTrue();
    }

    @Test
    void what_is_prepared_before_the_figures_are_there_gives_the_same_scene() {
        Session s = session(TestBoat.drawing());
        studied();
        shown.of(s.state());
        String any = s.state().drawing().components().stream()
                .filter(c -> !c.locked())
                .findFirst()
                .orElseThrow()
                .id();

        s.apply(Edits.move(Set.of(any), 2.5, 0, "a"));
        shown.prepare(s.state());
        studied();

        assertThat(shown.of(s.state())).contains(afresh(s.state()));
    }

    @Test
    void much_that_changes_at_once_in_a_large_sheet_is_awaited_and_a_little_is_not() {
        Session s = session(LARGE);
        studied();
        shown.of(s.state());
        all(layouts);
        ui.runAll();
        Scene before = shown.of(s.state()).orElseThrow();

        s.apply(Edits.move(Set.copyOf(ids(60)), 2.5, 0, "a"));
        studied();
        assertThat(shown.of(s.state()))
                .as("nothing shows where things stand now")
                .isEmpty();
        assertThat(shown.awaited()).isTrue();
        all(layouts);
        ui.runAll();
        assertThat(shown.of(s.state())).contains(afresh(s.state()));

        s.undo();
        studied();
        assertThat(shown.of(s.state())).isEmpty();
        all(layouts);
        ui.runAll();
        assertThat(shown.of(s.state()).orElseThrow()).isEqualTo(before);
        s.apply(Edits.move(Set.copyOf(ids(3)), 2.5, 0, "b"));
        studied();
        assertThat(shown.of(s.state())).contains(afresh(s.state()));
        assertThat(layouts).isEmpty();
    }

    private static List<String> ids(int many) {
        return LARGE.components().stream()
                .map(c -> c.id())
                .filter(id -> id.startsWith("E"))
                .limit(many)
                .toList();
    }

    @Test
    void an_edit_while_much_is_awaited_waits_for_it_and_is_shown() {
        Session s = session(LARGE);
        studied();
        shown.of(s.state());
        all(layouts);
        ui.runAll();
        s.apply(Edits.move(Set.copyOf(ids(60)), 2.5, 0, "a"));
        studied();
        shown.of(s.state());

        s.apply(Edits.move(Set.of("E3_2"), 0, 2.5, "b"));
        studied();
        assertThat(shown.of(s.state())).isEmpty();
        assertThat(layouts).as("the one that is under way").hasSize(1);
        all(layouts);
        ui.runAll();

        assertThat(shown.of(s.state())).contains(afresh(s.state()));
    }

    /** Of an edit whose figures have been worked out and whose scene was made with them, in this order. */
    private final List<Scene> made = new ArrayList<>();

    private Session madeAhead() {
        Session s = session(TestBoat.drawing());
        s.ahead(review -> shown.ahead(review).ifPresent(made::add));
        studied();
        shown.of(s.state());
        s.apply(Edits.move(Set.of("GA1"), 5, 0, "a"));
        shown.want(s.state());
        all(studies);
        return s;
    }

    @Test
    void the_scene_of_what_is_only_moved_is_made_ahead_too_though_there_is_nothing_to_study() {
        Session s = new Session(TestBoat.drawing(), null, Review::of, Runnable::run, ui, e -> {
            throw new AssertionError(e);
        });
        new SheetCanvas(s, shown, new Pointing());
        s.ahead(review -> shown.ahead(review).ifPresent(made::add));
        ui.runAll();
        shown.of(s.state());

        s.apply(Edits.move(Set.of("GA1"), 5, 0, "a"));
        ui.runAll();

        assertThat(made).hasSize(1);
        assertThat(shown.of(s.state()).orElseThrow()).isSameAs(made.get(0)).isEqualTo(afresh(s.state()));
    }

    @Test
    void a_scene_that_is_wanted_is_made_by_the_worker() {
        Session s = madeAhead();
        ui.runAll();

        Scene scene = shown.of(s.state()).orElseThrow();
        assertThat(made).hasSize(1);
        assertThat(scene).isSameAs(made.get(0)).isEqualTo(afresh(s.state()));
        assertThat(shown.of(s.state()).orElseThrow()).isSameAs(scene);
    }

    @Test
    void what_was_made_ahead_is_not_shown_where_something_else_is_wanted_by_now() {
        Session s = madeAhead();
        String condition = s.state().drawing().conditions().stream()
                .findFirst()
                .orElseThrow()
                .id();
        s.showCondition(condition);
        ui.runAll();

        assertThat(made).hasSize(1);
        assertThat(shown.of(s.state())).contains(afresh(s.state()));
    }

    @Test
    void what_was_made_ahead_is_not_shown_with_other_annotations() {
        Session s = madeAhead();
        shown.annotations(Annotations.NONE);
        ui.runAll();

        assertThat(made).hasSize(1);
        assertThat(shown.of(s.state())).isPresent().get().isNotEqualTo(made.get(0));
    }

    @Test
    void of_two_edits_only_the_second_is_made_ahead() {
        Session s = session(TestBoat.drawing());
        s.ahead(review -> shown.ahead(review).ifPresent(made::add));
        studied();
        shown.of(s.state());
        s.apply(Edits.move(Set.of("GA1"), 5, 0, "a"));
        s.apply(Edits.move(Set.of("GA1"), 0, 5, "b"));
        shown.want(s.state());
        studied();

        assertThat(made).hasSize(1);
        assertThat(shown.of(s.state()).orElseThrow()).isSameAs(made.get(0)).isEqualTo(afresh(s.state()));
    }
}
