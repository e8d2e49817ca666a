package orlop.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Decisions that are kept from an earlier labelling. What they must come to is told by a labelling made afresh; sheets are
 * crowded by seeded chance, so that texts push one another and stand apart.
 */
class DecisionsTest {
    private static final Rect AREA = new Rect(0, 0, 120, 80);

    /** What lies on a sheet: things that stay, and texts with the thing of which each speaks. */
    private record Sheet(Map<String, Rect> solids, Map<String, Text> texts) {
        Sheet copy() {
            return new Sheet(new LinkedHashMap<>(solids), new LinkedHashMap<>(texts));
        }

        Labelling labelled(@Nullable Labelling before) {
            Labeller labeller = new Labeller(AREA);
            solids.values().forEach(labeller::solid);
            texts.values().forEach(t -> labeller.solid(t.target));
            List<Label> labels = new ArrayList<>();
            texts.forEach((id, t) -> labels.add(t.label(id)));
            return labeller.place(labels, before);
        }
    }

    private record Text(Rect target, double width, double height) {
        Label label(String id) {
            List<Side> sides = List.of(Side.RIGHT, Side.LEFT);
            return new Label(id, width, height, target, BoxSpots.around(target, sides, width, height), false);
        }
    }

    static LongStream seeds() {
        return LongStream.range(0, 12);
    }

    /** The texts that stand elsewhere. */
    private static List<String> differing(Labelling a, Labelling b) {
        List<String> ids = new ArrayList<>();
        a.places().forEach((id, put) -> {
            if (!put.equals(b.places().get(id))) {
                ids.add(id);
            }
        });
        assertThat(a.places().keySet()).isEqualTo(b.places().keySet());
        return ids;
    }

    private static Text text(Random r) {
        Rect target = Rect.of(3 + 2.5 * r.nextInt(42), 3 + 2.5 * r.nextInt(27), 5, 5);
        return new Text(target, 6 + 3 * r.nextInt(6), 3 + 3.5 * r.nextInt(3));
    }

    private static Sheet crowded(Random r) {
        Sheet s = new Sheet(new LinkedHashMap<>(), new LinkedHashMap<>());
        for (int i = 0; i < 12; i++) {
            s.solids.put("s" + i, Rect.of(110 * r.nextDouble(), 70 * r.nextDouble(), 2 + 14 * r.nextDouble(), 0.7));
        }
        for (int i = 0; i < 45; i++) {
            s.texts.put("t" + i, text(r));
        }
        return s;
    }

    private static void edit(Sheet s, Random r, int step) {
        List<String> ids = List.copyOf(s.texts.keySet());
        String id = ids.get(r.nextInt(ids.size()));
        switch (r.nextInt(6)) {
            case 0 -> s.texts.remove(id);
            case 1 -> s.texts.put("n" + step, text(r));
            case 2 -> s.solids.put("x" + step, Rect.of(110 * r.nextDouble(), 70 * r.nextDouble(), 9, 0.7));
            case 3 -> s.solids.remove(List.copyOf(s.solids.keySet()).get(r.nextInt(s.solids.size())));
            case 4 -> s.texts.put(id, text(r));
            default -> {
                Text t = s.texts.get(id);
                if (t != null) {
                    s.texts.put(id, new Text(t.target, t.width + 2, t.height));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void what_is_kept_over_many_edits_is_what_would_be_decided_afresh(long seed) {
        Random r = new Random(seed);
        Sheet s = crowded(r);
        Labelling kept = s.labelled(null);
        for (int step = 0; step < 25; step++) {
            edit(s, r, step);
            kept = s.labelled(kept);
            assertThat(differing(kept, s.labelled(null)))
                    .as("after edit " + step)
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void back_at_the_same_sheet_all_texts_are_back_in_their_places(long seed) {
        Random r = new Random(seed);
        Sheet s = crowded(r);
        Sheet other = s.copy();
        for (int step = 0; step < 5; step++) {
            edit(other, r, step);
        }
        Labelling first = s.labelled(null);

        Labelling back = s.labelled(other.labelled(first));

        assertThat(differing(back, first)).isEmpty();
    }

    @Test
    void the_sheets_are_so_crowded_that_texts_stand_apart() {
        long apart = seeds().mapToObj(seed -> crowded(new Random(seed)).labelled(null))
                .flatMap(l -> l.places().values().stream())
                .filter(p -> p.leader() != null)
                .count();
        assertThat(apart).isGreaterThan(50);
    }

    @Test
    void sweeps_that_do_not_come_about_again_are_undone() {
        Ground ground = new Ground(AREA);
        Label label = new Text(Rect.of(10, 10, 5, 5), 9, 3).label("a");
        Spot there = label.spots().all().get(0);
        LabelState was = new LabelState(label);
        Decisions first = Decisions.of(null, null, ground, Map.of("a", was));
        first.begin();
        first.moved("a", null, there);
        first.end(0, was, there.rect());
        first.begin();
        first.moved("a", there, label.spots().all().get(1));
        first.end(1, was, there.rect());
        first.ended(2);
        Label.Put put = new Label.Put(there.rect(), Side.RIGHT, null);
        was.placed(put);
        Labelling last = new Labelling(ground, Map.of("a", was));
        FixedThings same = FixedThings.compare(last.fixed(), ground.fixed());

        LabelState is = new LabelState(label);
        Decisions second = Decisions.of(last, same, ground, Map.of("a", is));
        assertThat(second.kept(0, is)).isNotNull();
        LabelState b = new LabelState(new Text(Rect.of(10, 10, 5, 5), 9, 3).label("b"));
        second.madeFar(b, new Decisions.Far(there.rect(), put));
        assertThat(second.kept(1, is)).as("something stands where it looked").isNull();

        LabelState again = new LabelState(label);
        Decisions third = Decisions.of(last, same, ground, Map.of("a", again));
        assertThat(third.kept(0, again)).isNotNull();
        assertThat(third.kept(1, again)).isNotNull();
        third.ended(1);
        assertThat(third.kept(1, again))
                .as("where it went in the second sweep it no longer goes")
                .isNull();
    }
}
