package orlop.layout;

import java.util.Collections;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The places of the texts of a sheet, and what each of them hangs on. Immutable once made. */
public final class Labelling {
    private final Map<String, Label.Put> places;
    private final Rect area;
    private final List<Ground.Solid.Key> fixed;
    private final Map<String, LabelState> states;

    /** @param states of all labels, which are placed; by id, kept as they are */
    Labelling(Ground ground, Map<String, LabelState> states) {
        Map<String, Label.Put> puts = new LinkedHashMap<>(2 * states.size());
        states.forEach((id, s) -> puts.put(id, s.put()));
        this.places = Collections.unmodifiableMap(puts);
        this.area = ground.area();
        this.fixed = List.copyOf(ground.fixed());
        this.states = states;
    }

    /** By label's id, in the order in which they were given. */
    public Map<String, Label.Put> places() {
        return places;
    }

    /** Whether the same labels were to be placed, in the same order, among the same things. */
    boolean isOf(Ground ground, List<Label> wanted) {
        if (!area.equals(ground.area()) || states.size() != wanted.size()) {
            return false;
        }
        Iterator<LabelState> mine = states.values().iterator();
        for (Label l : wanted) {
            if (!mine.next().label.equals(l)) {
                return false;
            }
        }
        return fixed.equals(ground.fixed());
    }

    Rect area() {
        return area;
    }

    List<Ground.Solid.Key> fixed() {
        return fixed;
    }

    /** By label's id, in the order in which they were given; they don't change any more. */
    Map<String, LabelState> states() {
        return states;
    }
}
