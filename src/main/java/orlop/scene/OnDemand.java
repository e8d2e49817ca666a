package orlop.scene;

import java.util.AbstractMap;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Values that are written out when they are first asked for: a screen shows marks and needs none of them. Cannot be
 * changed; safe for use by many threads.
 */
final class OnDemand extends AbstractMap<String, String> {
    private @Nullable Supplier<Map<String, String>> source;
    private @Nullable Map<String, String> made;

    /** @param source gives the same whenever it is asked; its map is not changed any more */
    OnDemand(Supplier<Map<String, String>> source) {
        this.source = source;
    }

    private synchronized Map<String, String> made() {
        Map<String, String> m = made;
        if (m == null) {
            m = source == null ? Map.of() : Collections.unmodifiableMap(source.get());
            made = m;
            source = null;
        }
        return m;
    }

    @Override
    public Set<Entry<String, String>> entrySet() {
        return made().entrySet();
    }

    @Override
    public @Nullable String get(@Nullable Object key) {
        return made().get(key);
    }

    @Override
    public boolean containsKey(@Nullable Object key) {
        return made().containsKey(key);
    }
}
