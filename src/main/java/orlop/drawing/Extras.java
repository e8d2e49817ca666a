package orlop.drawing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Keys of a file that this version does not know, kept so that they can be written back.
 *
 * @param json key to the JSON text of its value, in the order of the file
 */
public record Extras(Map<String, String> json) {
    /** Nothing kept: the usual case. */
    public static final Extras NONE = new Extras(Map.of());

    public Extras {
        json = json.isEmpty() ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(json));
    }
}
