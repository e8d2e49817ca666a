package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;

class NarrowRowTest {
    private static JPanel row(int width, int... wanted) {
        JPanel row = new JPanel(new NarrowRow());
        for (int w : wanted) {
            JPanel part = new JPanel();
            part.setPreferredSize(new Dimension(w, 20));
            row.add(part);
        }
        row.setSize(width, 20);
        row.doLayout();
        return row;
    }

    @Test
    void parts_are_as_wide_as_they_want_to_be_and_a_little_apart_where_there_is_room() {
        JPanel row = row(500, 100, 60, 140);

        assertThat(row.getComponent(1).getX()).isEqualTo(100 + Look.px(6));
        assertThat(row.getComponent(2).getX()).isEqualTo(160 + 2 * Look.px(6));
        assertThat(row.getComponent(2).getWidth()).isEqualTo(140);
    }

    @Test
    void the_distance_gives_way_first() {
        JPanel row = row(303, 100, 60, 140);

        assertThat(row.getComponent(1).getX()).isEqualTo(101);
        assertThat(row.getComponent(2).getWidth()).isEqualTo(140);
    }

    @Test
    void where_there_is_less_room_every_part_stays_in_sight_beside_the_others() {
        JPanel row = row(151, 100, 60, 140);

        int end = 0;
        for (java.awt.Component c : row.getComponents()) {
            assertThat(c.getX()).isEqualTo(end);
            assertThat(c.getWidth()).isGreaterThan(25);
            end += c.getWidth();
        }
        assertThat(end).isBetween(150, 151);
    }
}
