package orlop.bench;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import orlop.drawing.Drawing;
import orlop.findings.Checker;
import orlop.findings.Finding;
import orlop.study.Study;

/**
 * How long a whole study takes: network, flow, faults, sizing, coverage; with the findings; and beside it the bare flow of
 * the same networks by a general sparse solver. The growth over the sizes is written by {@link Growth}.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 1)
public class StudyBenchmark {
    private static final int SHIP = 200;

    private static Drawing grown(int cables, int meshPercent) {
        return GrownDrawings.tree(cables, cables == SHIP ? 5 : 1, meshPercent, 7);
    }

    /** A drawing: of a ship's size with five conditions, larger ones with one. */
    @State(Scope.Benchmark)
    public static class Grown {
        @Param({"200", "1000", "10000", "100000"})
        private int cables;

        @Param({"0", "5"})
        private int meshPercent;

        private Drawing drawing = Drawing.empty("");

        @Setup
        public void grow() {
            drawing = grown(cables, meshPercent);
        }
    }

    /** Radial ones: a study with its findings is timed on these alone. */
    @State(Scope.Benchmark)
    public static class GrownTree {
        @Param({"200", "1000", "10000", "100000"})
        private int cables;

        @Param("0")
        private int meshPercent;

        private Drawing drawing = Drawing.empty("");

        @Setup
        public void grow() {
            drawing = grown(cables, meshPercent);
        }
    }

    /** The same for the other solver. */
    @State(Scope.Benchmark)
    public static class Radial {
        @Param({"1000", "10000", "100000"})
        private int cables;

        @Param("0")
        private int meshPercent;

        private @Nullable BareFlow bare;

        @Setup
        public void prepare() {
            bare = checked(grown(cables, meshPercent));
        }
    }

    /**
     * Meshed, as far as a solver without a good order gets in a bearable time: of 100,000 cables the factor would fill in
     * nearly whole, so that size is left out, not timed badly.
     */
    @State(Scope.Benchmark)
    public static class Meshed {
        @Param({"1000", "10000"})
        private int cables;

        @Param("5")
        private int meshPercent;

        private @Nullable BareFlow bare;

        @Setup
        public void prepare() {
            bare = checked(grown(cables, meshPercent));
        }
    }

    private static BareFlow checked(Drawing drawing) {
        Study study = Study.of(drawing);
        BareFlow bare = new BareFlow(drawing, study.governing());
        double apart = bare.differenceV(drawing, study.governing());
        if (!(apart < 1e-6)) { // else two different things would be timed
            throw new IllegalStateException("the bare flow differs by " + apart + " V");
        }
        return bare;
    }

    @Benchmark
    public Study study(Grown g) {
        return Study.of(g.drawing);
    }

    @Benchmark
    public List<Finding> studyAndFindings(GrownTree g) {
        return Checker.check(Study.of(g.drawing));
    }

    @Benchmark
    public double[] bareFlowByEjml(Radial r) {
        return Objects.requireNonNull(r.bare).solve();
    }

    @Benchmark
    public double[] bareFlowByEjmlMeshed(Meshed m) {
        return Objects.requireNonNull(m.bare).solve();
    }
}
