package orlop.standards;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The time-current points of a device family, by what they say. Immutable. */
public final class Characteristics {
    private final List<Characteristic> all;
    private final Map<Characteristic.Kind, List<Characteristic>> byKind = new EnumMap<>(Characteristic.Kind.class);

    Characteristics(List<Characteristic> all) {
        this.all = List.copyOf(all);
        for (Characteristic.Kind kind : Characteristic.Kind.values()) {
            byKind.put(kind, all.stream().filter(p -> p.kind() == kind).toList());
        }
    }

    /** All, in the table's order. */
    public List<Characteristic> all() {
        return all;
    }

    /** Those of one kind, in the table's order. */
    public List<Characteristic> of(Characteristic.Kind kind) {
        return byKind.getOrDefault(kind, List.of());
    }

    /** Those of one kind that hold for a rated current, A. */
    public List<Characteristic> of(Characteristic.Kind kind, double inA) {
        return of(kind).stream().filter(p -> p.holdsFor(inA)).toList();
    }
}
