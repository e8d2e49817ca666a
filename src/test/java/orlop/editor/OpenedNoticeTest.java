package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import orlop.drawing.Drawing;
import orlop.drawing.Message;

/** A drawing of which not everything has room on its paper. */
class OpenedNoticeTest {
    /** A1 is 841 mm by 594 mm (ISO 216). */
    private static final double HIGH_MM = 594;

    private static @Nullable Message noticeOf(Drawing d) throws Exception {
        HeadlessBench on = HeadlessBench.open(d);
        try {
            return on.session().state().notice();
        } finally {
            on.close();
        }
    }

    @Test
    void what_lies_beyond_the_paper_is_told() throws Exception {
        Drawing d = GrownBoat.of(400);
        int below = (int) d.components().stream()
                .filter(c -> c.place().at().yMm() > HIGH_MM)
                .count();

        Message told = Objects.requireNonNull(noticeOf(d));

        assertThat(below).isPositive();
        assertThat(told.key()).isEqualTo("editor.say.lies-beyond");
        assertThat(told.arguments()).isEqualTo(List.of(below, "A1"));
        assertThat(Texts.of(told)).contains(below + " components lie beyond the A1 paper");
    }

    @Test
    void of_a_drawing_that_has_room_nothing_is_told() throws Exception {
        assertThat(noticeOf(TestBoat.drawing())).isNull();
    }
}
