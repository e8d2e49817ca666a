package orlop.editor;

import java.util.List;
import orlop.desk.RecordParts;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Particulars;
import orlop.drawing.Phase;
import orlop.drawing.Place;
import orlop.drawing.Poles;
import orlop.drawing.Protection;
import orlop.drawing.Sheet;
import orlop.drawing.SheetSize;
import orlop.drawing.TerminalRef;

/**
 * One sheet of any number of components: a battery, and bars, each with fuses and loads below it in columns. It may reach
 * beyond the paper: no paper is large enough for a thousand.
 */
final class GrownBoat {
    private static final int COLUMNS = 16;
    private static final double PITCH_MM = 40;
    private static final double BAND_MM = 75;
    private static final List<String> SYSTEM = List.of("24");

    private static final Particulars FUSE = new Protection.Fuse("gg", 10.0, 50.0, 500.0, null, Poles.POSITIVE);

    private GrownBoat() {}

    static Drawing of(int components) {
        Drawing d = Drawing.empty("Grown")
                .with(RecordParts.with(Sheet.of("1", "Grown"), "size", SheetSize.A1))
                .with(ElectricalSystem.of("24", Nature.DC, 24))
                .with(OperatingCondition.asDrawn("c", "All"))
                .with(Component.of("GB1", Kind.BATTERY, Place.at("1", 25, 45), SYSTEM));
        int count = 1;
        String above = "GB1.1";
        for (int band = 0; count < components; band++) {
            double y = 30 + BAND_MM * band;
            String bar = "WC" + band;
            Place middle = Place.at("1", 55 + PITCH_MM * (COLUMNS - 1) / 2, y);
            d = d.with(Component.of(bar, new Distribution.Busbar(null, PITCH_MM * COLUMNS), middle, SYSTEM))
                    .with(cable("F" + band, above, bar + ".a", 95));
            above = bar + ".z";
            count++;
            for (int i = 0; i < COLUMNS && count < components; i++) {
                String fuse = "FC" + band + "_" + i;
                String load = "E" + band + "_" + i;
                double x = 55 + PITCH_MM * i;
                double aside = i % 5 == 0 ? 7.5 : 0;
                var lamp = new Consumer.Lighting(20.0, 1, 2, false, Phase.ALL, false);
                d = d.with(Component.of(fuse, FUSE, Place.at("1", x, y + 17.5), SYSTEM))
                        .with(Component.of(load, lamp, Place.at("1", x + aside, y + 50), SYSTEM))
                        .with(cable("W" + count, bar + ".t" + i, fuse + ".1", 2.5))
                        .with(cable("V" + count, fuse + ".2", load + ".1", 2.5));
                count += 2;
            }
        }
        return d;
    }

    private static Cable cable(String id, String from, String to, double areaMm2) {
        return Cable.of(id, TerminalRef.parse(from, "from"), TerminalRef.parse(to, "to"))
                .withLengthM(3.0)
                .withAreaMm2(areaMm2);
    }
}
