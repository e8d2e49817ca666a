package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import orlop.layout.Rect;
import orlop.scene.Role;
import orlop.scene.SceneItem;

/** The frame about what is selected leaves its tag to be read. */
class SelectedRimTest extends OnBench {
    SelectedRimTest() {
        super(TestBoat.drawing());
    }

    @Test
    void the_frame_of_a_component_does_not_cover_its_own_text() throws Exception {
        HeadlessBench.onUi(() -> {
            List<SceneItem> items = on.bench().canvas().scene().orElseThrow().items();
            List<String> covered = new ArrayList<>();
            int compared = 0;
            for (SceneItem c : items) {
                if (c.role() != Role.COMPONENT) {
                    continue;
                }
                double line = 0.7 / 2; // half its line at the scale at which a sheet is about as big as a small screen
                Rect frame = c.bounds().grown(Overlay.RIM_MM + line);
                for (SceneItem t : items) {
                    if (t.role() == Role.LABEL && t.subject().equals(c.subject())) {
                        compared++;
                        if (frame.overlaps(t.bounds())) {
                            covered.add(c.subject());
                        }
                    }
                }
            }
            assertThat(compared).isGreaterThan(10);
            assertThat(covered).isEmpty();
        });
    }
}
