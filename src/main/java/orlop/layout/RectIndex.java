package orlop.layout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rectangles by id, found by where they lie. Not safe for use by several threads. */
final class RectIndex {
    private static final double BUCKET_MM = 20;

    /** A rectangle and whose it is. */
    record Entry(String id, Rect rect) {}

    private final Map<Long, List<Entry>> buckets = new HashMap<>();
    private final Map<String, Entry> byId = new LinkedHashMap<>();

    void put(String id, Rect rect) {
        remove(id);
        Entry e = new Entry(id, rect);
        byId.put(id, e);
        keys(rect)
                .forEach(k -> buckets.computeIfAbsent(k, x -> new ArrayList<>()).add(e));
    }

    void remove(String id) {
        Entry e = byId.remove(id);
        if (e != null) {
            keys(e.rect).forEach(k -> buckets.getOrDefault(k, List.of()).remove(e));
        }
    }

    /** All that share more than an edge with the rectangle. */
    Collection<Entry> overlapping(Rect r) {
        Map<String, Entry> found = new LinkedHashMap<>();
        for (long k : keys(r)) {
            for (Entry e : buckets.getOrDefault(k, List.of())) {
                if (e.rect.overlaps(r)) {
                    found.put(e.id, e);
                }
            }
        }
        return found.values();
    }

    private static List<Long> keys(Rect r) {
        List<Long> keys = new ArrayList<>();
        for (long x = bucket(r.minX()); x <= bucket(r.maxX()); x++) {
            for (long y = bucket(r.minY()); y <= bucket(r.maxY()); y++) {
                keys.add(x * 1_000_003L + y);
            }
        }
        return keys;
    }

    private static long bucket(double mm) {
        return (long) Math.floor(mm / BUCKET_MM);
    }
}
