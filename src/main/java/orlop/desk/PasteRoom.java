package orlop.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Note;
import orlop.drawing.Point;
import orlop.layout.Rect;
import orlop.scene.NoteItems;
import orlop.scene.Role;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

/** Where on a sheet what is pasted lies over nothing that is there already. */
public final class PasteRoom {
    /** So much is looked at; who pastes more puts it in order anyway. */
    private static final int MOST_THINGS = 80;

    private static final double STEP_MM = 4 * Arranging.GRID_MM;
    private static final double HALF_MM = 7.5;
    /** Its texts mostly stand to the right of a symbol. */
    private static final double TEXT_MM = 20;

    private static final double LINE_MM = 1;

    private static final Set<Role> THINGS =
            EnumSet.of(Role.COMPONENT, Role.BAR, Role.LABEL, Role.NOTE, Role.LEGEND, Role.TITLE_BLOCK, Role.CAUTION);

    private final List<Rect> pasted = new ArrayList<>();
    private final List<Rect> there = new ArrayList<>();
    private final Rect paper;

    private PasteRoom(Clip clip, Scene scene) {
        paper = scene.drawable().grown(-HALF_MM); // what joins them runs round them
        clip.part().components().values().forEach(c -> pasted.add(box(c)));
        for (Note n : clip.part().notes().values()) {
            pasted.add(NoteItems.rect(n));
        }
        scene.items().stream()
                .filter(i -> THINGS.contains(i.role()))
                .map(SceneItem::bounds)
                .forEach(there::add);
        for (Route r : scene.routes().values()) {
            for (int k = 1; k < r.points().size(); k++) {
                there.add(Rect.around(r.points().get(k - 1), r.points().get(k)).grown(LINE_MM));
            }
        }
    }

    /**
     * How far a clip is to be moved, the nearest to what is wished.
     *
     * @param wish the move that is wished, taken as it is where there is room; on the grid
     * @return empty if there is no room on the paper, or the clip is too large to look
     */
    public static Optional<Point> near(Clip clip, Scene scene, Point wish) {
        int size = clip.part().components().size() + clip.part().notes().size();
        return size == 0 || size > MOST_THINGS ? Optional.empty() : new PasteRoom(clip, scene).nearest(wish);
    }

    private Optional<Point> nearest(Point wish) {
        List<Point> moves = new ArrayList<>();
        int across = (int) (paper.width() / STEP_MM);
        int down = (int) (paper.height() / STEP_MM);
        for (int i = -across; i <= across; i++) {
            for (int k = -down; k <= down; k++) {
                moves.add(wish.plus(i * STEP_MM, k * STEP_MM));
            }
        }
        moves.sort(Comparator.comparingDouble(p -> Math.hypot(p.xMm() - wish.xMm(), p.yMm() - wish.yMm())));
        return moves.stream().filter(this::free).findFirst();
    }

    private boolean free(Point move) {
        for (Rect r : pasted) {
            Rect box = r.moved(move.xMm(), move.yMm());
            if (!paper.contains(box) || there.stream().anyMatch(box::overlaps)) {
                return false;
            }
        }
        return true;
    }

    private static Rect box(Component c) {
        Point p = c.place().at();
        double length = c.particulars() instanceof Distribution.Bar b ? b.drawnLengthMm() : 0;
        boolean lying = c.place().rotationDegree() % 180 == 0;
        double x = Math.max(HALF_MM, lying ? length / 2 : 0);
        double y = Math.max(HALF_MM, lying ? 0 : length / 2);
        double text = length > 0 ? 0 : TEXT_MM - HALF_MM;
        return new Rect(p.xMm() - x, p.yMm() - y, p.xMm() + x + text, p.yMm() + y);
    }
}
