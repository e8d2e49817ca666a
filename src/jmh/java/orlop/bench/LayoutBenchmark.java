package orlop.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
import org.openjdk.jmh.annotations.Warmup;
import orlop.drawing.Drawing;
import orlop.layout.BoxSpots;
import orlop.layout.Label;
import orlop.layout.Labeller;
import orlop.layout.Labelling;
import orlop.layout.LineSpots;
import orlop.layout.Placed;
import orlop.layout.Placing;
import orlop.layout.Rect;
import orlop.layout.Router;
import orlop.layout.Routing;
import orlop.layout.Side;
import orlop.layout.Way;
import orlop.render.SvgExport;
import orlop.scene.Palette;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneRequest;
import orlop.study.Results;
import orlop.symbols.SymbolLibrary;

/** How long it takes to lay out a sheet, whole and after one edit, to build its scene and to write it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 5, time = 1)
public class LayoutBenchmark {
    private static final Rect AREA = new Rect(20, 10, 741, 2_600);
    private static final Placing PLACING = new Placing(SymbolLibrary.bundled());

    @Param({"50", "200", "1000"})
    private int components;

    private Drawing drawing = Drawing.empty("");
    private Drawing edited = drawing;
    private boolean moved;
    private Laid last = lay(drawing, null);
    private SceneBuilder builder = SceneBuilder.bundled();
    private Scene scene = scene(GrownSheet.of(3));

    /** A sheet laid out: its ways and the places of its texts. */
    public record Laid(Routing routing, Labelling labelling) {}

    @Setup
    public void grow() {
        drawing = GrownSheet.of(components);
        edited = GrownSheet.moved(drawing, 2.5);
        last = lay(drawing, null);
        builder = SceneBuilder.bundled();
        scene = scene(drawing);
    }

    private static Laid lay(Drawing d, @org.jspecify.annotations.Nullable Laid before) {
        List<Placed> placed = PLACING.place(d, "1", null);
        Routing routing = Router.route(
                placed, GrownSheet.connections(d), AREA, List.of(), before == null ? null : before.routing());
        Labeller labeller = new Labeller(AREA);
        List<Label> labels = new ArrayList<>();
        for (Placed p : placed) {
            labeller.solid(p.ink());
            labels.add(new Label(
                    "c" + p.id(), 18, 7, p.ink(), BoxSpots.around(p.ink(), List.of(Side.RIGHT), 18, 7), false));
        }
        for (Way w : routing.ways().values()) {
            String id = w.connection().id();
            labeller.line(id, w.points(), 0.7);
            Rect first = Rect.around(w.points().get(0), w.points().get(1));
            labels.add(new Label(id, 30, 6, first, LineSpots.of(w.points(), 30, 6, null), false));
        }
        return new Laid(routing, labeller.place(labels, before == null ? null : before.labelling()));
    }

    private static Scene scene(Drawing d) {
        return SceneBuilder.bundled().build(request(d));
    }

    private static SceneRequest request(Drawing d) {
        Results none = new Results(Results.GOVERNING, "", true, 0, Map.of(), Map.of(), Map.of(), List.of());
        return SceneRequest.screen(d, none, List.of(), "1");
    }

    @Benchmark
    public Laid layoutWhole() {
        return lay(drawing, null);
    }

    @Benchmark
    public Laid layoutAfterAnEdit() {
        moved = !moved;
        last = lay(moved ? edited : drawing, last);
        return last;
    }

    @Benchmark
    public Scene sceneWhole() {
        return scene(drawing);
    }

    @Benchmark
    public Scene sceneAfterAnEdit() {
        moved = !moved;
        return builder.build(request(moved ? edited : drawing));
    }

    @Benchmark
    public byte[] svg() {
        return SvgExport.write(scene, Palette.LIGHT);
    }
}
