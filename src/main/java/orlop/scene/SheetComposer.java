package orlop.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Note;
import orlop.drawing.Point;
import orlop.layout.BoxSpots;
import orlop.layout.Label;
import orlop.layout.Labeller;
import orlop.layout.Labelling;
import orlop.layout.LineNames;
import orlop.layout.LineSpots;
import orlop.layout.Placed;
import orlop.layout.Placing;
import orlop.layout.Rect;
import orlop.layout.Side;
import orlop.layout.Spot;
import orlop.layout.Spots;
import orlop.layout.Way;

/** Finds the places of all texts of one sheet: names in lines, labels, markers. */
final class SheetComposer {
    static final double CABLE_MM = 0.7;
    static final double LINK_MM = 0.25;

    /** How much worse an annotation in short lines is. */
    private static final double NARROW = 7;

    private final SheetView view;
    private final Placing placing;
    private final List<FoundPlace> found;
    private final Labeller labeller;
    private final @Nullable Kept before;
    private final MadeLabels made;
    private final Map<String, CableText> cables = new HashMap<>();
    private final Map<String, ComponentText> components = new HashMap<>();
    private final Map<String, LineNames.Gap> names = new HashMap<>();

    /** @param before how this sheet was composed the last time; null if it was not */
    SheetComposer(SheetView view, SheetFrame frame, Placing placing, List<FoundPlace> found, @Nullable Kept before) {
        this.view = view;
        this.placing = placing;
        this.found = found;
        this.before = before;
        this.made = MadeLabels.after(before == null ? null : before.labels);
        this.labeller = new Labeller(frame.drawable().grown(-1.5));
        frame.centringMarks().forEach(labeller::text);
    }

    /** What serves when the sheet is composed the next time. */
    record Kept(Labelling labelling, MadeLabels labels) {}

    /**
     * What was found.
     *
     * @param kept the places, how they were found and what is put there
     * @param moved where the sheet is no longer as it was when it was composed the last time; null for everywhere
     * @param names by cable, the gap for its system's name
     * @param labeller knows what lies where
     * @param cables by tag
     * @param components by tag
     */
    record Composed(
            Kept kept,
            @Nullable List<Rect> moved,
            Map<String, LineNames.Gap> names,
            Labeller labeller,
            Map<String, CableText> cables,
            Map<String, ComponentText> components) {
        Map<String, Label.Put> places() {
            return kept.labelling.places();
        }

        CableText cable(String tag) {
            return Objects.requireNonNull(cables.get(tag));
        }

        ComponentText component(String tag) {
            return Objects.requireNonNull(components.get(tag));
        }

        /** Whether nothing near this has changed since the sheet was composed the last time. */
        boolean unchanged(Rect r) {
            return moved != null && moved.stream().noneMatch(r::touches);
        }

        /** A label with its place and the block that is set there; null if there is none. */
        @Nullable
        PutLabel label(MadeLabels.Kind kind, String subject) {
            MadeLabels.Made made = kept.labels.find(kind, subject);
            Label.Put put = made == null ? null : places().get(made.label().id());
            return made == null || put == null
                    ? null
                    : new PutLabel(put, made.block(put.rect().height()));
        }
    }

    /**
     * A label at its place.
     *
     * @param block which of its blocks was taken shows in the height of the place; null if nothing is set there
     */
    record PutLabel(Label.Put put, @Nullable TextBlock block) {}

    Composed compose() {
        solids();
        lineNames();
        List<Label> labels = new ArrayList<>();
        List<Placed> symbols = new ArrayList<>();
        for (Placed p : view.placed().values()) {
            if (p.bar() == null) {
                symbols.add(p);
            } else {
                labels.add(component(p));
            }
        }
        symbols.forEach(p -> labels.add(component(p)));
        found.forEach(f -> finding(labels, f));
        // Those with least room beside their line choose first.
        record Far(Way way, double lengthMm) {}
        List<Far> ways = new ArrayList<>();
        view.ways().values().forEach(w -> ways.add(new Far(w, length(w))));
        ways.sort(Comparator.comparingDouble(Far::lengthMm));
        ways.forEach(w -> cable(labels, w.way));
        Labelling labelling = labeller.place(labels, before == null ? null : before.labelling);
        return new Composed(new Kept(labelling, made), labeller.moved(), names, labeller, cables, components);
    }

    private static double length(Way w) {
        double sum = 0;
        for (int i = 1; i < w.points().size(); i++) {
            sum += LineCutter.length(w.points().get(i - 1), w.points().get(i));
        }
        return sum;
    }

    private void solids() {
        for (Placed p : view.placed().values()) {
            if (p.bar() == null) {
                labeller.solid(p.ink());
            } else {
                labeller.bar(p.ink());
            }
        }
        for (Way w : view.ways().values()) {
            labeller.line(w.connection().id(), w.points(), view.isCable(w) ? CABLE_MM : LINK_MM);
        }
        for (FoundPlace f : found) {
            if (f.proposal() != null) {
                labeller.solid(f.target());
            }
        }
        for (Note n : view.drawing().notes().values()) {
            if (n.sheet().equals(view.request().sheet())) {
                labeller.text(NoteItems.rect(n));
            }
        }
    }

    private void lineNames() {
        for (Way w : view.ways().values()) {
            if (view.isCable(w)) {
                String name = view.lineName(w);
                LineNames.find(w.connection().id(), w.points(), SystemName.width(name), SystemName.height(), labeller)
                        .ifPresent(g -> {
                            names.put(w.connection().id(), g);
                            labeller.text(g.rect());
                        });
            }
        }
    }

