package orlop.scene;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Kind;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.drawing.RefitStatus;
import orlop.layout.Heading;
import orlop.layout.Junctions;
import orlop.layout.Label;
import orlop.layout.LineNames;
import orlop.layout.ManyEnds;
import orlop.layout.Placed;
import orlop.layout.Port;
import orlop.layout.Rect;
import orlop.layout.Way;

/** The items of what is drawn: cables, links, bars, symbols and their labels. */
final class SheetItems {
    private static final double DOT_MM = 0.9;
    private static final double TAP_MM = 1.1;
    private static final double LEADER_DOT_MM = 0.5;
    private static final double THIN_MM = 0.25;
    private static final double NUMBER_MM = 1.5;

    /** How far from its line the signs of a cable may reach, and look. */
    private static final double SIGNS_MM = 5;

    private final SheetView view;
    private final SheetComposer.Composed composed;
    private final List<FoundPlace> found;
    private final ItemMaker items;
    private final LineSigns signs;
    private final Joints joints;
    private final Map<String, List<LineCutter.Cut>> proposed = new HashMap<>();

    SheetItems(
            SheetView view, SheetComposer.Composed composed, Joints joints, List<FoundPlace> found, ItemMaker items) {
        this.view = view;
        this.composed = composed;
        this.joints = joints;
        this.found = found;
        this.items = items;
        this.signs = new LineSigns(composed);
        for (FoundPlace f : found) {
            FoundPlace.Proposal p = f.proposal();
            if (p != null) {
                List<LineCutter.Cut> cuts = proposed.computeIfAbsent(p.cable(), k -> new ArrayList<>());
                if (cuts.stream().noneMatch(c -> overlap(c, p.cut()))) {
                    cuts.add(p.cut());
                }
            }
        }
    }

    void draw() {
        for (Way w : view.ways().values()) {
            if (!view.isCable(w)) {
                link(w);
            }
        }
        for (Way w : view.ways().values()) {
            if (view.isCable(w)) {
                cable(w);
            }
        }
        for (Placed p : view.placed().values()) {
            if (p.bar() != null) {
                bar(p);
            }
        }
        for (Placed p : view.placed().values()) {
            if (p.bar() == null) {
                symbol(p);
            }
        }
        ProposalItems.draw(items, view, found, composed);
        for (Placed p : view.placed().values()) {
            label(p.id(), MadeLabels.Kind.COMPONENT);
        }
        for (Way w : view.ways().values()) {
            if (view.isCable(w)) {
                label(w.connection().id(), MadeLabels.Kind.CABLE);
            }
        }
    }

    private void link(Way w) {
        List<Mark> marks = new ArrayList<>();
        String id = w.connection().id();
        boolean dead = view.deadComponent(w.connection().from().component())
                || view.deadComponent(w.connection().to().component());
        Ink ink = dead ? Ink.DEAD : Ink.INK;
        for (List<Point> piece : LineCutter.cut(w.points(), sharedCuts(w))) {
            marks.add(new Mark.Line(piece, SheetComposer.LINK_MM, Mark.Dash.SOLID, false, ink));
        }
        dotsOf(marks, w, ink);
        String title = view.words()
                .text(Message.of(
                        "scene.link",
                        w.connection().from().toString(),
                        w.connection().to().toString()));
        items.add(Role.LINK, id, title, around(w.points()), marks, Map.of());
    }

    private void cable(Way w) {
        String id = w.connection().id();
        CableText text = composed.cable(id);
        LineNames.Gap gap = composed.names().get(id);
        Ink ink = view.lineInk(w);
        List<LineCutter.Cut> proposals = proposed.getOrDefault(id, List.of());
        Rect around = around(w.points());
        From from = From.of(
                w,
                view.cable(w),
                ink,
                gap,
                proposals,
                joints.shared(w),
                joints.dots(w),
                view.lineName(w),
                text.content());
        boolean unchanged = composed.unchanged(around.grown(SIGNS_MM));
        items.add(
                Role.CABLE,
                id,
                from,
                unchanged,
                () -> new ItemMaker.Drawn(text.words(), around, cableMarks(w, text, gap, ink, proposals)),
                new OnDemand(text::data));
    }

