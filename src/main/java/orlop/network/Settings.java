package orlop.network;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Predicate;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.OperatingCondition;
import orlop.drawing.SwitchPositions;

/** How the switches stand and what is on. */
sealed interface Settings {
    /** Whether a two-way device passes current. */
    boolean closed(Component c);

    /** Whether a changeover joins this way, 1 to n, to its common terminal. */
    boolean way(Component c, int way);

    /** Whether a source, converter or load works. */
    boolean on(Component c);

    /** Whether an inverter/charger passes its input through, and so charges. */
    boolean passesThrough(Component c);

    /**
     * As a condition says.
     *
     * @param inputLive whether an inverter/charger has its AC input live
     */
    record In(OperatingCondition condition, Predicate<Component> inputLive) implements Settings {
        @Override
        public boolean closed(Component c) {
            return !SwitchPositions.in(condition, c).equals("open");
        }

        @Override
        public boolean way(Component c, int way) {
            return SwitchPositions.in(condition, c).equals(Integer.toString(way));
        }

        @Override
        public boolean on(Component c) {
            return condition.sourceOn(c.id()) && condition.load(c.id()).running();
        }

        @Override
        public boolean passesThrough(Component c) {
            return inputLive.test(c);
        }
    }

    /** Everything that can ever be. */
    final class Reach implements Settings {
        private final Map<String, Integer> timesOff = new HashMap<>();
        private final int conditions;

        Reach(Drawing drawing) {
            conditions = drawing.conditions().size();
            for (OperatingCondition condition : drawing.conditions().values()) {
                for (Map.Entry<String, String> e : condition.sources()) {
                    if (e.getValue().equals("off")) {
                        timesOff.merge(e.getKey(), 1, Integer::sum);
                    }
                }
            }
        }

        @Override
        public boolean closed(Component c) {
            return true;
        }

        @Override
        public boolean way(Component c, int way) {
            return true;
        }

        @Override
        public boolean on(Component c) {
            int off = timesOff.getOrDefault(c.id(), 0);
            return off == 0 || off < conditions;
        }

        @Override
        public boolean passesThrough(Component c) {
            return false;
        }
    }
}
