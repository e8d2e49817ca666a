package orlop.editor;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import orlop.desk.Review;
import orlop.desk.Same;
import orlop.desk.Session;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Extras;
import orlop.drawing.Kind;
import orlop.drawing.LoadState;
import orlop.drawing.OperatingCondition;
import orlop.findings.Checker;
import orlop.study.Study;
import orlop.study.StudyOptions;

/**
 * The time from an edit to its annotations in a window that is shown, by the window's own clock: it begins when the edit is
 * applied on the event thread and ends when the sheet with the fresh figures stands painted in the window, behind all that
 * lies between: grey figures if they were painted, the hand-over to the thread that studies, the study of all conditions,
 * the findings, the hand-over back, layout and scene.
 *
 * <p>The edits are, in turn, the everyday ones: the length of a cable typed, the power of a load typed, a component
 * nudged by one step of the grid, a component added. What they are made to is selected, as it is when a person does so.
 * What was added is taken back before the next round, unmeasured, so that the drawing stays as large as it is. Between two
 * edits the window comes to rest.
 */
final class EditFigures {
    /** After so many edits the program has been translated as far as a short session translates it. */
    static final int WARM_UP = 240;

    private static final long REST_MS = 25;
    private static final LoadState OFF = new LoadState(false, 1, 1, Extras.NONE);

