package planted.render;

import java.util.Timer;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ForkJoinPool;

/** Planted violations, one a method. */
public final class HasPool {
    static ExecutorService pool() {
        return Executors.newCachedThreadPool();
    }

    static ForkJoinPool common() {
        return ForkJoinPool.commonPool();
    }

    static CompletableFuture<String> later() {
        return CompletableFuture.supplyAsync(() -> "later");
    }

    static Timer timer() {
        return new Timer(true);
    }
}