    private List<Mark> cableMarks(
            Way w, CableText text, LineNames.@Nullable Gap gap, Ink ink, List<LineCutter.Cut> proposals) {
        List<LineCutter.Cut> cuts = sharedCuts(w);
        boolean named = gap != null && proposals.stream().noneMatch(c -> overlap(c, cut(w, gap)));
        if (gap != null && named) {
            cuts.add(cut(w, gap));
        }
        cuts.addAll(proposals);
        List<Mark> marks = new ArrayList<>();
        for (List<Point> piece : LineCutter.cut(w.points(), cuts)) {
            marks.add(new Mark.Line(piece, SheetComposer.CABLE_MM, Mark.Dash.SOLID, false, ink));
        }
        if (gap != null && named) {
            Rect r = gap.rect();
            marks.add(SystemName.text(view.lineName(w), r.centreX(), r.centreY(), ink));
        }
        dotsOf(marks, w, ink);
        marks.addAll(signs.of(w, cuts, text.conductorCount(), text.removed(), ink));
        return marks;
    }

    /** What another line draws at a common terminal. */
    private List<LineCutter.Cut> sharedCuts(Way w) {
        List<LineCutter.Cut> cuts = new ArrayList<>();
        Junctions.Shared s = joints.shared(w);
        if (s != null && s.startMm() > 0) {
            cuts.add(new LineCutter.Cut(0, 0, s.startMm()));
        }
        if (s != null && s.endMm() > 0) {
            int leg = w.points().size() - 2;
            double length = LineCutter.length(w.points().get(leg), w.points().get(leg + 1));
            cuts.add(new LineCutter.Cut(leg, length - s.endMm(), length));
        }
        return cuts;
    }

    private static boolean overlap(LineCutter.Cut a, LineCutter.Cut b) {
        return a.leg() == b.leg() && a.from() < b.to() && b.from() < a.to();
    }

    private static LineCutter.Cut cut(Way w, LineNames.Gap gap) {
        Point a = w.points().get(gap.leg());
        Rect r = gap.rect();
        boolean lying = a.yMm() == w.points().get(gap.leg() + 1).yMm();
        double first = lying ? Math.abs(r.minX() - a.xMm()) : Math.abs(r.minY() - a.yMm());
        double last = lying ? Math.abs(r.maxX() - a.xMm()) : Math.abs(r.maxY() - a.yMm());
        return new LineCutter.Cut(gap.leg(), Math.min(first, last), Math.max(first, last));
    }

    private void dotsOf(List<Mark> marks, Way way, Ink ink) {
        for (Point p : joints.dots(way)) {
            marks.add(new Mark.Disc(p.xMm(), p.yMm(), DOT_MM, ink, null, 0));
        }
    }

    private void bar(Placed p) {
        Rect bar = p.bar();
        if (bar == null) {
            return;
        }
        ComponentText text = composed.component(p.id());
        boolean dead = view.deadComponent(p.id());
        Ink ink = dead ? Ink.DEAD : view.ink(p.component().systems().get(0));
        From from = From.of(p, ink, joints.ends(p), text.content());
        items.add(
                Role.BAR,
                p.id(),
                from,
                true,
                () -> new ItemMaker.Drawn(text.words(), p.ink(), barMarks(p, bar, ink, dead ? Ink.DEAD : Ink.INK)),
                new OnDemand(text::data));
    }

    private List<Mark> barMarks(Placed p, Rect bar, Ink ink, Ink box) {
        List<Mark> marks = new ArrayList<>();
        if (!bar.equals(p.ink())) {
            marks.add(new Mark.Box(p.ink(), null, box, THIN_MM, Mark.Dash.SOLID));
        }
        marks.add(new Mark.Box(bar, ink, null, 0, Mark.Dash.SOLID));
        for (Port q : joints.ends(p)) {
            marks.add(new Mark.Disc(q.x(), q.y(), TAP_MM, ink, null, 0));
        }
        removed(marks, p);
        return marks;
    }

    private void symbol(Placed p) {
        Component c = p.component();
        ComponentText text = composed.component(p.id());
        Ink pen = c.kind() == Kind.PROTECTIVE_EARTH_BAR
                ? Ink.PROTECTIVE
                : view.deadComponent(p.id()) ? Ink.DEAD : Ink.INK;
        Ink ink = view.ink(c.systems().get(0));
        From from = From.of(p, pen, ink, joints.ends(p), text.inside(), text.content());
        items.add(
                Role.COMPONENT,
                p.id(),
                from,
                true,
                () -> new ItemMaker.Drawn(text.words(), p.ink(), symbolMarks(p, text, pen, ink)),
                new OnDemand(text::data));
    }