    private final Stamps stamps = new Stamps();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread t = new Thread(task, "orlop-study");
        t.setDaemon(true);
        return t;
    });
    private final Session session;
    private final MainWindow window;
    private final Drawing start;
    private volatile @Nullable CountDownLatch shown;

    private EditFigures(Drawing d) {
        start = d;
        Review.Maker maker = (drawing, stale) -> {
            stamps.worker();
            stamps.set("study begun");
            Study study = Study.of(drawing, StudyOptions.DEFAULT, stale);
            stamps.set("studied");
            Review review = new Review(study, Checker.check(study));
            stamps.set("checked");
            return review;
        };
        session = new Session(d, null, maker, worker, new EventThread(), e -> {
            throw new IllegalStateException(e);
        });
        session.listen((before, after) -> {
            if (after.fresh() && !Same.object(before.review(), after.review())) {
                stamps.set("handed over");
            }
        });
        window = new MainWindow(session, new Settings(null), new NoDesks(), gone -> {});
        session.listen((before, after) -> {
            if (after.fresh() && !Same.object(before.review(), after.review())) {
                stamps.set("window told");
            }
        });
        window.bench().canvas().onFresh(this::sheetPainted);
        window.show();
    }

    private void sheetPainted() {
        stamps.painted();
        SwingUtilities.invokeLater(() -> {
            CountDownLatch waiting = shown;
            if (waiting != null) { // what was asked to be painted meanwhile is painted by now
                stamps.set("all painted");
                shown = null;
                waiting.countDown();
            }
        });
    }

    /** When the stages of the edit at work ended. Any thread. */
    private static final class Stamps {
        private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        private final Map<String, AtomicLong> at = new LinkedHashMap<>();
        private volatile long worker;
        private volatile long processorNs;

        Stamps() {
            for (String s : List.of(
                    "begun",
                    "edit told",
                    "study begun",
                    "studied",
                    "checked",
                    "handed over",
                    "painted",
                    "window told",
                    "all painted")) {
                at.put(s, new AtomicLong());
            }
        }

        void set(String stage) {
            Optional.ofNullable(at.get(stage)).orElseThrow().set(System.nanoTime());
        }

        /** Is told, by the thread that studies, that it does so. */
        void worker() {
            worker = Thread.currentThread().getId();
        }

        /** What the event thread, which asks, and the one that studies have worked. */
        long processorNs() {
            return threads.getCurrentThreadCpuTime() + threads.getThreadCpuTime(worker);
        }

        void begun() {
            processorNs = processorNs();
            set("begun");
        }

        void painted() {
            set("painted");
            long worked = processorNs();
            worked -= processorNs;
            processorNs = worked;
        }

        long ns(String stage) {
            return Optional.ofNullable(at.get(stage)).orElseThrow().get();
        }

        /** A stage that was left out ended at once. */
        Map<String, Double> sinceBegun() {
            Map<String, Double> ms = new LinkedHashMap<>();
            at.forEach((s, t) -> ms.put(s, Math.max(0, t.get() - ns("begun")) / 1e6));
            ms.put("processors", processorNs / 1e6);
            return ms;
        }
    }

    /** So many components in so many conditions; in each but the first, every so manieth load is off. */
    static Drawing drawing(int components, int conditions) {
        Drawing d = GrownBoat.of(components);
        for (int i = 1; i < conditions; i++) {
            OperatingCondition c = OperatingCondition.asDrawn("c" + i, "Condition " + i);
            int n = 0;
            for (Component load : d.components().values()) {
                if (load.kind() == Kind.LIGHTING && n++ % (i + 1) == 0) {
                    c = c.withLoad(load.id(), OFF);
                }
            }
            d = d.with(c);
        }
        return d;
    }

    private void edit(int i) {
        Drawing d = session.state().drawing();
        Edit edit = TypicalEdits.of(start, d, i);
        boolean adds = TypicalEdits.name(i).equals("add");
        Set<String> selected =
                adds ? Set.of(TypicalEdits.ADDED) : session.state().selection();
        begun(() -> session.apply(edit, selected));
    }

    private void begun(Runnable edit) {
        stamps.begun();
        edit.run();
        stamps.set("edit told");
    }

    private void select(int i) {
        Drawing d = session.state().drawing();
        if (d.components().contains(TypicalEdits.ADDED)) {
            session.undo();
        }
        session.select(Set.of(TypicalEdits.subject(d, i)));
    }

    private void rest() throws Exception {
        for (int quiet = 0; quiet < 2; ) {
            Thread.sleep(REST_MS);
            boolean[] fresh = new boolean[1];
            SwingUtilities.invokeAndWait(() -> fresh[0] = session.state().fresh());
            quiet = fresh[0] ? quiet + 1 : 0;
        }
    }

    private Map<String, Double> one(int i) throws Exception {
        SwingUtilities.invokeAndWait(() -> select(i));
        rest();
        CountDownLatch waiting = new CountDownLatch(1);
        SwingUtilities.invokeAndWait(() -> {
            shown = waiting;
            edit(i);
        });
        if (!waiting.await(20, TimeUnit.SECONDS)) {
            throw new IllegalStateException("edit " + i + " was never shown");
        }
        return stamps.sinceBegun();
    }

    /**
     * @param warmUp so many edits are made before
     * @return of each edit, when its stages ended, in milliseconds; by the kind of edit
     */
    static Map<String, List<Map<String, Double>>> measure(Drawing d, int warmUp, int measured) throws Exception {
        EditFigures[] made = new EditFigures[1];
        SwingUtilities.invokeAndWait(() -> {
            Look.install(false);
            made[0] = new EditFigures(d);
        });
        made[0].rest();
        Map<String, List<Map<String, Double>>> all = new LinkedHashMap<>();
        for (int i = 0; i < warmUp + measured; i++) {
            Map<String, Double> one = made[0].one(i);
            if (i >= warmUp) {
                all.computeIfAbsent(TypicalEdits.name(i), k -> new ArrayList<>())
                        .add(one);
            }
        }
        SwingUtilities.invokeAndWait(() -> made[0].window.frame().dispose());
        return all;
    }

    /**
     * @param args components, conditions, edits that are measured, edits before them, rounds of the {@link Rehearsal}
     *     before those; none means 200, 5, 400, 240, 0
     */
    public static void main(String[] args) throws Exception {
        int components = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        int conditions = args.length > 1 ? Integer.parseInt(args[1]) : 5;
        int measured = args.length > 2 ? Integer.parseInt(args[2]) : 400;
        int warmUp = args.length > 3 ? Integer.parseInt(args[3]) : WARM_UP;
        Drawing d = drawing(components, conditions);
        if (args.length > 4) {
            new Rehearsal(d, Integer.parseInt(args[4]), 60).run();
        }
        say(measure(d, warmUp, measured));
        System.exit(0);
    }

    /** Says the whole time by the kind of edit, and of all of them when each stage ended. */
    static void say(Map<String, List<Map<String, Double>>> byEdit) {
        List<Map<String, Double>> together = new ArrayList<>();
        byEdit.forEach((edit, times) -> {
            say(edit, times);
            together.addAll(times);
        });
        say("all", together);
        for (String stage : together.get(0).keySet()) {
            System.out.printf(
                    Locale.ROOT,
                    "    %-16s median %6.2f  p99 %6.2f%n",
                    stage,
                    at(together, stage, 0.5),
                    at(together, stage, 0.99));
        }
    }

    private static void say(String what, List<Map<String, Double>> times) {
        System.out.printf(
                Locale.ROOT,
                "edit to annotations, %-18s  median %8.2f ms   p99 %8.2f ms   of %4d   budget <= 5 ms, <= 16 ms%n",
                what,
                at(times, "painted", 0.5),
                at(times, "painted", 0.99),
                times.size());
    }

    private static double at(List<Map<String, Double>> times, String stage, double share) {
        double[] ms = times.stream()
                .mapToDouble(t -> t.getOrDefault(stage, Double.NaN))
                .sorted()
                .toArray();
        return ms[Math.min(ms.length - 1, (int) (ms.length * share))];
    }
}
