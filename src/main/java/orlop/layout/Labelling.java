package orlop.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The places of the texts of a sheet, and what each of them hangs on. Immutable once made. */
public final class Labelling {
    private final Map<String, Label.Put> places;
    private final Rect area;
    private final List<Ground.Solid.Key> fixed;
    private final Map<String, Label> labels;
    private final Decisions decisions;

    Labelling(Map<String, Label.Put> places, Ground ground, Map<String, Label> labels, Decisions decisions) {
        this.places = Collections.unmodifiableMap(new LinkedHashMap<>(places));
        this.area = ground.area();
        this.fixed = List.copyOf(ground.fixed());
        this.labels = Collections.unmodifiableMap(new LinkedHashMap<>(labels));
        this.decisions = decisions;
    }

    /** By label's id, in the order in which they were given. */
    public Map<String, Label.Put> places() {
        return places;
    }

    /** Whether the same labels were to be placed, in the same order, among the same things. */
    boolean isOf(Ground ground, Map<String, Label> wanted) {
        return area.equals(ground.area())
                && labels.size() == wanted.size()
                && new ArrayList<>(labels.values()).equals(new ArrayList<>(wanted.values()))
                && fixed.equals(ground.fixed());
    }

    Rect area() {
        return area;
    }

    List<Ground.Solid.Key> fixed() {
        return fixed;
    }

    Map<String, Label> labels() {
        return labels;
    }

    Decisions decisions() {
        return decisions;
    }
}
