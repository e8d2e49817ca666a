package orlop.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Read-only copies in the order of the original; small ones take no more room than they need. */
final class Kept {
    private Kept() {}

    static <K, V> Map<K, V> copy(Map<K, V> map) {
        return map.size() < 2 ? Map.copyOf(map) : Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
