package orlop.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

/** Checked against the envelopes of JTS, one by one. */
class GridTest {
    private static final Rect AREA = new Rect(20, 30, 200, 120);

    private final Random random = new Random(3);
    private final Grid<Item> grid = new Grid<>(AREA);
    private final List<Item> all = new ArrayList<>();

    private static final class Item extends Grid.Item {
        Item(Rect rect) {
            super(rect);
        }

        boolean meets(Rect r) {
            return envelope(rect).intersects(envelope(r));
        }
    }

    private static Envelope envelope(Rect r) {
        return new Envelope(r.minX(), r.maxX(), r.minY(), r.maxY());
    }

    @Test
    void everything_is_met_where_it_lies_within_the_area_beyond_it_and_far_away() {
        for (int i = 0; i < 600; i++) {
            Item item = new Item(rect());
            grid.add(item);
            all.add(item);
            if (i % 3 == 0) {
                Item gone = all.remove(random.nextInt(all.size()));
                grid.remove(gone);
            }
            Rect asked = rect();

            assertThat(Set.copyOf(grid.touching(asked)))
                    .as("item %d", i)
                    .isEqualTo(all.stream().filter(t -> t.meets(asked)).collect(Collectors.toSet()));
        }
    }

    /** Mostly within, often beside, seldom kilometres away. */
    private Rect rect() {
        double far = random.nextInt(10) == 0 ? 1e6 : random.nextInt(3) == 0 ? 4_000 : 150;
        double x = 100 + far * (random.nextDouble() - 0.5);
        double y = 80 + far * (random.nextDouble() - 0.5);
        double size = random.nextInt(8) == 0 ? far : 30;
        return Rect.of(x, y, size * random.nextDouble(), size * random.nextDouble());
    }
}
