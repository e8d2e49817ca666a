package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Kind;
import orlop.drawing.Sheet;
import orlop.drawing.SheetSize;
import orlop.drawing.Soundness;
import orlop.study.CableResult;
import orlop.study.Study;

class SheetEditsTest {
    private final Drawing small = SmallBoat.drawing();
    private final Drawing cutter = Sample.of("pilot-cutter");

    private static List<String> register(Drawing d) {
        return d.sheets().stream().map(Sheet::id).toList();
    }

    private static String sheetOf(Drawing d, String id) {
        return d.components().require(id).place().sheet();
    }

    @Test
    void a_sheet_is_added_changed_and_put_elsewhere_in_the_register() {
        Drawing d = SheetEdits.add(Sheet.of("3", "Third")).applyTo(small);
        d = SheetEdits.change(RecordParts.with(Sheet.of("3", "Third"), "size", SheetSize.A4_UPRIGHT))
                .applyTo(d);
        d = SheetEdits.reorder("3", 0).applyTo(d);

        assertThat(register(d)).containsExactly("3", "1", "2");
        assertThat(d.sheets().require("3").size()).isEqualTo(SheetSize.A4_UPRIGHT);
        assertThat(register(SheetEdits.reorder("3", 99).applyTo(d))).containsExactly("1", "2", "3");
    }

    @Test
    void an_order_that_is_there_already_is_no_step() {
        assertThat(SheetEdits.reorder("1", 0).applyTo(small)).isSameAs(small);
    }

    @Test
    void the_next_number_follows_the_last_one() {
        assertThat(SheetEdits.freeId(small)).isEqualTo("3");
        Drawing d = small.with(RecordParts.with(small.sheets().require("2"), "number", "009"));
        assertThat(SheetEdits.nextNumber(d, "3")).isEqualTo("010");
    }

    @Test
    void the_last_sheet_cannot_be_deleted() {
        Drawing one = SheetEdits.delete("2").applyTo(small);

        assertThat(register(one)).containsExactly("1");
        assertThatThrownBy(() -> SheetEdits.delete("1").applyTo(one)).isInstanceOf(Edit.Refusal.class);
    }

    @Test
    void a_deleted_sheet_takes_both_halves_of_its_sheet_links_along() {
        List<String> halves = new ArrayList<>();
        for (Component c : cutter.components().values()) {
            if (c.kind() == Kind.SHEET_LINK && sheetOf(cutter, c.id()).equals("2")) {
                halves.add(c.id());
                halves.add(SheetEdits.mate(cutter, c).orElseThrow().id());
            }
        }
        assertThat(halves).isNotEmpty();

        Drawing d = SheetEdits.delete("2").applyTo(cutter);

        assertThat(d.sheets().contains("2")).isFalse();
        assertThat(halves).noneMatch(d.components()::contains);
        assertThat(SheetEdits.contents(d, "2")).isEmpty();
        assertThat(Soundness.flaws(d)).isEmpty();
    }

    @Test
    void a_cable_that_would_be_torn_ends_at_a_pair_of_sheet_links_and_keeps_tag_and_length() {
        Drawing d = SheetMoves.to(Set.of("EA1"), "2").applyTo(small);

        assertThat(sheetOf(d, "EA1")).isEqualTo("2");
        Cable w = d.cables().require("W2");
        assertThat(w.lengthM()).isEqualTo(6.5);
        assertThat(w.from().toString()).isEqualTo("QB1.1");
        Component half = d.components().require(w.to().component());
        assertThat(half.kind()).isEqualTo(Kind.SHEET_LINK);
        assertThat(sheetOf(d, half.id())).isEqualTo("1");
        Component mate = SheetEdits.mate(d, half).orElseThrow();
        assertThat(sheetOf(d, mate.id())).isEqualTo("2");
        assertThat(d.links().stream())
                .anySatisfy(l -> assertThat(l.from().component() + l.to()).isEqualTo(mate.id() + "EA1.1"));
        assertThat(Soundness.flaws(d)).isEmpty();
    }

    @Test
    void what_is_brought_back_needs_no_sheet_links_any_more() {
        Drawing there = SheetMoves.to(Set.of("EA1"), "2").applyTo(small);

        Drawing back = SheetMoves.to(Set.of("EA1"), "1").applyTo(there);

        assertThat(back.components()).isEqualTo(small.components());
        assertThat(back.cables()).isEqualTo(small.cables());
        assertThat(back.links()).isEqualTo(small.links());
    }

    @Test
    void what_does_not_fit_a_smaller_paper_is_moved_onto_it() {
        Drawing d = small.with(RecordParts.with(small.sheets().require("2"), "size", SheetSize.A4_UPRIGHT))
                .with(small.components()
                        .require("EA1")
                        .withPlace(
                                small.components().require("EA1").place().withAt(new orlop.drawing.Point(390, 150))));

        Drawing after = SheetMoves.to(Set.of("EA1"), "2").applyTo(d);

        assertThat(after.components().require("EA1").place().at().xMm()).isLessThanOrEqualTo(190);
    }

    @Test
    void a_locked_component_stays() {
        Drawing d = small.with(RecordParts.with(small.components().require("EA1"), "locked", true));

        assertThatThrownBy(() -> SheetMoves.to(Set.of("EA1"), "2").applyTo(d)).isInstanceOf(Edit.Refusal.class);
    }

    /** The check is Kirchhoff's: a point drawn on two sheets is one point, so no current may change by a move. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void no_figure_of_any_cable_changes_when_components_move_to_other_sheets(int seed) {
        Random random = new Random(seed);
        Drawing d = cutter;
        for (int i = 0; i < 3; i++) {
            List<Component> all = d.components().stream().toList();
            Set<String> some = new LinkedHashSet<>();
            for (int k = 0; k < 4; k++) {
                some.add(all.get(random.nextInt(all.size())).id());
            }
            List<String> sheets = register(d);
            d = SheetMoves.to(some, sheets.get(random.nextInt(sheets.size()))).applyTo(d);
        }

        assertThat(Soundness.flaws(d)).isEmpty();
        assertThat(d.cables().stream().map(Cable::id))
                .containsExactlyElementsOf(
                        cutter.cables().stream().map(Cable::id).toList());
        Study before = Study.of(cutter);
        Study after = Study.of(d);
        for (CableResult r : before.governing().cables().values()) {
            CableResult now = after.governing().cables().get(r.id());
            assertThat(now).as(r.id()).isNotNull();
            if (r.currentA() != null && now != null && now.currentA() != null) {
                assertThat(now.currentA())
                        .as(r.id())
                        .isCloseTo(
                                r.currentA(),
                                org.assertj.core.data.Offset.offset(1e-6 + 1e-9 * Math.abs(r.currentA())));
                assertThat(now.lengthFromSourceM()).as(r.id()).isEqualTo(r.lengthFromSourceM());
            } else {
                assertThat(now == null ? null : now.currentA()).as(r.id()).isEqualTo(r.currentA());
            }
        }
    }
}
