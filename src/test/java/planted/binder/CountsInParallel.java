package planted.binder;

import java.util.List;

/** A planted violation. */
public final class CountsInParallel {
    static long count(List<String> items) {
        return items.parallelStream().count();
    }
}