    private Label component(Placed p) {
        ComponentText text = new ComponentText(view, p.component());
        components.put(p.id(), text);
        From from = From.of(p.symbol(), p.ink(), p.bar(), p.component().place(), text.content());
        return made.of(MadeLabels.Kind.COMPONENT, p.id(), from, id -> component(id, p, text))
                .label();
    }

    private MadeLabels.Made component(String id, Placed p, ComponentText text) {
        TextBlock block = text.block();
        Rect bar = p.bar();
        double w = block.width();
        double h = block.height();
        List<TextBlock> all = new ArrayList<>(List.of(block));
        Spots spots = bar != null ? BoxSpots.alongBar(p.ink(), w, h) : BoxSpots.around(p.ink(), placing.sides(p), w, h);
        if (bar == null && w > ComponentText.NARROW_MM) {
            TextBlock narrow = text.narrow();
            if (narrow.height() > h) {
                all.add(narrow);
                Spots others = BoxSpots.around(p.ink(), placing.sides(p), narrow.width(), narrow.height());
                spots = new Spots.Joined(List.of(spots, new Spots.Worse(others, 2 * NARROW)));
            }
        }
        Point dragged = p.component().place().labelAt();
        Point at = p.component().place().at();
        boolean fixed = dragged != null;
        if (dragged != null) {
            double x = at.xMm() + dragged.xMm();
            double y = at.yMm() + dragged.yMm();
            spots = one(new Spot(Rect.of(x, y, w, h), dragged.xMm() < 0 ? Side.LEFT : Side.RIGHT, 0));
        }
        return new MadeLabels.Made(new Label(id, w, h, p.ink(), spots, fixed), all);
    }

    private void cable(List<Label> labels, Way way) {
        Cable cable = view.cable(way);
        if (cable == null) {
            return;
        }
        CableText text = new CableText(view, cable, view.system(way));
        cables.put(cable.id(), text);
        LineNames.Gap gap = names.get(way.connection().id());
        Rect name = gap == null ? null : gap.rect();
        Point dragged = cable.labelAt();
        From from = From.of(way.points(), text.content(), name, dragged);
        labels.add(made.of(MadeLabels.Kind.CABLE, cable.id(), from, id -> cable(id, way, text, name, dragged))
                .label());
    }

    private static MadeLabels.Made cable(
            String id, Way way, CableText text, @Nullable Rect name, @Nullable Point dragged) {
        TextBlock block = text.block();
        double w = block.width();
        double h = block.height();
        List<TextBlock> narrow = List.of(text.narrow(2), text.narrow(1));
        Spots spots = dragged == null
                ? spots(way, block, narrow, name)
                : one(new Spot(Rect.of(dragged.xMm(), dragged.yMm(), w, h), Side.RIGHT, 0));
        Label label = new Label(id, w, h, legs(way.points()), spots, dragged != null);
        return new MadeLabels.Made(label, List.of(block, narrow.get(0), narrow.get(1)));
    }

    private static Spots one(Spot spot) {
        return new Spots.Given(List.of(spot));
    }

    private static Spots spots(Way way, TextBlock wide, List<TextBlock> narrow, @Nullable Rect name) {
        List<Spots> parts = new ArrayList<>();
        parts.add(LineSpots.of(way.points(), wide.width(), wide.height(), name));
        Set<Double> heights = new HashSet<>(Set.of(wide.height()));
        double worse = NARROW;
        for (TextBlock block : narrow) {
            if (heights.add(block.height())) {
                parts.add(new Spots.Worse(LineSpots.of(way.points(), block.width(), block.height(), name), worse));
            }
            worse += NARROW;
        }
        return new Spots.Joined(parts);
    }

    /** The legs without their ends, the longest first, as rectangles without width or height. */
    private static List<Rect> legs(List<Point> points) {
        List<Rect> legs = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            legs.add(Rect.around(points.get(i - 1), points.get(i)).grown(-1.5));
        }
        legs.sort(Comparator.comparingDouble((Rect r) -> r.width() + r.height()).reversed());
        return legs;
    }

    private void finding(List<Label> labels, FoundPlace f) {
        FoundPlace.Proposal proposal = f.proposal();
        if (proposal != null) {
            TextBlock block = ProposalItems.rating(view, f);
            From from = From.of(f.target(), block, proposal.standing());
            labels.add(
                    made.of(MadeLabels.Kind.PROPOSAL, f.key(), from, id -> proposed(id, f, block, proposal.standing()))
                            .label());
        }
        labels.add(made.of(MadeLabels.Kind.MARKER, f.key(), From.of(f.target()), id -> marker(id, f))
                .label());
    }

    private static MadeLabels.Made proposed(String id, FoundPlace f, TextBlock block, boolean standing) {
        List<Side> sides = standing ? List.of(Side.RIGHT, Side.LEFT) : List.of(Side.ABOVE, Side.BELOW);
        Spots spots = BoxSpots.around(f.target(), sides, block.width(), block.height());
        Label label = new Label(id, block.width(), block.height(), f.target(), spots, false);
        return new MadeLabels.Made(label, List.of(block));
    }

    private static MadeLabels.Made marker(String id, FoundPlace f) {
        List<Side> sides = List.of(Side.LEFT, Side.RIGHT, Side.ABOVE, Side.BELOW);
        Spots near = BoxSpots.around(f.target().grown(0.3), sides, Marker.WIDTH_MM, Marker.HEIGHT_MM);
        Spots far = BoxSpots.around(f.target().grown(5), sides, Marker.WIDTH_MM, Marker.HEIGHT_MM);
        Spots spots = new Spots.Joined(List.of(near, new Spots.Worse(far, 10)));
        Label label = new Label(id, Marker.WIDTH_MM, Marker.HEIGHT_MM, f.target(), spots, false);
        return new MadeLabels.Made(label, List.of());
    }
}
