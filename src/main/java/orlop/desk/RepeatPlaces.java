package orlop.desk;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.TerminalRef;
import orlop.layout.Rect;
import orlop.scene.Role;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

/**
 * Where copies of circuits have room: at those multiples of a step at which nothing else stands. Circuits of an upright
 * bar are repeated down, all else to the right.
 *
 * <p>Texts of cables count for nothing: they are laid out anew, and find room where lines are not too near to one another.
 */
public final class RepeatPlaces {
    /** Lines so far apart leave room for the texts of cables between them. */
    private static final double ROOMY_MM = 20;

    /** A step that somebody has typed may bring lines as near as this to those of other things. */
    private static final double TIGHT_MM = 5;

    /** Between lines that run from side to side a text is two lines high. */
    private static final double LEVEL_MM = 7.5;

    private static final double LEAST_STEP_MM = 25;
    private static final double MOST_STEP_MM = 100;
    private static final double GRID_MM = 2.5;
    private static final double GAP_MM = 1;

    private static final Set<Role> THINGS =
            EnumSet.of(Role.COMPONENT, Role.BAR, Role.LABEL, Role.NOTE, Role.LEGEND, Role.TITLE_BLOCK, Role.CAUTION);

    private final Drawing drawing;
    private final Set<String> ids;
    private final Set<String> copied = new HashSet<>();
    private final Set<String> tapped = new HashSet<>();
    private final List<Rect> moving = new ArrayList<>();
    private final List<Rect> movingLines = new ArrayList<>();
    private final List<Rect> others = new ArrayList<>();
    private final List<Rect> otherLines = new ArrayList<>();
    private final Rect paper;
    private final boolean down;

    /**
     * From each place to the next.
     *
     * @param acrossMm to the right
     * @param downMm downwards
     */
    public record Step(double acrossMm, double downMm) {}

    /** @param ids what is to be repeated, as in {@link Repeats#edit} */
    public RepeatPlaces(Drawing d, Scene scene, Set<String> ids) {
        this.drawing = d;
        this.ids = ids;
        paper = scene.drawable();
        scene.routes().values().forEach(this::lines);
        scene.items().stream().filter(i -> THINGS.contains(i.role())).forEach(this::thing);
        down = scene.items().stream()
                .anyMatch(i -> i.role() == Role.BAR
                        && tapped.contains(i.subject())
                        && i.bounds().height() > i.bounds().width());
    }

    private void lines(Route r) {
        boolean from = ids.contains(r.from().component());
        boolean to = ids.contains(r.to().component());
        boolean along = (from || bar(r.from())) && (to || bar(r.to())) && (from || to);
        if (along) {
            copied.add(r.id());
            tapped.add(from ? r.to().component() : r.from().component());
        }
        for (int k = 1; k < r.points().size(); k++) {
            (along ? movingLines : otherLines)
                    .add(Rect.around(r.points().get(k - 1), r.points().get(k)));
        }
    }

    private void thing(SceneItem i) {
        boolean cable = drawing.cables().contains(i.subject());
        boolean mine = ids.contains(i.subject());
        if (mine && !cable) {
            moving.add(i.bounds().grown(GAP_MM));
        } else if (!cable && !tapped.contains(i.subject())) { // a bar grows with its taps, and its text makes room
            others.add(i.bounds());
        }
    }

    private boolean bar(TerminalRef end) {
        Component c = drawing.components().get(end.component());
        return c != null && c.kind().isOnePiece();
    }

    /**
     * The step at which so many copies come to their end soonest, with room for their texts; empty if nothing of what is to
     * be repeated stands on this scene, or there is no room on the paper.
     *
     * @param copies 1 or more
     */
    public Optional<Step> offered(int copies) {
        double best = Double.POSITIVE_INFINITY;
        Step offered = null;
        for (double mm = LEAST_STEP_MM; !moving.isEmpty() && mm <= MOST_STEP_MM; mm += GRID_MM) {
            Step step = down ? new Step(0, mm) : new Step(mm, 0);
            if (free(step, 1, moving, movingLines, ROOMY_MM)) {
                int last = places(step, copies, ROOMY_MM).get(copies - 1);
                if (last * mm < best && onPaper(step, last)) {
                    best = last * mm;
                    offered = step;
                }
            }
        }
        return Optional.ofNullable(offered);
    }

    /**
     * At which multiples of a step copies are put: the first at which nothing else stands.
     *
     * @param step not none
     * @param copies 1 or more
     * @param typed whether somebody has typed it, and knows how near things may be
     */
    public List<Integer> places(Step step, int copies, boolean typed) {
        return places(step, copies, typed ? TIGHT_MM : ROOMY_MM);
    }

    private List<Integer> places(Step step, int copies, double roomMm) {
        List<Integer> places = new ArrayList<>();
        for (int n = 1; places.size() < copies; n++) {
            if (free(step, n, others, otherLines, roomMm)) { // somewhere beyond the last thing at least
                places.add(n);
            }
        }
        return places;
    }

    private boolean free(Step s, int n, List<Rect> things, List<Rect> lines, double roomMm) {
        for (Rect r : moving) {
            Rect there = r.moved(n * s.acrossMm(), n * s.downMm());
            if (things.stream().anyMatch(there::overlaps) || lines.stream().anyMatch(there::touches)) {
                return false;
            }
        }
        for (Rect r : movingLines) {
            Rect there = r.moved(n * s.acrossMm(), n * s.downMm());
            Rect thick = there.grown(GAP_MM);
            if (things.stream().anyMatch(thick::overlaps)
                    || lines.stream().anyMatch(l -> beside(there, l, roomMm - GRID_MM / 2))) {
                return false;
            }
        }
        return true;
    }

    /** Whether two lines run too near to one another; they may cross. */
    private static boolean beside(Rect a, Rect b, double sideMm) {
        boolean upright = a.width() < a.height();
        return upright == b.width() < b.height()
                && a.grown(upright ? sideMm : 0, upright ? 0 : Math.min(sideMm, LEVEL_MM))
                        .touches(b);
    }

    private boolean onPaper(Step s, int n) {
        return moving.stream().allMatch(r -> paper.contains(r.moved(n * s.acrossMm(), n * s.downMm())));
    }
}
