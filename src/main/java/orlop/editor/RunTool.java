package orlop.editor;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Message;
import orlop.layout.Rect;
import orlop.scene.Scene;
import orlop.scene.TerminalSpot;

/**
 * Runs a cable by keys: first the terminal where it begins is chosen, then the one where it ends. Full stop and comma go
 * from one that can take it to the next, nearest first; arrows to the next terminal that way, whether it can or not, and
 * the status line says why not; letters and digits go to a component by its tag. Enter takes what is marked.
 */
final class RunTool implements Tool {
    private final SheetCanvas canvas;
    private final String of;
    private @Nullable TerminalSpot from;
    private @Nullable TerminalSpot at;
    private @Nullable TerminalGesture run;
    private String typed = "";
    private boolean chosen;

    /** @param of the component where it begins; "" for any */
    RunTool(SheetCanvas canvas, String of) {
        this.canvas = canvas;
        this.of = of;
        List<TerminalSpot> begins = begins();
        NaturalEnds ends = new NaturalEnds(canvas.session().state().drawing());
        List<TerminalSpot> free = begins.stream().filter(t -> !t.connected()).toList();
        Optional<TerminalSpot> first =
                free.stream().filter(t -> !ends.second(t.terminal())).findFirst();
        boolean plain = begins.size() == 1 || (free.size() == 1 && first.isPresent());
        first.or(() -> begins.stream().findFirst()).ifPresent(plain && !of.isEmpty() ? this::begin : this::mark);
    }

    /** The terminals at which a cable of this component, or of any, may begin or end; a bar counts once. */
    private List<TerminalSpot> all(Scene s) {
        TerminalSpot begun = from;
        List<TerminalSpot> spots = new ArrayList<>();
        for (TerminalSpot t : s.terminals()) {
            if (s.bars().stream()
                    .noneMatch(b -> b.component().equals(t.terminal().component()))) {
                spots.add(t);
            }
        }
        s.bars()
                .forEach(b -> spots.add(
                        begun == null
                                ? b.nearest(b.rect().centreX(), b.rect().centreY())
                                : b.nearest(begun.xMm(), begun.yMm())));
        return spots;
    }

    private List<TerminalSpot> all() {
        return canvas.scene().map(this::all).orElse(List.of());
    }

    private List<TerminalSpot> begins() {
        return all().stream()
                .filter(t -> of.isEmpty() || t.terminal().component().equals(of))
                .toList();
    }

    /** Those at which the cable may begin, or all others when it has begun. */
    private List<TerminalSpot> offered() {
        TerminalSpot begun = from;
        return begun == null ? begins() : others(all(), begun.terminal().component());
    }

    private static List<TerminalSpot> others(List<TerminalSpot> all, String than) {
        return all.stream().filter(t -> !t.terminal().component().equals(than)).toList();
    }

    private void begin(TerminalSpot t) {
        from = t;
        at = t;
        run = new CableGesture(canvas, t, spot(t));
        typed = "";
        NaturalEnds ends = new NaturalEnds(canvas.session().state().drawing());
        List<TerminalSpot> takers = offered().stream().filter(this::takes).toList();
        ends.nearest(t, takers).ifPresentOrElse(this::mark, () -> {
            canvas.hint(Texts.of("editor.hint.run-nowhere", name(t)));
            canvas.repaint();
        });
    }

    private boolean takes(TerminalSpot t) {
        TerminalGesture g = run;
        return g == null || g.refusal(t).isEmpty();
    }

    private Spot spot(TerminalSpot t) {
        return Spot.at(t.xMm(), t.yMm(), canvas.viewport());
    }

    @Override
    public boolean letters() {
        return true;
    }

    private static double distance(TerminalSpot a, TerminalSpot b) {
        return Math.hypot(a.xMm() - b.xMm(), a.yMm() - b.yMm());
    }

    private String name(TerminalSpot t) {
        return NaturalEnds.name(canvas.session().state().drawing(), t.terminal());
    }

    private void mark(TerminalSpot t) {
        at = t;
        canvas.view().reveal(Rect.of(t.xMm() - 5, t.yMm() - 5, 10, 10));
        TerminalGesture g = run;
        TerminalSpot begun = from;
        if (g == null || begun == null) {
            canvas.hint(Texts.of("editor.hint.run-from", name(t)));
        } else {
            Optional<Message> refusal = g.point(t, spot(t));
            canvas.hint(refusal.map(m -> Texts.of("editor.hint.run-refused", Texts.title(m)))
                    .orElseGet(() -> Texts.of("editor.hint.run-to", name(begun), name(t))));
        }
        canvas.repaint();
    }

    /** Goes on to the next terminal that can take it, nearest to the beginning first. */
    void next(int by) {
        typed = "";
        chosen = true;
        TerminalSpot begun = from;
        List<TerminalSpot> takers = offered().stream()
                .filter(this::takes)
                .sorted(Comparator.comparingDouble(t -> begun == null ? 0 : distance(begun, t)))
                .toList();
        if (!takers.isEmpty()) {
            int now = index(takers);
            mark(takers.get(now < 0 ? (by > 0 ? 0 : takers.size() - 1) : Math.floorMod(now + by, takers.size())));
        }
    }

