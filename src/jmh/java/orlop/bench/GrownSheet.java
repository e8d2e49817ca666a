package orlop.bench;

import java.util.ArrayList;
import java.util.List;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Extras;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.Place;
import orlop.drawing.Sheet;
import orlop.drawing.SheetSize;
import orlop.drawing.TerminalRef;
import orlop.layout.Connection;

/** One sheet of any number of components: bars, each with fuses and loads below it in columns, one in five aside. */
final class GrownSheet {
    private static final int COLUMNS = 16;
    private static final double PITCH_MM = 40;
    private static final double BAND_MM = 75;
    private static final List<String> SYSTEM = List.of("24");

    private GrownSheet() {}

    /** So many components or a few more. They may reach beyond the paper: no paper is large enough for a thousand. */
    static Drawing of(int components) {
        Drawing d = Drawing.empty("Grown")
                .with(new Sheet("1", "1", "Grown", SheetSize.A1, "", "", "", "", Extras.NONE))
                .with(ElectricalSystem.of("24", Nature.DC, 24));
        int count = 0;
        for (int band = 0; count < components; band++) {
            double y = 30 + BAND_MM * band;
            String bar = "B" + band;
            Place middle = Place.at("1", 40 + PITCH_MM * (COLUMNS - 1) / 2, y);
            d = d.with(Component.of(bar, new Distribution.Busbar(null, PITCH_MM * COLUMNS), middle, SYSTEM));
            count++;
            for (int i = 0; i < COLUMNS && count < components; i++) {
                double x = 40 + PITCH_MM * i;
                String fuse = "F" + band + "_" + i;
                String load = "E" + band + "_" + i;
                double aside = i % 5 == 0 ? 7.5 : 0;
                d = d.with(Component.of(fuse, Kind.FUSE, Place.at("1", x, y + 17.5), SYSTEM))
                        .with(Component.of(load, Kind.LIGHTING, Place.at("1", x + aside, y + 50), SYSTEM))
                        .with(cable("W" + count, bar + ".t" + i, fuse + ".1"))
                        .with(cable("V" + count, fuse + ".2", load + ".1"));
                count += 2;
            }
        }
        return d;
    }

    private static Cable cable(String id, String from, String to) {
        return Cable.of(id, TerminalRef.parse(from, "from"), TerminalRef.parse(to, "to"))
                .withLengthM(5.0)
                .withAreaMm2(2.5);
    }

    /** The last load moved by one step of the grid, to and fro. */
    static Drawing moved(Drawing d, double dx) {
        Component last = d.components().stream().reduce((a, b) -> b).orElseThrow();
        return d.with(last.withPlace(last.place().withAt(last.place().at().plus(dx, 0))));
    }

    static List<Connection> connections(Drawing d) {
        List<Connection> all = new ArrayList<>();
        d.cables().values().forEach(c -> all.add(new Connection(c.id(), c.from(), c.to(), c.bends())));
        return all;
    }
}
