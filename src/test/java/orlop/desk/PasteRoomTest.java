package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.drawing.Drawing;
import orlop.drawing.Point;
import orlop.layout.Rect;
import orlop.scene.Role;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneItem;
import orlop.scene.SceneRequest;
import orlop.study.Study;

class PasteRoomTest {
    private final Drawing d = Sample.of("coastal-sloop");

    private static Scene scene(Drawing d) {
        return SceneBuilder.bundled()
                .build(SceneRequest.screen(
                        d,
                        Study.of(d).governing(),
                        List.of(),
                        d.sheets().stream().findFirst().orElseThrow().id()));
    }

    private static List<Rect> boxes(Scene s, Set<String> of, boolean others) {
        return s.items().stream()
                .filter(i -> i.role() == Role.COMPONENT || i.role() == Role.BAR)
                .filter(i -> of.contains(i.subject()) != others)
                .map(SceneItem::bounds)
                .toList();
    }

    @Test
    void what_is_pasted_lies_over_nothing_that_is_there_time_after_time() throws Exception {
        String text = Clip.write(d, Set.of("GB1", "GB2"));
        Drawing now = d;
        for (int i = 0; i < 3; i++) {
            Scene before = scene(now);
            Clip clip = Clip.read(text);
            Point by = PasteRoom.near(clip, before, new Point(10, 10)).orElseThrow();
            Clip.Pasted p =
                    clip.onto(now, d.sheets().stream().findFirst().orElseThrow().id(), by.xMm(), by.yMm());
            now = p.edit().applyTo(now);

            Scene after = scene(now);
            List<Rect> mine = boxes(after, p.ids(), false);
            assertThat(mine).hasSize(2).allMatch(after.drawable()::contains);
            assertThat(boxes(after, p.ids(), true))
                    .isNotEmpty()
                    .noneMatch(r -> mine.stream().anyMatch(r::overlaps));
        }
    }

    @Test
    void where_there_is_room_it_goes_where_it_is_wished() throws Exception {
        Drawing empty = d;
        for (String id :
                d.components().stream().map(orlop.drawing.Component::id).toList()) {
            empty = orlop.drawing.Edits.delete(Set.of(id)).applyTo(empty);
        }
        Clip clip = Clip.read(Clip.write(d, Set.of("GB1")));

        assertThat(PasteRoom.near(clip, scene(empty), new Point(20, 30))).contains(new Point(20, 30));
    }

    @Test
    void what_has_no_room_on_the_paper_is_left_to_whoever_pastes() throws Exception {
        Set<String> all = Set.copyOf(
                d.components().stream().map(orlop.drawing.Component::id).toList());

        assertThat(PasteRoom.near(Clip.read(Clip.write(d, all)), scene(d), new Point(10, 10)))
                .isEmpty();
    }
}