    private int index(List<TerminalSpot> spots) {
        TerminalSpot now = at;
        for (int i = 0; now != null && i < spots.size(); i++) {
            if (spots.get(i).terminal().equals(now.terminal())) {
                return i;
            }
        }
        return -1;
    }

    /** Goes to the next terminal in this direction: what lies straight ahead comes before what lies aside. */
    void step(int dx, int dy) {
        typed = "";
        chosen = true;
        TerminalSpot now = at;
        if (now == null) {
            next(1);
            return;
        }
        Directions.next(now.xMm(), now.yMm(), dx, dy, offered(), TerminalSpot::xMm, TerminalSpot::yMm)
                .ifPresent(this::mark);
    }

    /**
     * A letter or digit of a tag: marks the first component whose tag begins with what has been typed so far. A tag of
     * another component than the one where the cable is to begin says where it is to end: it begins at the marked
     * terminal, or at the first other one from which it can go there.
     */
    void typed(char c) {
        String wanted = typed + Character.toUpperCase(c);
        if (!leads(wanted)) {
            leads(wanted.substring(wanted.length() - 1));
        }
    }

    private boolean leads(String wanted) {
        Optional<TerminalSpot> found = tagged(offered(), wanted);
        if (found.isEmpty() && run == null && !of.isEmpty()) {
            List<TerminalSpot> ends = others(all(), of);
            found = tagged(ends, wanted).flatMap(end -> begunTowards(ends, end, wanted));
        }
        found.ifPresent(t -> {
            mark(t);
            typed = wanted;
        });
        return found.isPresent();
    }

    /**
     * Begins at the terminal from which a cable would naturally go there, or at the one that has been chosen; where none
     * can go there, at the marked one, so that it is said why.
     *
     * @return where it is to end
     */
    private Optional<TerminalSpot> begunTowards(List<TerminalSpot> ends, TerminalSpot end, String wanted) {
        TerminalSpot marked = at;
        if (marked == null) {
            return Optional.empty();
        }
        begin(natural(chosen ? List.of(marked) : begins(), of(ends, end))
                .map(NaturalEnds.Pair::from)
                .orElse(marked));
        return tagged(offered(), wanted);
    }

    private static List<TerminalSpot> of(List<TerminalSpot> spots, TerminalSpot one) {
        String component = one.terminal().component();
        return spots.stream()
                .filter(t -> t.terminal().component().equals(component))
                .toList();
    }

    private Optional<NaturalEnds.Pair> natural(List<TerminalSpot> froms, List<TerminalSpot> tos) {
        return new NaturalEnds(canvas.session().state().drawing()).best(froms, tos);
    }

    /** The component whose tag begins so; of its terminals the one at which a cable from here would naturally end. */
    private Optional<TerminalSpot> tagged(List<TerminalSpot> among, String start) {
        TerminalSpot begun = from;
        Comparator<TerminalSpot> whole =
                Comparator.comparing(t -> !t.terminal().component().equalsIgnoreCase(start));
        Optional<TerminalSpot> found = among.stream()
                .filter(t -> t.terminal().component().toUpperCase(Locale.ROOT).startsWith(start))
                .min(whole.thenComparing(t -> !takes(t)).thenComparing(TerminalSpot::connected));
        return begun == null
                ? found
                : found.flatMap(t -> natural(List.of(begun), of(among, t))
                        .map(NaturalEnds.Pair::to)
                        .or(() -> found));
    }

    /**
     * Takes what is marked: where it begins, or else where it ends. What can't take it is not taken.
     *
     * @param direct whether the two are to be joined without a cable
     */
    void take(boolean direct) {
        TerminalSpot now = at;
        TerminalGesture g = run;
        if (now == null) {
            return;
        }
        if (g == null) {
            begin(now);
        } else if (takes(now)) {
            canvas.use(canvas.hand());
            canvas.hint(""); // before it is done: what is refused must stay readable
            g.join(now, direct);
        }
    }

    /** Whether there is anything at which it could begin. */
    boolean possible() {
        return at != null;
    }

    @Override
    public void pressed(Spot spot) {
        canvas.use(canvas.hand());
        canvas.hint("");
    }

    @Override
    public void dragged(Spot spot) {}

    @Override
    public void released(Spot spot) {}

    @Override
    public void moved(Spot spot) {}

    @Override
    public void backOut() {
        canvas.repaint();
    }

    @Override
    public void paint(Graphics2D g) {
        double px = canvas.viewport().mm(1);
        TerminalGesture gesture = run;
        TerminalSpot now = at;
        if (gesture != null) {
            gesture.paint(g);
        } else {
            begins().forEach(t -> Overlay.terminal(g, t, false, px));
        }
        if (now != null) {
            Overlay.terminal(g, now, takes(now), px);
        }
    }
}
