package orlop.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.study.ComponentResult;
import orlop.study.Results;
import orlop.study.TerminalResult;

/**
 * What a system's batteries, sources and loads do in one operating condition.
 *
 * @param system id of the system
 * @param batteryA into the batteries, negative while they give; null where none is live
 * @param loadW what all loads of the system take; null where none is live
 */
public record Balance(
        String system, @Nullable Double batteryA, @Nullable Double loadW) {

    /** The balances of all systems that have live batteries or loads, in the order of the drawing. */
    public static List<Balance> of(Drawing d, Results results) {
        Map<String, Double> battery = new LinkedHashMap<>();
        Map<String, Double> load = new LinkedHashMap<>();
        for (ComponentResult c : results.components().values()) {
            if (c.terminals().isEmpty()) {
                continue;
            }
            TerminalResult t = c.terminals().get(0);
            boolean source = c.kind() == Kind.BATTERY;
            boolean consumer = c.kind().group() == orlop.drawing.Group.LOADS;
            if (source && t.currentA() != null) {
                battery.merge(t.system(), -t.currentA(), Double::sum);
            }
            if (consumer && t.powerW() != null) {
                load.merge(t.system(), t.powerW(), Double::sum);
            }
        }
        List<Balance> all = new ArrayList<>();
        for (ElectricalSystem s : d.systems().values()) {
            if (battery.containsKey(s.id()) || load.containsKey(s.id())) {
                all.add(new Balance(s.id(), battery.get(s.id()), load.get(s.id())));
            }
        }
        return all;
    }
}
