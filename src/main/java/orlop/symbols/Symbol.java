package orlop.symbols;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A symbol as the sheet draws it. Immutable; safe for use by many threads.
 *
 * @param name its own name, unique in a library: that of its file
 * @param kind the kind of component it stands for, as in a drawing's file
 * @param variants the forms of the kind which it shows ({@code dc}, {@code ac3}, {@code isolating} …); empty: the plain form
 * @param state the state which it shows ({@code open}, {@code closed}, a switch position); empty: the kind has no state
 * @param outlines strokes and areas in the order of painting, at least one
 * @param extent what the ink covers, however the symbol stands
 * @param terminals by id, in the order of the manifest
 * @param textPlaces where its texts may stand, the best first; at least one
 * @param standard the standard's number it is drawn after, or that there is none
 * @param provenance how that is known: {@code memory}, {@code composed} (put together from the standard's parts),
 *     {@code own} (a person's own symbol)
 * @param titleKey key of its name in words; the argument is {@code name}
 */
public record Symbol(
        String name,
        String kind,
        List<String> variants,
        String state,
        List<Outline> outlines,
        Extent extent,
        Map<String, Terminal> terminals,
        List<TextPlace> textPlaces,
        String standard,
        String provenance,
        String titleKey) {
    public Symbol {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(kind, "kind");
        variants = List.copyOf(variants);
        Objects.requireNonNull(state, "state");
        outlines = List.copyOf(outlines);
        Objects.requireNonNull(extent, "extent");
        // Map.copyOf would lose the order, and with it "same input, same bytes".
        terminals = Collections.unmodifiableMap(new LinkedHashMap<>(terminals));
        textPlaces = List.copyOf(textPlaces);
        Objects.requireNonNull(standard, "standard");
        Objects.requireNonNull(provenance, "provenance");
        Objects.requireNonNull(titleKey, "titleKey");
        if (outlines.isEmpty() || textPlaces.isEmpty()) {
            throw new IllegalArgumentException("symbol " + name + " has no outline or no place for its texts");
        }
    }

    /** What the ink covers as the symbol is drawn in its file. */
    public Bounds bounds() {
        return extent.at(Turn.NONE);
    }

    /** What the ink covers in the turned symbol, from its origin. */
    public Bounds bounds(Turn turn) {
        return extent.at(turn);
    }

    /** Whether it has letters or signs that stay upright, so that turned it is another picture. */
    public boolean hasUprights() {
        return !extent.uprights().isEmpty();
    }
}
