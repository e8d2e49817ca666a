package orlop.symbols;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the ink of a symbol covers, however it stands.
 *
 * @param turning what all covers that turns with the symbol, as drawn in its file; null: nothing turns
 * @param uprights the signs that stay upright, in the order of the file, each once
 */
public record Extent(@Nullable Bounds turning, List<Upright> uprights) {
    public Extent {
        uprights = List.copyOf(uprights);
        if (turning == null && uprights.isEmpty()) {
            throw new IllegalArgumentException("no ink");
        }
    }

    /** That of these outlines, at least one. */
    static Extent of(List<Outline> outlines) {
        Bounds turning = null;
        List<Upright> uprights = new ArrayList<>();
        for (Outline o : outlines) {
            Upright upright = o.upright();
            if (upright == null) {
                turning = turning == null ? o.bounds() : turning.union(o.bounds());
            } else if (!uprights.contains(upright)) {
                uprights.add(upright);
            }
        }
        return new Extent(turning, uprights);
    }

    /** As the symbol stands so. */
    public Bounds at(Turn turn) {
        Bounds all = turning == null ? uprights.get(0).ink(turn) : turn.of(turning);
        for (Upright upright : uprights) {
            all = all.union(upright.ink(turn));
        }
        return all;
    }
}
