package planted.layout;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import java.util.random.RandomGenerator;

/** Planted violations, one a method. */
public final class RollsDice {
    static int random() {
        return new Random(1).nextInt();
    }

    static int splittable() {
        return new SplittableRandom(1).nextInt();
    }

    static int threadLocal() {
        return ThreadLocalRandom.current().nextInt();
    }

    static RandomGenerator named() {
        return RandomGenerator.of("L64X128MixRandom");
    }

    static double math() {
        return Math.random();
    }

    static UUID uuid() {
        return UUID.randomUUID();
    }

    static void shuffle(List<String> items) {
        Collections.shuffle(items);
    }
}
