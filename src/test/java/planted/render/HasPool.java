package planted.render;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** A planted violation. */
public final class HasPool {
    static ExecutorService pool() {
        return Executors.newCachedThreadPool();
    }
}
