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
import orlop.study.Results;
import orlop.study.Study;

/**
 * How long a whole study takes: network, flow, faults, sizing, coverage; with the findings; and beside it the bare flow of
 * the same network by a general sparse solver. The growth over the sizes is written by {@link Growth}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class StudyBenchmark {
    @Param({"200", "1000", "10000", "100000"})
    private int cables;

    @Param({"0", "5"})
    private int meshPercent;

    private Drawing drawing = Drawing.empty("");
    private @Nullable BareFlow bare;

    @Setup
    public void grow() {
        drawing = GrownDrawings.tree(cables, 1, meshPercent, 7);
        Results studied = Study.of(drawing).governing();
        bare = new BareFlow(drawing, studied);
        double apart = bare.differenceV(drawing, studied);
        if (!(apart < 1e-6)) { // else two different things would be timed
            throw new IllegalStateException("the bare flow differs by " + apart + " V");
        }
    }

    @Benchmark
    public Study study() {
        return Study.of(drawing);
    }

    @Benchmark
    public List<Finding> studyAndFindings() {
        return Checker.check(Study.of(drawing));
    }

    @Benchmark
    public double[] bareFlowByEjml() {
        return Objects.requireNonNull(bare).solve();
    }
}
