package orlop.editor;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
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

/**
 * Makes the scene of what a session shows, and keeps the last one. On the event thread, but for one that can be made ahead by
 * the thread that has worked out its figures, and for the first layout of a large sheet, and one in which much has changed at
 * once, where {@link #behind} says who makes it.
 */
final class ShownScene {
    static final Results NO_RESULTS =
            new Results(Results.GOVERNING, "", true, 0, Map.of(), Map.of(), Map.of(), List.of());

    private SymbolLibrary library = OwnSymbols.library();
    private SceneBuilder builder = SceneBuilder.with(library);
    private Annotations annotations = Annotations.ALL;
    private @Nullable Made last;
    private double lastMs;
    private final Set<String> laidOut = new HashSet<>();
    private @Nullable Behind behind;
    private @Nullable Awaited awaited;
    private @Nullable Drawing much;

    /** Up to so many components a sheet is laid out at once. */
    private static final int MOST_AT_ONCE = 300;

    /** Where more than so many components and cables of a large drawing have changed, it isn't laid out at once either. */
    private static final int MUCH = 40;

    /** What is being laid out so long is given up for something else, in milliseconds. */
    private static final int GIVEN_UP_MS = 2_000;

    /** A sheet that a worker is laying out, and since when. */
    private record Awaited(SceneRequest request, long sinceNs) {
        boolean old() {
            return System.nanoTime() - sinceNs > GIVEN_UP_MS * 1_000_000L;
        }
    }

    /** Who lays out large sheets, and who is told when one is ready. */
    private record Behind(Executor worker, Executor ui, Runnable ready) {}

    private record Made(Drawing drawing, @Nullable Review review, SceneRequest request, Scene scene, double ms) {}

    /** What will be asked for when a review of the drawing has come. */
    private record Wanted(
            Drawing drawing, String sheet, String condition, Annotations annotations, SceneBuilder builder) {}

    private volatile @Nullable Wanted wanted;
    private volatile @Nullable Made ahead;
    private volatile @Nullable Drawing making;

    Annotations annotations() {
        return annotations;
    }

    void annotations(Annotations shown) {
        annotations = shown;
        last = null;
    }

    /** What is shown, and the gauge if it is wished. */
    private Annotations parts() {
        return Preferences.onSheets(annotations);
    }

    /**
     * From now on a large sheet is laid out for the first time, for the first time with its figures, and after much has changed,
     * by a worker.
     *
     * @param worker any thread
     * @param ui the thread on which scenes are asked for
     * @param ready told there when a sheet has been laid out
     */
    void behind(Executor worker, Executor ui, Runnable ready) {
        behind = new Behind(worker, ui, ready);
    }

    /** Whether a worker is laying out a sheet. */
    boolean awaited() {
        return awaited != null;
    }

