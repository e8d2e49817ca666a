package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;

/** Where notes come to stand that keep their places. */
class StillNotesTest {
    private static StillNotes.Part part(String key) {
        return StillNotes.part(key, new JLabel(key));
    }

    private static StillNotes.Part laidOut(String key, int height) {
        StillNotes.Part p = part(key);
        p.component().setSize(100, height);
        return p;
    }

    private static List<Object> keys(List<StillNotes.Part> parts) {
        return parts.stream().map(StillNotes.Part::key).toList();
    }

    @Test
    void what_is_gone_leaves_its_place_and_what_is_new_comes_last() {
        List<StillNotes.Part> before = List.of(laidOut("a", 40), laidOut("b", 50), laidOut("c", 60));

        List<StillNotes.Part> now = StillNotes.arrange(before, List.of(part("new"), part("c"), part("a")));

        assertThat(keys(now)).containsExactly("a", "b", "c", "new");
        assertThat(now.get(1).component()).isNotInstanceOf(JLabel.class);
    }

    @Test
    void every_place_is_at_least_as_high_as_it_was() {
        List<StillNotes.Part> now =
                StillNotes.arrange(List.of(laidOut("a", 400), laidOut("b", 300)), List.of(part("b")));
        JPanel column = new JPanel(new Column(200, 0));
        now.forEach(p -> column.add(p.component()));
        column.setSize(200, 1000);
        column.doLayout();

        assertThat(column.getComponent(0).getHeight()).isEqualTo(400);
        assertThat(column.getComponent(1).getY()).isEqualTo(400);
        assertThat(column.getComponent(1).getHeight()).isEqualTo(300);
    }

    @Test
    void what_comes_back_finds_its_place_again() {
        List<StillNotes.Part> gone =
                StillNotes.arrange(List.of(laidOut("a", 40), laidOut("b", 40)), List.of(part("b")));

        assertThat(keys(StillNotes.arrange(gone, List.of(part("a"), part("b")))))
                .containsExactly("a", "b");
    }

    @Test
    void nothing_is_kept_where_nothing_stood() {
        assertThat(keys(StillNotes.arrange(List.of(), List.of(part("b"), part("a")))))
                .containsExactly("b", "a");
    }
}
