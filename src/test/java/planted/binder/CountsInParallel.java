package planted.binder;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Planted violations, one a method. */
public final class CountsInParallel {
    static long list(List<String> items) {
        return items.parallelStream().count();
    }

    static long stream(Stream<String> items) {
        return items.parallel().count();
    }

    static int numbers() {
        return IntStream.range(0, 9).parallel().sum();
    }
}
