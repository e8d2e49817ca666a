package orlop.editor;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import orlop.desk.OwnSymbols;
import orlop.desk.Review;
import orlop.desk.SessionState;
import orlop.drawing.Drawing;
import orlop.findings.Finding;
import orlop.scene.Annotations;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneRequest;
import orlop.study.Results;
import orlop.symbols.SymbolLibrary;

/** Makes the scene of what a session shows, and keeps the last one. */
final class ShownScene {
    static final Results NO_RESULTS =
            new Results(Results.GOVERNING, "", true, 0, Map.of(), Map.of(), Map.of(), List.of());

    private SymbolLibrary library = OwnSymbols.library();
    private SceneBuilder builder = SceneBuilder.with(library);
    private Annotations annotations = Annotations.ALL;
    private @Nullable Made last;
    private double lastMs;

    private record Made(Drawing drawing, @Nullable Review review, SceneRequest request, Scene scene) {}

    Annotations annotations() {
        return annotations;
    }

    void annotations(Annotations shown) {
        annotations = shown;
        last = null;
    }

    /** The scene of the sheet that is shown; empty while there is none. */
    @SuppressWarnings("ReferenceEquality") // the very same drawing and review make the very same scene
    Optional<Scene> of(SessionState s) {
        Drawing d = s.shown();
        if (!d.sheets().contains(s.sheet())) {
            return Optional.empty();
        }
        SceneBuilder with = builder();
        Made m = last;
        boolean same = m != null
                && m.drawing == d
                && m.review == s.review()
                && m.request.sheet().equals(s.sheet())
                && m.request.results() == s.results().orElse(NO_RESULTS);
        if (m == null || !same) {
            m = made(with, s, d);
            last = m;
        }
        return Optional.of(m.scene);
    }

    /** With the symbols that hold now. */
    @SuppressWarnings("ReferenceEquality") // a library is read anew or it is the same
    private SceneBuilder builder() {
        if (library != OwnSymbols.library()) {
            library = OwnSymbols.library();
            builder = SceneBuilder.with(library);
            last = null;
        }
        return builder;
    }

    private Made made(SceneBuilder with, SessionState s, Drawing d) {
        long start = System.nanoTime();
        SceneRequest request = request(s, d, s.sheet());
        Scene scene = with.build(request);
        lastMs = (System.nanoTime() - start) / 1e6;
        return new Made(d, s.review(), request, scene);
    }

    private SceneRequest request(SessionState s, Drawing d, String sheet) {
        Review r = s.review();
        List<Finding> findings = r == null ? List.of() : r.findings();
        return SceneRequest.screen(d, s.results().orElse(NO_RESULTS), findings, sheet)
                .withAnnotations(annotations);
    }

    /** The scene of any sheet of the drawing at work. */
    Scene ofSheet(SessionState s, String sheet) {
        return builder().build(request(s, s.drawing(), sheet));
    }

    /** Makes, on any thread, the scene of the sheet that is shown now as it goes on paper, with the findings in its margin. */
    Supplier<Scene> onPaper(SessionState s) {
        SceneRequest paper = request(s, s.drawing(), s.sheet()).withMargin(true);
        SceneBuilder with = builder();
        return () -> with.build(paper);
    }

    /** Whether scenes are made fast enough to be made anew with every step of the mouse, and painted, 50 times a second. */
    boolean fast() {
        return lastMs < 12;
    }
}