    private List<Mark> symbolMarks(Placed p, ComponentText text, Ink pen, Ink ink) {
        Component c = p.component();
        List<Mark> marks = new ArrayList<>();
        if (p.symbol().isEmpty()) {
            manyEnds(marks, p, pen);
        } else {
            marks.add(new Mark.SymbolAt(
                    p.symbol(),
                    c.place().at().xMm(),
                    c.place().at().yMm(),
                    c.place().rotationDegree(),
                    c.place().mirrored(),
                    pen));
        }
        joints.ends(p).forEach(q -> reach(marks, p.ink(), q, pen));
        if (!text.inside().isEmpty()) {
            marks.add(SystemName.text(
                    text.inside(), p.ink().centreX() - 0.8, p.ink().centreY(), ink));
        }
        removed(marks, p);
        return marks;
    }

    /** What is to be removed is crossed out, as on drawings of rebuilding (ISO 7518, from memory). */
    private static void removed(List<Mark> marks, Placed p) {
        if (p.component().refit() == RefitStatus.TO_BE_REMOVED) {
            Rect r = p.ink();
            marks.add(Mark.Line.solid(THIN_MM, Ink.INK, new Point(r.minX(), r.minY()), new Point(r.maxX(), r.maxY())));
            marks.add(Mark.Line.solid(THIN_MM, Ink.INK, new Point(r.minX(), r.maxY()), new Point(r.maxX(), r.minY())));
        }
    }

    /** A component with more terminals than any symbol has; one of a kind without strokes is a box. */
    private void manyEnds(List<Mark> marks, Placed p, Ink ink) {
        Component c = p.component();
        String state = SwitchText.of(c.id(), c.particulars(), view.condition()).actual();
        List<List<Point>> strokes = ManyEnds.strokes(c, state);
        if (strokes.isEmpty()) {
            marks.add(new Mark.Box(p.ink(), null, ink, THIN_MM, Mark.Dash.SOLID));
        }
        strokes.forEach(s -> marks.add(new Mark.Line(s, THIN_MM, Mark.Dash.SOLID, false, ink)));
        for (Port q : p.ports()) {
            boolean lying = q.heading().horizontal();
            double x = q.x() - NUMBER_MM * (lying ? q.heading().dx() : -1);
            double y = q.y() - NUMBER_MM * (lying ? 1 : q.heading().dy());
            marks.add(SystemName.text(q.terminal().terminal(), x, y, ink));
        }
    }

    /** A terminal that the symbol doesn't place stands clear of it: a thin line leads there. */
    private static void reach(List<Mark> marks, Rect ink, Port q, Ink pen) {
        double x = Math.max(ink.minX(), Math.min(ink.maxX(), q.x()));
        double y = Math.max(ink.minY(), Math.min(ink.maxY(), q.y()));
        Heading back = q.heading().opposite();
        boolean clear = Math.abs(x - q.x()) + Math.abs(y - q.y()) > 0.3;
        boolean behind = (x - q.x()) * back.dx() + (y - q.y()) * back.dy() > 0;
        if (clear && behind) {
            marks.add(Mark.Line.solid(THIN_MM, pen, new Point(x, y), new Point(q.x(), q.y())));
        }
    }

    private void label(String subject, MadeLabels.Kind kind) {
        SheetComposer.PutLabel label = composed.label(kind, subject);
        if (label == null || label.block() == null) {
            return;
        }
        Label.Put put = label.put();
        TextBlock block = label.block();
        boolean line = view.ways().containsKey(subject);
        items.add(
                Role.LABEL,
                subject,
                From.of(put, block, line),
                true,
                () -> new ItemMaker.Drawn(
                        view.words().text(Message.of("scene.label", block.words())),
                        put.rect(),
                        labelMarks(put, block, line)),
                Map.of());
    }

    private static List<Mark> labelMarks(Label.Put put, TextBlock block, boolean line) {
        List<Mark> marks = new ArrayList<>();
        leader(marks, put, 0.18, Ink.QUIET);
        Label.Leader m = put.leader();
        if (m != null && line) {
            marks.add(new Mark.Disc(m.x2(), m.y2(), LEADER_DOT_MM, Ink.QUIET, null, 0)); // which line is meant
        }
        marks.addAll(block.marks(put.rect(), put.side()));
        return marks;
    }

    static void leader(List<Mark> marks, Label.Put put, double width, Ink ink) {
        Label.Leader l = put.leader();
        if (l != null) {
            marks.add(new Mark.Line(l.points(), width, Mark.Dash.SOLID, false, ink));
        }
    }

    private static Rect around(List<Point> points) {
        Rect r = Rect.around(points.get(0), points.get(0));
        for (Point p : points) {
            r = r.union(Rect.around(p, p));
        }
        return r;
    }
}
