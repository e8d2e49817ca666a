package orlop.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Link;
import orlop.drawing.TerminalRef;

/** How long bars are drawn: as long as they are said to be, or longer where more hangs on one side than has room there. */
final class BarLengths {
    private final Drawing drawing;
    private final String sheet;
    private final Map<String, List<TerminalRef>> ends = new HashMap<>();
    private final Map<String, int[]> taps = new HashMap<>();

    BarLengths(Drawing drawing, String sheet) {
        this.drawing = drawing;
        this.sheet = sheet;
        for (Cable c : drawing.cables().values()) {
            count(c.from(), c.to());
            count(c.to(), c.from());
        }
        for (Link l : drawing.links().values()) {
            count(l.from(), l.to());
            count(l.to(), l.from());
        }
    }

    private void count(TerminalRef end, TerminalRef other) {
        Component bar = drawing.components().get(end.component());
        Component c = drawing.components().get(other.component());
        boolean here = bar != null
                && c != null
                && isBar(bar)
                && bar.place().sheet().equals(sheet)
                && c.place().sheet().equals(sheet);
        if (here && bar != null && c != null) {
            ends.computeIfAbsent(bar.id(), k -> new ArrayList<>()).add(other);
            boolean lying = bar.place().rotationDegree() % 180 == 0;
            double off = lying
                    ? c.place().at().yMm() - bar.place().at().yMm()
                    : c.place().at().xMm() - bar.place().at().xMm();
            taps.computeIfAbsent(bar.id(), k -> new int[2])[off < 0 ? 0 : 1]++;
        }
    }

    private static boolean isBar(Component c) {
        return c.particulars() instanceof Distribution.Bar;
    }

    /** Room for every tap at the common distance, in whole steps of it, so that the ends stay on the grid. */
    double of(Component bar, double saidMm) {
        int[] n = taps.getOrDefault(bar.id(), new int[2]);
        double least = (Math.max(n[0], n[1]) - 1) * Taps.WIDE_MM + Taps.PITCH_MM;
        return least <= saidMm ? saidMm : Math.ceil(least / Taps.WIDE_MM) * Taps.WIDE_MM;
    }

    /** What hangs on a bar of this sheet. */
    List<TerminalRef> ends(String bar) {
        return ends.getOrDefault(bar, List.of());
    }
}
