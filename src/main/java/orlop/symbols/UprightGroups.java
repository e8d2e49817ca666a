package orlop.symbols;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The groups of a file that are marked to stay upright, while it is read. */
final class UprightGroups {
    private final Map<String, Place> begun = new LinkedHashMap<>();
    private final Map<String, Bounds> inks = new LinkedHashMap<>();
    private final List<Drawn> drawn = new ArrayList<>();

    /** An outline and the id of the upright group it stands in; null: in none. */
    private record Drawn(Outline outline, @Nullable String group) {}

    /**
     * The upright group in which the parts of an element stand.
     *
     * @param outer the one in which the element itself stands; null: none
     * @return null if they stand in none
     */
    @Nullable
    String within(String element, Map<String, String> attributes, @Nullable String outer, Place place)
            throws SymbolRefusedException {
        String id = attributes.get("id");
        if (id == null || !id.startsWith(Upright.ID)) {
            return outer;
        }
        if (!element.equals("g")) {
            throw place.refuse(Refusal.UPRIGHT_NO_GROUP, element + " id=" + id);
        }
        if (outer != null) {
            throw place.refuse(Refusal.UPRIGHT_WITHIN, id);
        }
        if (begun.putIfAbsent(id, place) != null) {
            throw place.refuse(Refusal.UPRIGHT_TWICE, id);
        }
        return id;
    }

    void add(Outline outline, @Nullable String group) {
        drawn.add(new Drawn(outline, group));
        if (group != null) {
            inks.merge(group, outline.bounds(), Bounds::union);
        }
    }

    /** All that was added, each outline with its sign. */
    List<Outline> outlines() throws SymbolRefusedException {
        Map<String, Upright> signs = new LinkedHashMap<>();
        for (var group : begun.entrySet()) {
            Bounds ink = inks.get(group.getKey());
            if (ink == null) {
                throw group.getValue().refuse(Refusal.UPRIGHT_EMPTY, group.getKey());
            }
            signs.put(group.getKey(), new Upright(group.getKey(), ink));
        }
        return drawn.stream().map(d -> d.outline().in(signs.get(d.group()))).toList();
    }
}
