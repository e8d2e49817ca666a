package orlop.editor;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import orlop.desk.Review;
import orlop.drawing.Drawing;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneRequest;
import orlop.study.Results;

/**
 * From an edit to its annotations at 200 components without a window, on two threads as in it: the edit; the study of all
 * conditions and the findings, unless nothing but the paper has changed, and the scene by one thread, while the other prepares the sheet's places and ways. {@code EditFigures} measures the same as
 * a person meets it, with painting. The warm-up is long, since with five conditions the figures fall for half a minute.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 12, time = 3)
@Measurement(iterations = 5, time = 2)
public class EditBenchmark {
    @Param({"1", "5"})
    private int conditions;

    private Drawing start = Drawing.empty("");
    private Drawing current = start;
    private SceneBuilder builder = SceneBuilder.bundled();
    private int number;
    private Review last = Review.of(start, () -> false);
    private final ExecutorService worker = Executors.newSingleThreadExecutor();

    @Setup
    public void grow() {
        start = EditFigures.drawing(200, conditions);
        current = start;
        builder = SceneBuilder.bundled();
        number = 0;
    }

    @TearDown
    public void end() {
        worker.shutdown();
    }

    @Benchmark
    public Scene editToAnnotations() throws ExecutionException, InterruptedException {
        int i = number++;
        Drawing edited = TypicalEdits.of(start, current, i).applyTo(current);
        boolean added = TypicalEdits.name(i).equals("add");
        current = added ? current : edited; // what was added is taken back
        Future<Scene> scene = worker.submit(() -> scene(edited));
        builder.prepare(edited, "1", Results.GOVERNING);
        return scene.get();
    }

    private Scene scene(Drawing d) {
        Review review = last.onPaper(d).orElseGet(() -> Review.of(d, () -> false));
        last = review;
        return builder.build(SceneRequest.screen(d, review.study().governing(), review.findings(), "1"));
    }
}
