package orlop.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Drawing;
import orlop.study.working.Figure;
import orlop.study.working.ItemWorkings;
import orlop.study.working.Solved;
import orlop.study.working.Working;

/**
 * How the figures of a drawing came about. Holds all that was solved, so it is made when somebody asks and let go
 * afterwards. Not safe for several threads.
 */
public final class Workings {
    private final Study study;
    private final ItemWorkings items;
    private final List<Results> results;

    private Workings(Study study, Solved solved) {
        this.study = study;
        results = List.copyOf(study.byCondition().values());
        items = new ItemWorkings(solved, results.stream().map(Results::cables).toList());
    }

    /** Studies a drawing anew; arguments as of {@link Study#of(Drawing, StudyOptions, BooleanSupplier)}. */
    public static Workings of(Drawing drawing, StudyOptions options, BooleanSupplier stale) {
        Studying studying = new Studying(drawing, options, stale);
        Study study = studying.run();
        return new Workings(study, studying.solved());
    }

    /** What was worked out. */
    public Study study() {
        return study;
    }

    /**
     * One figure's workings, and in which condition they hold.
     *
     * @param condition its title; "" for what is the same in all
     * @param of one; of what guards a cable one for each device
     */
    public record Shown(String condition, List<Working> of) {
        public Shown {
            of = List.copyOf(of);
        }
    }

    /**
     * The workings of a cable or component, those figures that have any; nothing for what the drawing lacks.
     *
     * @param condition id of the condition; {@link Results#GOVERNING} or an unknown one for the worst of all: each figure
     *     is then shown in the first condition in which it is as bad as that
     */
    public Map<Figure, Shown> of(String condition, String item) {
        Map<Figure, Shown> found = new LinkedHashMap<>();
        Map<Integer, Map<Figure, List<Working>>> byCondition = new HashMap<>();
        for (Figure figure : Figure.values()) {
            for (int c : conditions(condition, item, figure)) {
                List<Working> here =
                        byCondition.computeIfAbsent(c, k -> items.of(k, item)).get(figure);
                if (here != null && !found.containsKey(figure)) {
                    found.put(
                            figure,
                            new Shown(isSameInAll(figure) ? "" : results.get(c).title(), here));
                }
            }
        }
        return found;
    }

    private static boolean isSameInAll(Figure figure) {
        return figure == Figure.AMPACITY || figure == Figure.LEAST_AREA || figure == Figure.PROTECTED_BY;
    }

    /** The conditions to look at, the best first. */
    private List<Integer> conditions(String condition, String item, Figure figure) {
        List<Integer> all = new ArrayList<>();
        for (int c = 0; c < results.size(); c++) {
            if (results.get(c).condition().equals(condition)) {
                return List.of(c);
            }
            all.add(c);
        }
        Object worst = value(study.governing(), item, figure);
        all.sort(Comparator.comparing(c -> !Objects.equals(value(results.get(c), item, figure), worst))); // stable
        return all;
    }

    private static @Nullable Object value(Results r, String item, Figure figure) {
        CableResult w = r.cables().get(item);
        ComponentResult c = r.components().get(item);
        if (w == null) {
            return c == null ? null : c.dropFromSourcePercent();
        }
        Function<CableResult, @Nullable Object> of = switch (figure) {
            case CURRENT -> CableResult::currentA;
            case AMPACITY -> CableResult::ampacityA;
            case CONDUCTOR -> CableResult::conductorC;
            case DROP -> CableResult::dropPercent;
            case DROP_FROM_SOURCE, DROP_TO_LOAD -> CableResult::dropFromSourcePercent;
            case FAULT_NEAR -> x -> x.faultFrom().maxA();
            case FAULT_FAR -> x -> x.faultTo().maxA();
            case FAULT_NEAR_LEAST -> x -> x.faultFrom().minA();
            case FAULT_FAR_LEAST -> x -> x.faultTo().minA();
            case LEAST_AREA -> CableResult::leastAreaMm2;
            case LOSS -> CableResult::lossW;
            case PROTECTED_BY -> x -> "";
        };
        return of.apply(w);
    }
}
