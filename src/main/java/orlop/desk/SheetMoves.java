package orlop.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Extras;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.Locked;
import orlop.drawing.Message;
import orlop.drawing.Note;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.drawing.Sheet;
import orlop.drawing.Soundness;
import orlop.drawing.Tags;
import orlop.drawing.TerminalRef;

/**
 * Moves items to another sheet and mends what would be torn: a cable whose ends come to lie on two sheets keeps its tag and
 * its length and ends at a pair of sheet links; a pair whose halves come to lie on one sheet goes, and the cable runs
 * through again. The network stays the same in either case.
 */
public final class SheetMoves {
    /** How far a half stands from the terminal that it stands for, and one half from the next. */
    private static final double OFF_MM = 20;

    private static final double APART_MM = 10;
    private static final double RIM_MM = 20;
    private static final double GRID_MM = 2.5;

    private final String target;
    private Drawing d;
    private int halves;

    private SheetMoves(Drawing d, String target) {
        this.d = d;
        this.target = target;
    }

    /**
     * Puts components and notes on another sheet, at the places that they have on theirs.
     *
     * @param ids components and notes; cables follow their components by themselves and are left out
     */
    public static Edit to(Set<String> ids, String sheet) {
        Set<String> wanted = Set.copyOf(ids);
        return Edit.of(Message.of("desk.sheet.move", sheet), before -> {
            SheetEdits.require(before, sheet);
            Drawing after = new SheetMoves(before, sheet).moved(wanted);
            for (Soundness.Flaw f : Soundness.flaws(after)) {
                if (!Soundness.flaws(before).contains(f)) {
                    throw new Edit.Refusal(f.message());
                }
            }
            return after;
        });
    }

    /** The same onto a sheet that is made for it, behind the last one: one step. */
    public static Edit toNew(Set<String> ids, Sheet fresh) {
        Edit move = to(ids, fresh.id());
        return Edit.of(
                Message.of("desk.sheet.move", fresh.id()),
                before -> move.applyTo(SheetEdits.add(fresh).applyTo(before)));
    }

    private Drawing moved(Set<String> wanted) {
        Set<String> moved = new LinkedHashSet<>(wanted);
        moved.removeIf(id -> !d.components().contains(id)
                || d.components().require(id).place().sheet().equals(target));
        halvesFollow(moved);
        Point shift = shift(moved);
        moved.forEach(id -> put(id, shift));
        for (Note n : List.copyOf(d.notes().stream().toList())) {
            if (wanted.contains(n.id())) {
                Locked.refuse(d, n.id());
                Note on = new Note(n.id(), target, n.at(), n.text(), n.heightMm(), n.extras());
                d = d.withNotes(d.notes().with(n.id(), on));
            }
        }
        straighten(moved);
        closePairs(moved);
        partLines(moved);
        return d;
    }

    /** A half whose one line leads to a component that goes is only there for that component: it goes too. */
    private void halvesFollow(Set<String> moved) {
        for (Component c : d.components().values()) {
            if (c.kind() == Kind.SHEET_LINK && !c.place().sheet().equals(target)) {
                List<Line> lines = Line.at(d, end(c.id()));
                if (lines.size() == 1 && moved.contains(lines.get(0).far().component())) {
                    moved.add(c.id());
                }
            }
        }
    }

    private void put(String id, Point shift) {
        Component c = d.components().require(id);
        Locked.refuse(d, id);
        Place p = c.place();
        Point at = p.at().plus(shift.xMm(), shift.yMm());
        d = d.with(c.withPlace(new Place(target, at, p.rotationDegree(), p.mirrored(), p.labelAt())));
    }

    /** How far all have to be moved to lie on the paper, which may be smaller than the one they come from. */
    private Point shift(Set<String> moved) {
        Sheet paper = d.sheets().require(target);
        double right = 0;
        double low = 0;
        for (String id : moved) {
            Point at = d.components().require(id).place().at();
            right = Math.max(right, at.xMm());
            low = Math.max(low, at.yMm());
        }
        return new Point(
                grid(Math.min(0, paper.size().widthMm() - RIM_MM - right)),
                grid(Math.min(0, paper.size().heightMm() - RIM_MM - low)));
    }

    private static double grid(double mm) {
        return Math.floor(mm / GRID_MM) * GRID_MM;
    }

    /** Bends that were set by hand belong to a line between two places that both have stayed. */
    private void straighten(Set<String> moved) {
        for (Cable w : List.copyOf(d.cables().stream().toList())) {
            boolean from = moved.contains(w.from().component());
            boolean to = moved.contains(w.to().component());
            if (from != to && !w.bends().isEmpty()) {
                d = d.with(w.withBends(List.of()));
            }
        }
    }

