package orlop.desk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;

/**
 * The systems of a clip in the drawing into which it is put. Where its short name means something else there (12 V here,
 * 230 V there), nothing may quietly change its voltage: it joins the system that is like its own, or brings its own under
 * another name.
 */
final class ForeignSystems {
    private final Map<String, String> names = new HashMap<>();
    private Drawing drawing;

    ForeignSystems(Drawing part, Drawing into) {
        drawing = into;
        for (ElectricalSystem s : part.systems().values()) {
            names.put(s.id(), nameOf(s));
        }
    }

    /** The drawing into which it is put, with the systems that were not there. */
    Drawing drawing() {
        return drawing;
    }

    /** What these systems of the clip are called in the drawing. */
    List<String> called(List<String> systems) {
        return systems.stream().map(s -> names.getOrDefault(s, s)).toList();
    }

    private String nameOf(ElectricalSystem s) {
        ElectricalSystem there = drawing.systems().get(s.id());
        if (there != null && alike(there, s)) {
            return s.id();
        }
        if (there == null) {
            drawing = drawing.with(s);
            return s.id();
        }
        for (ElectricalSystem other : drawing.systems().values()) {
            if (alike(other, s)) {
                return other.id();
            }
        }
        int n = 2;
        while (drawing.systems().contains(s.id() + "-" + n)) {
            n++;
        }
        ElectricalSystem renamed = RecordParts.with(s, "id", s.id() + "-" + n);
        drawing = drawing.with(renamed);
        return renamed.id();
    }

    private static boolean alike(ElectricalSystem a, ElectricalSystem b) {
        return a.nature() == b.nature() && a.nominalV() == b.nominalV() && a.frequencyHz() == b.frequencyHz();
    }
}
