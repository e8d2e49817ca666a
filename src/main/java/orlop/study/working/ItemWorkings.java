package orlop.study.working;

import java.util.List;
import java.util.Map;
import orlop.study.CableResult;

/** The workings of cables and components. */
public final class ItemWorkings {
    private final Solved solved;
    private final List<Map<String, CableResult>> cables;

    /** @param cables results by condition */
    public ItemWorkings(Solved solved, List<Map<String, CableResult>> cables) {
        this.solved = solved;
        this.cables = List.copyOf(cables);
    }

    /** All that an item has in a condition, by its number; nothing for an item that the drawing lacks. */
    public Map<Figure, List<Working>> of(int condition, String item) {
        CableResult result = cables.get(condition).get(item);
        if (result == null) {
            return new LoadWorkings(solved, condition).all(item);
        }
        for (int i = 0; i < solved.plan().cables().size(); i++) {
            if (solved.plan().cables().get(i).cable().id().equals(item)) {
                return new CableWorkings(solved, condition, i, result).all();
            }
        }
        return Map.of();
    }
}
