package orlop.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import orlop.drawing.Point;

/**
 * Finds a place for every text so that none lies on another, on a symbol or on a line.
 *
 * <p>Greedy in the order given; then texts that still lie on something are moved, or push others to places that are as
 * free; what is left stands apart, with a thin line to what it speaks of. The same input gives the same places.
 */
public final class Labeller {
    /** Least distance between a text and anything else. */
    public static final double GAP_MM = 0.5;

    private static final String OWNED = "\n"; // in no id
    private static final int SWEEPS = 4;
    private static final int PUSHES = 12;
    private static final double CONFLICT = 200;
    private static final double CONFLICT_PER_MM2 = 10;

    private final Rect area;
    private final RectIndex solids = new RectIndex();
    private final RectIndex texts = new RectIndex();
    private final Map<String, Label> labels = new LinkedHashMap<>();
    private final Map<String, Spot> chosen = new HashMap<>();
    private final Map<String, double[]> fixedCosts = new HashMap<>();
    private int solidCount;

    /** @param area within which all texts stand */
    public Labeller(Rect area) {
        this.area = area;
    }

    /** Something that no text may lie on. */
    public void solid(Rect r) {
        solids.put(OWNED + solidCount++, r);
    }

    /** A text that stands where it stands: nothing may lie on it, and no leader runs over it. */
    public void text(Rect r) {
        texts.put(OWNED + solidCount++, r);
    }

    /** A line of this owner that no text may lie on. */
    public void line(String owner, List<Point> points, double widthMm) {
        for (int i = 1; i < points.size(); i++) {
            Rect leg = Rect.around(points.get(i - 1), points.get(i)).grown(widthMm / 2);
            solids.put(owner + OWNED + solidCount++, leg);
        }
    }

    /** Whether this would lie on nothing but lines of this owner. */
    public boolean free(Rect r, String owner) {
        return area.contains(r) && solids.overlapping(r).stream().allMatch(e -> e.id().startsWith(owner + OWNED));
    }

    /** A place for each label, by id, in the order given. To be called once. */
    public Map<String, Label.Put> place(List<Label> wanted) {
        for (Label l : wanted) {
            labels.put(l.id(), l);
            fixedCosts.put(l.id(), costs(l));
        }
        wanted.stream().filter(Label::fixed).forEach(l -> choose(l, l.spots().get(0)));
        wanted.stream().filter(l -> !l.fixed()).forEach(l -> choose(l, best(l)));
        int sweeps = 0;
        while (sweeps < SWEEPS && sweep()) {
            sweeps++;
        }
        Map<String, Label.Put> out = new LinkedHashMap<>();
        for (Label l : wanted) {
            Spot s = chosen(l);
            boolean apart = !l.fixed() && conflicts(l, s) > 0;
            Optional<Label.Put> put = apart ? new FarSpots(this, area).find(l) : Optional.empty();
            put.ifPresent(p -> texts.put(l.id(), p.rect()));
            out.put(l.id(), put.orElseGet(() -> new Label.Put(s.rect(), s.side(), null)));
        }
        return out;
    }

    private Spot chosen(Label l) {
        return Optional.ofNullable(chosen.get(l.id())).orElseThrow();
    }

    private void choose(Label l, Spot s) {
        chosen.put(l.id(), s);
        texts.put(l.id(), s.rect());
    }

    private boolean sweep() {
        boolean moved = false;
        for (Label l : labels.values()) {
            if (!l.fixed() && conflicts(l, chosen(l)) > 0) {
                moved |= improve(l);
            }
        }
        return moved;
    }

    private boolean improve(Label l) {
        Spot before = chosen(l);
        Spot better = best(l);
        if (conflicts(l, better) == 0) {
            choose(l, better);
            return true;
        }
        int tried = 0;
        for (Spot s : l.spots()) {
            if (tried < PUSHES && fixedConflicts(s.rect()) == 0) {
                tried++;
                if (push(l, s)) {
                    return true;
                }
            }
        }
        choose(l, better);
        return !better.equals(before);
    }

