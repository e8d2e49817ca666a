package orlop.desk;

import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.Particulars;
import orlop.drawing.Poles;

/** Which poles there are in a system: a device of alternating current has no positive one. */
final class PolesFit {
    private static final String POLES = "poles";

    private PolesFit() {}

    /** The poles in which a device of such a system can stand, all of them if the system isn't known. */
    static List<Poles> of(@Nullable Nature n) {
        if (n == null) {
            return List.of(Poles.values());
        }
        return switch (n) {
            case DC, PV -> List.of(Poles.POSITIVE, Poles.NEGATIVE, Poles.BOTH);
            case AC1 -> List.of(Poles.L, Poles.L_N);
            case AC3 -> List.of(Poles.L3, Poles.L);
            case AC3N -> List.of(Poles.L3, Poles.L3_N, Poles.L, Poles.L_N);
        };
    }

    /** The nature of the system in which a component stands; null if it isn't in the drawing, or is a pair of them. */
    static @Nullable Nature nature(Drawing d, Component c) {
        ElectricalSystem s =
                c.kind().spansSystems() ? null : d.systems().get(c.systems().get(0));
        return s == null ? null : s.nature();
    }

    /**
     * This component, standing in poles that its system has: as many of them as before. What changes over between sources
     * of alternating current opens their neutrals as well, so that each keeps its own tie to earth: common practice, no
     * source.
     */
    static Component fitted(Drawing d, Component c) {
        Record p = (Record) c.particulars();
        List<Poles> fit = of(nature(d, c));
        // the poles of a generator are a number
        boolean stands = RecordParts.of(p.getClass()).stream()
                .anyMatch(part -> part.name().equals(POLES) && part.type() == Poles.class);
        Poles now = stands ? (Poles) RecordParts.get(p, POLES) : null;
        if (!stands || fit.contains(now)) {
            return c;
        }
        return c.withParticulars((Particulars) RecordParts.with(p, POLES, alike(now, fit, c.kind())));
    }

    /** One live pole for one, and with the return where it was with it. */
    private static Poles alike(@Nullable Poles was, List<Poles> fit, Kind kind) {
        boolean all = was == Poles.BOTH || was == Poles.L_N || was == Poles.L3_N;
        boolean neutrals = kind == Kind.CHANGEOVER_SWITCH && !fit.contains(Poles.POSITIVE);
        return all || neutrals ? whole(fit) : fit.get(0);
    }

    /** All conductors but the protective one. */
    private static Poles whole(List<Poles> fit) {
        return List.of(Poles.BOTH, Poles.L3_N, Poles.L3, Poles.L_N).stream()
                .filter(fit::contains)
                .findFirst()
                .orElse(fit.get(0));
    }
}
