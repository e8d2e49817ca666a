package orlop.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import orlop.drawing.Drawing;
import orlop.drawing.Point;
import orlop.drawing.Sheet;
import orlop.drawing.SheetSize;
import orlop.layout.Rect;
import orlop.layout.TextMeasure.Weight;

class SheetDivisionTest {
    /** ISO 5457 (from memory): 16 × 12, 12 × 8, 8 × 6 and, lying, 6 × 4 fields for A1 to A4; A4 upright, 4 × 6. */
    @ParameterizedTest
    @EnumSource(SheetSize.class)
    void the_number_of_fields_is_that_of_the_standard(SheetSize size) {
        Zones z = Zones.of(size);
        List<Integer> fields = List.of(z.columns().size() - 1, z.rows().size() - 1);
        List<Integer> standard = switch (size) {
            case A1 -> List.of(16, 12);
            case A2 -> List.of(12, 8);
            case A3 -> List.of(8, 6);
            case A4 -> List.of(6, 4);
            case A4_UPRIGHT -> List.of(4, 6);
        };
        assertThat(fields).isEqualTo(standard);
    }

    @Test
    void a_point_is_named_by_its_field() {
        Zones z = Zones.of(SheetSize.A3);

        assertThat(z.at(new Point(21, 11))).isEqualTo("A1");
        assertThat(z.at(new Point(70, 80))).isEqualTo("B2");
        assertThat(z.at(new Point(409, 286))).isEqualTo("F8");
    }

    @ParameterizedTest
    @EnumSource(SheetSize.class)
    void nothing_on_an_empty_sheet_leaves_its_part_of_the_paper(SheetSize size) {
        Drawing d = Drawing.empty("A vessel with a name that is far too long for the field that it has to go into")
                .with(new Sheet("1", "1", "T".repeat(200), size, "A", "", "", "", orlop.drawing.Extras.NONE));
        orlop.study.Results none = new orlop.study.Results(
                "governing", "", true, 0, java.util.Map.of(), java.util.Map.of(), java.util.Map.of(), List.of());
        Scene scene = SceneBuilder.bundled().build(SceneRequest.paper(d, none, List.of(), "1"));
        SheetFrame frame = new SheetFrame(size);

        for (SceneItem i : scene.items()) {
            Rect part = switch (i.role()) {
                case TITLE_BLOCK -> frame.titleBlock();
                case LEGEND, CAUTION -> frame.foot();
                case MARGIN -> frame.margin();
                default -> new Rect(0, 0, size.widthMm(), size.heightMm());
            };
            Rect ink = ItemMaker.bounds(i.marks());
            assertThat(part.grown(0.4).contains(ink))
                    .as(i.id() + " " + ink + " in " + part)
                    .isTrue();
        }
        assertThat(scene.item(Role.TITLE_BLOCK, "").orElseThrow().marks().stream()
                        .filter(Mark.Text.class::isInstance)
                        .map(m -> ((Mark.Text) m).text())
                        .collect(java.util.stream.Collectors.joining(" ")))
                .as("a long name goes on in a second line")
                .contains("A vessel with a name that is far too long for the field that it has to go into");
        assertThat(scene.item(Role.CAUTION, "")).isPresent();
        assertThat(scene.item(Role.LEGEND, ""))
                .as("nothing on it has to be explained")
                .isEmpty();
    }

    @Test
    void a_text_is_broken_at_blanks_and_cut_with_an_ellipsis() {
        assertThat(TextBlock.wrapped("one two three", 12, 2.5, Weight.REGULAR, 5))
                .containsExactly("one two", "three");
        assertThat(TextBlock.wrapped("one two three four", 12, 2.5, Weight.REGULAR, 1))
                .singleElement()
                .asString()
                .startsWith("one tw")
                .endsWith("…");
        assertThat(TextBlock.wrapped("unbreakablelongword", 12, 2.5, Weight.REGULAR, 9))
                .hasSizeGreaterThan(1)
                .allSatisfy(s -> assertThat(s).isNotEmpty());
        assertThat(TextBlock.wrapped("", 12, 2.5, Weight.REGULAR, 9)).containsExactly("");
    }

    @ParameterizedTest
    @EnumSource(SheetSize.class)
    void the_room_for_components_lies_within_what_frame_margin_and_foot_leave(SheetSize size) {
        Rect room = SheetRoom.of(size, 0);

        assertThat(new SheetFrame(size).drawable().contains(room)).isTrue();
        assertThat(room.height()).isPositive();
        assertThat(SheetRoom.of(size, 5_000).height()).as("no room so far down").isZero();
    }
}