    /** Takes away each pair of sheet links that the move has made needless. */
    private void closePairs(Set<String> moved) {
        for (Component half : List.copyOf(d.components().stream().toList())) {
            Component now = d.components().get(half.id());
            Component mate = now == null ? null : SheetEdits.mate(d, now).orElse(null);
            if (now == null || mate == null || !(moved.contains(now.id()) || moved.contains(mate.id()))) {
                continue;
            }
            List<Line> here = Line.at(d, end(now.id()));
            List<Line> there = Line.at(d, end(mate.id()));
            boolean oneSheet = now.place().sheet().equals(mate.place().sheet());
            if (oneSheet && here.size() == 1 && there.size() == 1) {
                close(now.id(), mate.id(), here.get(0), there.get(0));
            }
        }
    }

    private void close(String half, String mate, Line a, Line b) {
        if (a.cable() != null && b.cable() != null) {
            return; // two tags, two lengths: the pair stays between them
        }
        Line kept = a.cable() != null ? a : b;
        Line other = a.cable() != null ? b : a;
        Cable w = kept.cable();
        d = d.withLinks(d.links().without(other.id()));
        if (w == null) {
            d = d.withLinks(d.links().without(kept.id()));
            String id = Link.idOf(kept.far(), other.far());
            double lengthM = kept.lengthM() + other.lengthM();
            d = d.hasItem(id) ? d : d.with(new Link(id, kept.far(), other.far(), lengthM, null, Extras.NONE));
        } else {
            boolean forward = w.from().equals(kept.far());
            Cable whole = forward ? w.withEnds(kept.far(), other.far()) : w.withEnds(other.far(), kept.far());
            d = d.with(whole.withBends(List.of()));
        }
        d = Edits.delete(Set.of(half, mate)).applyTo(d);
    }

    /** Puts a pair of sheet links into each line whose ends lie on two sheets now. */
    private void partLines(Set<String> moved) {
        for (Cable w : List.copyOf(d.cables().stream().toList())) {
            if (torn(w.from(), w.to(), moved)) {
                TerminalRef[] pair = pair(w.from(), w.to(), moved);
                d = d.with(w.withEnds(w.from(), pair[0]).withBends(List.of()));
                d = d.with(Link.of(pair[1], w.to()));
            }
        }
        for (Link l : List.copyOf(d.links().stream().toList())) {
            if (torn(l.from(), l.to(), moved)) {
                TerminalRef[] pair = pair(l.from(), l.to(), moved);
                d = d.withLinks(d.links().without(l.id()));
                d = d.with(l.withEnds(l.from(), pair[0]));
                d = d.with(Link.of(pair[1], l.to()));
            }
        }
    }

    private boolean torn(TerminalRef from, TerminalRef to, Set<String> moved) {
        boolean touched = moved.contains(from.component()) || moved.contains(to.component());
        return touched && !sheet(from).equals(sheet(to));
    }

    /** The terminals of a new pair: the first on the sheet of {@code from}, the second on that of {@code to}. */
    private TerminalRef[] pair(TerminalRef from, TerminalRef to, Set<String> moved) {
        Component a = d.components().require(from.component());
        Component b = d.components().require(to.component());
        String system = a.systemOf(from.terminal());
        boolean aMoved = moved.contains(a.id());
        Point gone = (aMoved ? a : b).place().at();
        double aside = APART_MM * halves++;
        Point left = gone.plus(aside, 0);
        Point arrived = gone.plus(aside, gone.yMm() > 2 * OFF_MM ? -OFF_MM : OFF_MM);
        String first = Tags.next(d, Kind.SHEET_LINK);
        d = d.with(half(first, "", a.place().sheet(), aMoved ? arrived : left, false, system, b.id()));
        String second = Tags.next(d, Kind.SHEET_LINK);
        d = d.with(half(second, first, b.place().sheet(), aMoved ? left : arrived, true, system, a.id()));
        d = d.with(d.components().require(first).withParticulars(new Distribution.SheetLink(second)));
        return new TerminalRef[] {end(first), end(second)};
    }

    private static Component half(
            String tag, String mate, String sheet, Point at, boolean in, String system, String to) {
        Place p = new Place(sheet, at, 0, in, null);
        return Component.of(tag, new Distribution.SheetLink(mate), p, List.of(system))
                .withName(to);
    }

    private String sheet(TerminalRef t) {
        return d.components().require(t.component()).place().sheet();
    }

    private static TerminalRef end(String half) {
        return new TerminalRef(half, "1");
    }

    /** A cable or link at a terminal, and where it leads. */
    private record Line(String id, @Nullable Cable cable, TerminalRef far, double lengthM) {
        static List<Line> at(Drawing d, TerminalRef t) {
            List<Line> lines = new ArrayList<>();
            for (Cable w : d.cables().values()) {
                if (w.from().equals(t) || w.to().equals(t)) {
                    lines.add(new Line(w.id(), w, w.from().equals(t) ? w.to() : w.from(), 0));
                }
            }
            for (Link l : d.links().values()) {
                if (l.from().equals(t) || l.to().equals(t)) {
                    lines.add(new Line(l.id(), null, l.from().equals(t) ? l.to() : l.from(), l.lengthM()));
                }
            }
            return lines;
        }
    }
}
