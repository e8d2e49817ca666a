package orlop.store;

import java.util.ArrayList;
import java.util.List;
import orlop.drawing.Cable;
import orlop.drawing.Chemistry;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.LoadState;
import orlop.drawing.Nature;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Place;
import orlop.drawing.Poles;
import orlop.drawing.Protection;
import orlop.drawing.Sheet;
import orlop.drawing.Source;
import orlop.drawing.TerminalRef;
import orlop.drawing.Vessel;

/** An invented small vessel of about forty items: battery, board, ten fused circuits, shore and charger. */
final class RealisticDrawing {
    private Drawing drawing = Drawing.empty("")
            .withVessel(Vessel.named("Grey Heron"))
            .with(ElectricalSystem.of("24", Nature.DC, 24))
            .with(ElectricalSystem.of("230", Nature.AC1, 230))
            .with(Sheet.of("1", "24 V DC"));

    private RealisticDrawing() {}

    static Drawing make() {
        return new RealisticDrawing().made();
    }

    private Drawing made() {
        Source.Battery bank = new Source.Battery(Chemistry.AGM, 2, 2, 220.0, null, 0.0045, null, null, 80);
        put(Component.of("GB1", bank, Place.at("1", 30, 40), List.of("24")));
        put(Component.of("FC1", fuse(200), Place.at("1", 50, 40), List.of("24")));
        put(Component.of("QB1", Kind.ISOLATOR, Place.at("1", 70, 40), List.of("24")));
        put(Component.of("WC1", Kind.BUSBAR, Place.at("1", 100, 40), List.of("24")));
        drawing = drawing.with(Link.of(end("GB1.1"), end("FC1.1")));
        cable("W1", "FC1.2", "QB1.1", 1.2, 70.0);
        cable("W2", "QB1.2", "WC1.main", 0.8, 70.0);
        List<String> loads = new ArrayList<>();
        for (int i = 1; i <= 10; i++) {
            double y = 60 + 12.5 * i;
            String tap = "WC1." + (char) ('a' + i - 1);
            String fuse = "FC" + (i + 1);
            String load = "E" + i;
            put(Component.of(fuse, fuse(5 * i), Place.at("1", 120, y), List.of("24")));
            put(Component.of(load, Kind.LIGHTING, Place.at("1", 160, y), List.of("24")));
            drawing = drawing.with(Link.of(end(tap), end(fuse + ".1")));
            cable("W" + (i + 2), fuse + ".2", load + ".1", 2.5 * i, i % 2 == 0 ? null : 2.5);
            loads.add(load);
        }
        put(Component.of("XD1", Kind.SHORE_INLET, Place.at("1", 30, 200), List.of("230")));
        put(Component.of("TB1", Kind.CHARGER, Place.at("1", 70, 200), List.of("230", "24")));
        cable("W20", "XD1.1", "TB1.1", 6.5, 2.5);
        cable("W21", "TB1.2", "WC1.x", 2.0, 16.0);
        OperatingCondition c = OperatingCondition.asDrawn("anchor", "at anchor").withSource("XD1", false);
        for (String load : loads) {
            c = c.withLoad(load, new LoadState(true, 0.6, 0.25, orlop.drawing.Extras.NONE));
        }
        return drawing.with(c)
                .with(OperatingCondition.asDrawn("harbour", "in harbour").withSwitch("QB1", "closed"));
    }

    private void put(Component c) {
        drawing = drawing.with(c);
    }

    private void cable(
            String id, String from, String to, double lengthM, @org.jspecify.annotations.Nullable Double areaMm2) {
        drawing = drawing.with(
                Cable.of(id, end(from), end(to)).withLengthM(lengthM).withAreaMm2(areaMm2));
    }

    private static TerminalRef end(String text) {
        return TerminalRef.parse(text, "end");
    }

    private static Protection.Fuse fuse(double ratingA) {
        return new Protection.Fuse("", ratingA, null, null, null, Poles.POSITIVE);
    }
}
