package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Ledger;
import orlop.drawing.Soundness;
import orlop.store.DrawingFile;
import orlop.store.FileProblem;

/**
 * Twenty times a thousand things that a person may do, by chance: every drawing on the way holds together, can be stored
 * and read again, and undo and redo lead back and forth exactly.
 */
class EditsByChanceTest {
    private static final int STEPS = 1000;
    private static final int STORED_EVERY = 50;

    private final Drawing start = SmallBoat.drawing();
    private final Session session = new Session(
            start,
            null,
            (drawing, stale) -> {
                throw new AssertionError("nothing is to be worked out here");
            },
            task -> {},
            new QueueUi(),
            e -> {
                throw new AssertionError(e);
            });

    static List<Long> seeds() {
        List<Long> seeds = new ArrayList<>();
        for (long s = 1; s <= 20; s++) {
            seeds.add(s);
        }
        return seeds;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void every_drawing_holds_together_and_undo_leads_back_to_the_first(long seed) throws FileProblem {
        ByChance chance = new ByChance(seed);
        int made = 0;
        for (int i = 0; i < STEPS; i++) {
            if (step(chance)) {
                made++;
            }
            Drawing now = session.state().drawing();
            holds(now);
            if (i % STORED_EVERY == 0) {
                assertThat(DrawingFile.load(DrawingFile.write(now), "text")).isEqualTo(now);
            }
        }

        assertThat(made).as("edits that were not refused").isGreaterThan(STEPS / 3);
        backAndForth();
    }

    private boolean step(ByChance chance) {
        int what = chance.upTo(10);
        if (what == 0) {
            session.undo();
            return false;
        }
        if (what == 1) {
            session.redo();
            return false;
        }
        Drawing before = session.state().drawing();
        Edit edit = chance.edit(before);
        if (what == 2) {
            session.preview(edit);
            session.endPreview();
            assertThat(Same.object(session.state().drawing(), before)).isTrue();
        }
        if (what == 3) {
            session.seal();
        }
        boolean refused = session.apply(edit).isPresent();
        if (refused) {
            assertThat(Same.object(session.state().drawing(), before)).isTrue();
        }
        return !refused;
    }

    private static void holds(Drawing d) {
        assertThat(Soundness.flaws(d)).isEmpty();
        Set<String> ids = new HashSet<>();
        unique(ids, d.components());
        unique(ids, d.cables());
        unique(ids, d.links());
        unique(ids, d.notes());
        d.components().forEach(e -> assertThat(e.getValue().id()).isEqualTo(e.getKey()));
        d.cables().forEach(e -> assertThat(e.getValue().id()).isEqualTo(e.getKey()));
        d.links().forEach(e -> assertThat(e.getValue().id()).isEqualTo(e.getKey()));
        d.notes().forEach(e -> assertThat(e.getValue().id()).isEqualTo(e.getKey()));
    }

    private static void unique(Set<String> ids, Ledger<?> ledger) {
        for (Map.Entry<String, ?> e : ledger) {
            assertThat(ids.add(e.getKey()))
                    .as("%s stands for two things", e.getKey())
                    .isTrue();
        }
    }

    private void backAndForth() {
        while (session.state().redo() != null) {
            session.redo();
        }
        List<Drawing> way = new ArrayList<>();
        way.add(session.state().drawing());
        while (session.state().undo() != null) {
            session.undo();
            way.add(session.state().drawing());
        }
        assertThat(Same.object(session.state().drawing(), start)).isTrue();
        for (int i = way.size() - 2; i >= 0; i--) {
            session.redo();
            assertThat(Same.object(session.state().drawing(), way.get(i))).isTrue();
        }
        assertThat(session.state().redo()).isNull();
    }
}
