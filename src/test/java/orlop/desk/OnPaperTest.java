package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edits;
import orlop.drawing.Extras;
import orlop.drawing.Note;
import orlop.drawing.OnPaper;
import orlop.drawing.Point;

/** What is on paper only changes no figure, and asks for no study. */
class OnPaperTest {
    private final Drawing start = SmallBoat.drawing();

    /** All that may change: things shifted, turned and mirrored, labels and bends elsewhere, a note written. */
    private static Drawing redrawn(Drawing d) {
        int n = 0;
        for (Component c : d.components().values()) {
            Point at = c.place().at();
            d = d.with(c.withPlace(c.place()
                    .withAt(new Point(at.xMm() + 2.5 * (n++ % 7), at.yMm() + 5))
                    .withRotationDegree(90 * (n % 4))
                    .withMirrored(n % 3 == 0)
                    .withLabelAt(new Point(5, 5))));
        }
        for (Cable w : d.cables().values()) {
            d = d.with(w.withBends(List.of(new Point(10, 10))).withLabelAt(new Point(20, 20)));
        }
        String sheet = d.sheets().values().iterator().next().id();
        return d.withNotes(d.notes().with("N99", new Note("N99", sheet, new Point(9, 9), "seen", 3, Extras.NONE)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"pilot-cutter", "pilot-cutter-first-sketch", "coastal-sloop", "harbour-workboat"})
    void a_vessel_drawn_otherwise_has_the_same_figures_and_findings(String sample) {
        Drawing d = Sample.of(sample);
        Drawing otherwise = redrawn(d);
        Review fresh = Review.of(otherwise, () -> false);

        Review taken = Review.of(d, () -> false).onPaper(otherwise).orElseThrow();

        assertThat(otherwise).isNotEqualTo(d);
        assertThat(taken.drawing()).isSameAs(otherwise);
        assertThat(taken.study()).isEqualTo(fresh.study());
        assertThat(taken.findings()).isEqualTo(fresh.findings());
    }

    @Test
    void what_changes_more_than_the_paper_is_seen() {
        Component c = start.components().values().iterator().next();
        Cable w = start.cables().values().iterator().next();
        List<Drawing> others = List.of(
                start.with(c.withName("another")),
                start.with(c.withPlace(new orlop.drawing.Place("9", c.place().at(), 0, false, null))),
                start.with(w.withLengthM(w.lengthM() == null ? 3.0 : w.lengthM() + 1)),
                start.with(w.withEnds(w.to(), w.from())),
                Edits.delete(Set.of(w.id())).applyTo(start),
                start.with(w.withId("W99")),
                start.withVessel(RecordParts.with(start.vessel(), "name", "Another")));

        assertThat(others).noneMatch(d -> OnPaper.differOnly(start, d)).noneMatch(d -> OnPaper.differOnly(d, start));
        assertThat(OnPaper.differOnly(start, redrawn(start))).isTrue();
    }

    @Test
    void a_drawing_that_is_drawn_otherwise_is_not_studied_again() {
        Queue<Runnable> work = new ArrayDeque<>();
        QueueUi ui = new QueueUi();
        List<Drawing> studied = new ArrayList<>();
        List<Drawing> delivered = new ArrayList<>();
        Recalculator r = new Recalculator(
                (d, stale) -> {
                    studied.add(d);
                    return Review.of(d, stale);
                },
                work::add,
                ui,
                review -> delivered.add(review.drawing()),
                e -> {
                    throw new AssertionError(e);
                });
        Drawing moved = redrawn(start);
        UnaryOperator<Drawing> longer = d -> {
            Cable w = d.cables().values().iterator().next();
            return d.with(w.withLengthM(w.lengthM() == null ? 3.0 : w.lengthM() + 1));
        };

        for (Drawing d : List.of(start, moved, longer.apply(moved))) {
            r.request(d);
            work.remove().run();
            ui.runAll();
        }

        assertThat(studied).containsExactly(start, longer.apply(moved));
        assertThat(delivered).containsExactly(start, moved, longer.apply(moved));
    }
}