    /**
     * The scene of the sheet that is shown; empty while there is none, and while its first is being made. While the one with
     * its figures is being made, the one before.
     */
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
                && m.request.results() == s.results().orElse(NO_RESULTS)
                && m.request.annotations().equals(parts());
        if (m != null && same) {
            return Optional.of(m.scene);
        }
        Behind b = behind;
        if (m != null && other(m.drawing, d)) {
            laidOut.clear();
        }
        if (b != null && large(d) && (!laidOut.contains(layout(s)) || takesLong(m, d))) {
            Awaited now = awaited;
            if (now == null) {
                begin(b, with, s, d);
            } else if (now.request.drawing() != d && now.old()) { // what is shown has changed since, so nobody wants it
                builder = SceneBuilder.with(library);
                laidOut.clear();
                begin(b, builder, s, d);
            }
            boolean meanwhile = m != null && m.drawing == d && m.request.sheet().equals(s.sheet());
            return meanwhile && m != null ? Optional.of(m.scene) : Optional.empty();
        }
        m = ahead(s, d);
        if (m == null) {
            m = made(with, s, d);
        }
        last = m;
        lastMs = m.ms;
        return Optional.of(m.scene);
    }

    /** Whether a drawing has so much that a scene of it, made while a person works, may be waited for. */
    static boolean large(Drawing d) {
        return d.components().size() > MOST_AT_ONCE;
    }

    /** Whether most of a large drawing is other than in the one before: one that was opened, not one that was edited. */
    @SuppressWarnings("ReferenceEquality") // an edit keeps the components that it doesn't touch
    private static boolean other(Drawing before, Drawing now) {
        return large(now)
                && now.components().stream()
                                .filter(c -> before.components().get(c.id()) == c)
                                .count()
                        < now.components().size() / 2;
    }

    /** Whether so much is other than in what was laid out last, or is being laid out, that it can't be done at once. */
    @SuppressWarnings("ReferenceEquality") // an edit keeps what it doesn't touch
    private boolean takesLong(@Nullable Made m, Drawing d) {
        if (awaited != null) {
            return true;
        }
        if (much != d && m != null && m.drawing != d && muchOther(m.drawing, d)) {
            much = d;
        }
        return much == d;
    }

    @SuppressWarnings("ReferenceEquality") // an edit keeps what it doesn't touch
    private static boolean muchOther(Drawing before, Drawing now) {
        long components = now.components().stream()
                .filter(c -> before.components().get(c.id()) != c)
                .count();
        long cables = now.cables().stream()
                .filter(w -> before.cables().get(w.id()) != w)
                .count();
        int gone = before.components().size() - now.components().size();
        return components + cables + Math.max(0, gone) > MUCH;
    }

    /** Is told of a drawing whose figures are being worked out. */
    void want(SessionState s) {
        Drawing d = s.drawing();
        boolean known = !large(d) || (laidOut.contains(layout(s)) && !takesLong(last, d));
        wanted = known && d.sheets().contains(s.sheet())
                ? new Wanted(d, s.sheet(), s.condition(), parts(), builder())
                : null;
    }

    /**
     * Makes the scene that was wanted with these figures. Any thread.
     *
     * @return the scene; empty if another drawing is wanted, or none
     */
    @SuppressWarnings("ReferenceEquality") // an edit makes another drawing
    Optional<Scene> ahead(Review review) {
        Wanted w = wanted;
        if (w == null || w.drawing != review.drawing()) {
            return Optional.empty();
        }
        long start = System.nanoTime();
        making = w.drawing;
        try {
            SceneRequest request = SceneRequest.screen(
                            w.drawing, review.study().of(w.condition), review.findings(), w.sheet)
                    .withAnnotations(w.annotations);
            Scene scene = w.builder.build(request);
            ahead = new Made(w.drawing, review, request, scene, (System.nanoTime() - start) / 1e6);
            return Optional.of(scene);
        } catch (RuntimeException e) {
            ahead = null; // it happens again where it is told
            return Optional.empty();
        } finally {
            making = null;
        }
    }

    /** Whether the scene of a large drawing is being made ahead right now, so that the window needn't make its own. */
    @SuppressWarnings("ReferenceEquality") // an edit makes another drawing
    boolean coming(Drawing d) {
        return large(d) && making == d;
    }

    /** The scene of this state if it was made ahead. */
    @SuppressWarnings("ReferenceEquality") // the very same drawing and review
    private @Nullable Made ahead(SessionState s, Drawing d) {
        Made a = ahead;
        if (a == null || a.review != s.review()) {
            return null;
        }
        ahead = null;
        boolean same = a.drawing == d
                && a.request.sheet().equals(s.sheet())
                && a.request.results() == s.results().orElse(NO_RESULTS)
                && a.request.annotations().equals(parts());
        return same ? a : null;
    }

    /** Begins with what a scene of this state can be spared, before its figures are there. */
    @SuppressWarnings("ReferenceEquality") // an edit makes another drawing
    void prepare(SessionState s) {
        Drawing d = s.shown();
        if (d.sheets().contains(s.sheet()) && !large(d) && making != d) {
            builder().prepare(d, s.sheet(), s.results().orElse(NO_RESULTS).condition());
        }
    }

    /** What is laid out for the first time takes long: a sheet, and its texts when there are figures. */
    private static String layout(SessionState s) {
        return s.sheet() + (s.review() == null ? "\n" : "\n\n");
    }

    private void begin(Behind b, SceneBuilder with, SessionState s, Drawing d) {
        long start = System.nanoTime();
        Awaited mine = new Awaited(request(s, d, s.sheet()), start);
        awaited = mine;
        b.worker.execute(() -> {
            try {
                Scene scene = with.build(mine.request);
                double ms = (System.nanoTime() - start) / 1e6;
                b.ui.execute(() -> ended(b, s, mine, () -> {
                    last = new Made(d, s.review(), mine.request, scene, ms);
                    lastMs = ms;
                }));
            } catch (RuntimeException e) {
                b.ui.execute(() -> ended(b, s, mine, () -> much = null)); // it happens again where it is told
            }
        });
    }

    @SuppressWarnings("ReferenceEquality") // only the very one that is waited for
    private void ended(Behind b, SessionState s, Awaited what, Runnable take) {
        if (awaited == what) {
            awaited = null;
            laidOut.add(layout(s));
            take.run();
            b.ready.run();
        }
    }

    /** With the symbols that hold now. */
    @SuppressWarnings("ReferenceEquality") // a library is read anew or it is the same
    private SceneBuilder builder() {
        if (library != OwnSymbols.library()) {
            library = OwnSymbols.library();
            builder = SceneBuilder.with(library);
            last = null;
            ahead = null;
            wanted = null;
            laidOut.clear();
        }
        return builder;
    }

    private Made made(SceneBuilder with, SessionState s, Drawing d) {
        long start = System.nanoTime();
        SceneRequest request = request(s, d, s.sheet());
        Scene scene = with.build(request);
        return new Made(d, s.review(), request, scene, (System.nanoTime() - start) / 1e6);
    }

    private SceneRequest request(SessionState s, Drawing d, String sheet) {
        Review r = s.review();
        List<Finding> findings = r == null ? List.of() : r.findings();
        return SceneRequest.screen(d, s.results().orElse(NO_RESULTS), findings, sheet)
                .withAnnotations(parts());
    }

    /** The scene of any sheet of the drawing at work. */
    Scene ofSheet(SessionState s, String sheet) {
        return builder().build(request(s, s.drawing(), sheet));
    }

    /** Makes, on any thread, the scene of the sheet that is shown now as it goes on paper, with the findings in its margin. */
    Supplier<List<Scene>> onPaper(SessionState s) {
        SceneRequest paper = request(s, s.drawing(), s.sheet()).withMargin(true);
        SceneBuilder with = builder();
        return () -> with.pages(paper);
    }

    /** Whether scenes are made fast enough to be made anew with every step of the mouse, and painted, 50 times a second. */
    boolean fast() {
        return lastMs < 12;
    }
}
