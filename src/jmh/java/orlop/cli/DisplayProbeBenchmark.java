package orlop.cli;

import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The probe stands before the first window, so its time counts against the start of the program: one shot, cold. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(5)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class DisplayProbeBenchmark {
    private static final String LIBRARIES = System.getProperty("sun.boot.library.path", "");

    private final Display.Surroundings dead =
            new Display.Surroundings(Map.of("DISPLAY", ":987"), "Linux", "", LIBRARIES);

    /** What is there on this machine: see the environment of the run. */
    @Benchmark
    public Display.State here() {
        return Display.probe();
    }

    /** Named, but nobody listens. */
    @Benchmark
    public Display.State dead() {
        return Display.probe(dead);
    }
}
