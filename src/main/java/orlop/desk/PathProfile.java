package orlop.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Link;
import orlop.drawing.TerminalRef;
import orlop.study.CableResult;
import orlop.study.ComponentResult;
import orlop.study.Results;
import orlop.study.Study;
import orlop.study.TerminalResult;

/**
 * The voltage along the feeding path of a load, from its source to it.
 *
 * @param load its tag
 * @param condition title of the operating condition that the figures belong to
 * @param stations from the source to the load, without gaps
 * @param nominalV of the load's system, line to neutral in three-phase systems; 0 where the path passes a converter of
 *     another voltage and no limit can be drawn
 * @param dropPercent from the source to the load at its rated current; null where it is not known
 * @param limitPercent what is permitted; null where nothing is
 */
public record PathProfile(
        String load,
        String condition,
        List<Station> stations,
        double nominalV,
        @Nullable Double dropPercent,
        @Nullable Double limitPercent) {
    /** A source whose voltage is further from the nominal one stands behind a converter. */
    private static final double LIKE = 0.3;

    private static final double SQRT3 = Math.sqrt(3);

    public PathProfile {
        stations = List.copyOf(stations);
    }

    /**
     * One cable, link or component on the path.
     *
     * @param item its tag
     * @param fromM length of the path to its near end
     * @param toM length of the path to its far end
     * @param fromV voltage at its near end
     * @param toV voltage at its far end
     * @param cable whether it is a cable
     */
    public record Station(String item, double fromM, double toM, double fromV, double toV, boolean cable) {}

    /** Length of the whole path. */
    public double lengthM() {
        return stations.isEmpty() ? 0 : stations.get(stations.size() - 1).toM();
    }

    /**
     * The voltage below which the load has more drop than is permitted; NaN where nothing is, or the source has another
     * voltage. Drop counts from where the voltage is highest: on the way up to there, current flows towards the source,
     * which is charged.
     */
    public double limitV() {
        double source = stations.isEmpty() ? 0 : stations.get(0).toV();
        if (limitPercent == null || Math.abs(source - nominalV) >= LIKE * nominalV) {
            return Double.NaN;
        }
        double highest = stations.stream()
                .mapToDouble(s -> Math.max(s.fromV(), s.toV()))
                .max()
                .orElse(source);
        return highest - limitPercent / 100 * nominalV;
    }

    /** The profile of what is selected, if that is fed over a path: of a load, or of the far end of a cable. */
    public static Optional<PathProfile> of(SessionState s) {
        Review r = s.review();
        Optional<String> id = s.soleSelection();
        return r == null || id.isEmpty() ? Optional.empty() : of(r.study(), s.condition(), id.get());
    }

    /**
     * The profile of one component.
     *
     * @param condition id of a condition; of the governing one, the condition in which the drop is greatest
     */
    public static Optional<PathProfile> of(Study study, String condition, String component) {
        Results results = condition.equals(Results.GOVERNING) ? worst(study, component) : study.of(condition);
        ComponentResult load = results.components().get(component);
        if (load == null || load.feedingPath().size() < 2) {
            return Optional.empty();
        }
        List<Station> stations = new Walk(study.drawing(), results).along(load.feedingPath());
        return stations.isEmpty()
                ? Optional.empty()
                : Optional.of(new PathProfile(
                        component,
                        results.title(),
                        stations,
                        nominalV(study.drawing(), component),
                        load.dropFromSourcePercent(),
                        load.dropLimitPercent()));
    }

    private static double nominalV(Drawing d, String component) {
        return d.components()
                .find(component)
                .flatMap(c -> d.systems().find(c.systems().get(0)))
                .map(PathProfile::phaseV)
                .orElse(0.0);
    }

    private static double phaseV(ElectricalSystem s) {
        return s.nature().isThreePhase() ? s.nominalV() / SQRT3 : s.nominalV();
    }

    private static Results worst(Study study, String component) {
        Results worst = study.of(Results.GOVERNING);
        double most = Double.NEGATIVE_INFINITY;
        for (Results r : study.byCondition().values()) {
            ComponentResult c = r.components().get(component);
            Double drop = c == null || c.feedingPath().size() < 2 ? null : c.dropFromSourcePercent();
            double here = drop == null ? -1 : drop;
            if (c != null && c.feedingPath().size() >= 2 && here > most) {
                most = here;
                worst = r;
            }
        }
        return worst;
    }

    /** Goes along a path, from terminal to terminal. */
    private static final class Walk {
        private final Drawing drawing;
        private final Results results;
        private final List<Station> stations = new ArrayList<>();
        private double atM;
        private double atV = Double.NaN;

        Walk(Drawing drawing, Results results) {
            this.drawing = drawing;
            this.results = results;
        }

        List<Station> along(List<String> path) {
            String before = "";
            for (int i = 0; i < path.size(); i++) {
                String tag = path.get(i);
                CableResult w = results.cables().get(tag);
                if (w != null) {
                    boolean forward = w.from().component().equals(before);
                    run(tag, forward ? w.from() : w.to(), forward ? w.to() : w.from(), w.lengthM());
                } else {
                    link(before, tag);
                    before = tag;
                    component(tag, i + 1 < path.size() ? results.cables().get(path.get(i + 1)) : null);
                }
            }
            stations.removeIf(s -> Double.isNaN(s.fromV()) || Double.isNaN(s.toV()));
            return stations;
        }

        private void run(String tag, TerminalRef near, TerminalRef far, double lengthM) {
            double from = voltage(near);
            double to = voltage(far);
            stations.add(new Station(tag, atM, atM + lengthM, from, to, true));
            atM += lengthM;
            atV = to;
        }

        /** Two components one after the other are joined by a link: it has a length and no drop. */
        private void link(String before, String tag) {
            for (Link l : drawing.links().values()) {
                boolean joins = (l.from().component().equals(before)
                                && l.to().component().equals(tag))
                        || (l.to().component().equals(before)
                                && l.from().component().equals(tag));
                if (joins) {
                    atM += l.lengthM();
                    return;
                }
            }
        }

        private void component(String tag, @Nullable CableResult next) {
            double out = next == null ? atV : exit(tag, next);
            if (next == null && Double.isNaN(atV)) {
                out = own(tag); // a source with a device bolted to it
            }
            if (Double.isNaN(atV)) {
                atV = out;
            }
            stations.add(new Station(tag, atM, atM, atV, out, false));
            atV = out;
        }

        private double own(String tag) {
            ComponentResult c = results.components().get(tag);
            return c == null
                    ? Double.NaN
                    : c.terminals().stream()
                            .map(t -> voltage(new TerminalRef(tag, t.id())))
                            .filter(v -> !Double.isNaN(v))
                            .findFirst()
                            .orElse(Double.NaN);
        }

        private double exit(String tag, CableResult next) {
            return voltage(next.from().component().equals(tag) ? next.from() : next.to());
        }

        private double voltage(TerminalRef t) {
            ComponentResult c = results.components().get(t.component());
            if (c != null) {
                for (TerminalResult r : c.terminals()) {
                    if (r.id().equals(t.terminal()) && r.voltageV() != null) {
                        return r.voltageV();
                    }
                }
            }
            return Double.NaN;
        }
    }
}