    /** Takes a spot if every text that lies there can go to one where it lies on nothing. */
    private boolean push(Label l, Spot s) {
        List<Label> others = new ArrayList<>();
        for (RectIndex.Entry e : texts.overlapping(s.rect().grown(GAP_MM))) {
            if (e.id().startsWith(OWNED)) {
                return false;
            }
            if (!e.id().equals(l.id())) {
                others.add(label(e.id()));
            }
        }
        if (others.size() > 2 || others.stream().anyMatch(Label::fixed)) {
            return false;
        }
        Map<Label, Spot> old = new LinkedHashMap<>();
        old.put(l, chosen(l));
        choose(l, s);
        for (Label o : others) {
            old.put(o, chosen(o));
            Spot alternative = best(o);
            if (conflicts(o, alternative) > 0) {
                old.forEach(this::choose);
                return false;
            }
            choose(o, alternative);
        }
        return true;
    }

    private Label label(String id) {
        return Optional.ofNullable(labels.get(id)).orElseThrow();
    }

    private Spot best(Label l) {
        double[] costs = Optional.ofNullable(fixedCosts.get(l.id())).orElseThrow();
        Spot best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < costs.length; i++) {
            Spot s = l.spots().get(i);
            if (costs[i] < least) {
                double cost = costs[i] + textCost(l, s.rect());
                if (best == null || cost < least) {
                    best = s;
                    least = cost;
                }
            }
        }
        return best == null ? l.spots().get(0) : best;
    }

    private double[] costs(Label l) {
        return l.spots().stream()
                .mapToDouble(s -> s.cost() + solidCost(s.rect()))
                .toArray();
    }

    private double solidCost(Rect r) {
        double cost = area.contains(r) ? 0 : 5 * CONFLICT;
        Rect room = r.grown(GAP_MM);
        for (RectIndex.Entry e : solids.overlapping(room)) {
            cost += CONFLICT + CONFLICT_PER_MM2 * room.sharedArea(e.rect());
        }
        return cost;
    }

    private double textCost(Label l, Rect r) {
        double cost = 0;
        Rect room = r.grown(GAP_MM);
        for (RectIndex.Entry e : texts.overlapping(room)) {
            if (!e.id().equals(l.id())) {
                cost += CONFLICT + CONFLICT_PER_MM2 * room.sharedArea(e.rect());
            }
        }
        return cost;
    }

    private int fixedConflicts(Rect r) {
        return solids.overlapping(r.grown(GAP_MM)).size() + (area.contains(r) ? 0 : 1);
    }

    private int conflicts(Label l, Spot s) {
        return conflicts(l, s.rect());
    }

    /** On how many things a text would lie here. */
    int conflicts(Label l, Rect r) {
        int n = fixedConflicts(r);
        for (RectIndex.Entry e : texts.overlapping(r.grown(GAP_MM))) {
            n += e.id().equals(l.id()) ? 0 : 1;
        }
        return n;
    }

    /** Whether a leader would run over a text other than its own, or through a symbol or bar that it does not lead to. */
    boolean overOthers(Label l, Label.Leader leader) {
        Rect box = Rect.around(new Point(leader.x1(), leader.y1()), new Point(leader.x2(), leader.y2()));
        for (RectIndex.Entry e : texts.overlapping(box.grown(GAP_MM))) {
            if (!e.id().equals(l.id()) && crosses(leader, e.rect().grown(0.2))) {
                return true;
            }
        }
        for (RectIndex.Entry e : solids.overlapping(box)) {
            boolean itsEnd = e.rect().grown(GAP_MM).contains(leader.x2(), leader.y2());
            if (e.id().startsWith(OWNED) && !itsEnd && crosses(leader, e.rect())) {
                return true;
            }
        }
        return false;
    }

    /** Whether a leader runs through a rectangle: Liang and Barsky's clipping (1984). */
    static boolean crosses(Label.Leader m, Rect r) {
        double[] p = {m.x1() - m.x2(), m.x2() - m.x1(), m.y1() - m.y2(), m.y2() - m.y1()};
        double[] q = {m.x1() - r.minX(), r.maxX() - m.x1(), m.y1() - r.minY(), r.maxY() - m.y1()};
        double from = 0;
        double to = 1;
        for (int i = 0; i < 4; i++) {
            if (p[i] == 0 && q[i] < 0) {
                return false;
            } else if (p[i] < 0) {
                from = Math.max(from, q[i] / p[i]);
            } else if (p[i] > 0) {
                to = Math.min(to, q[i] / p[i]);
            }
        }
        return from <= to;
    }
}
