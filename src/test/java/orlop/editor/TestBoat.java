package orlop.editor;

import java.util.List;
import orlop.desk.RecordParts;
import orlop.drawing.Cable;
import orlop.drawing.Chemistry;
import orlop.drawing.Component;
import orlop.drawing.Conductors;
import orlop.drawing.Consumer;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Extras;
import orlop.drawing.KnownReturn;
import orlop.drawing.LoadState;
import orlop.drawing.Nature;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Particulars;
import orlop.drawing.Phase;
import orlop.drawing.Place;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Protection;
import orlop.drawing.Sheet;
import orlop.drawing.SheetSize;
import orlop.drawing.Source;
import orlop.drawing.Switching;
import orlop.drawing.TerminalRef;

/** The 24 V side of an invented vessel, drawn by hand: twenty-odd components, one circuit without its fuse. */
final class TestBoat {
    /** The cable that has no device of its own: it leads from the bar to the anchor windlass. */
    static final String UNGUARDED = "W8";

    private Drawing d = Drawing.empty("Skerry Wren");

    private TestBoat() {}

    static Drawing drawing() {
        TestBoat b = new TestBoat();
        b.ground();
        b.supply();
        b.circuits();
        b.conditions();
        return b.d;
    }

    private void ground() {
        d = d.withVessel(
                RecordParts.with(RecordParts.with(d.vessel(), "documentPrefix", "SKW-E"), "ruleSet", "iec60364"));
        d = d.with(ElectricalSystem.of("24", Nature.DC, 24));
        d = d.with(
                new Sheet("1", "001", "Main distribution, 24 V", SheetSize.A3, "B", "for check", "", "", Extras.NONE));
    }

    private void supply() {
        put("GB1", "house bank", 60, 150, new Source.Battery(Chemistry.AGM, 1, 1, 230.0, null, null, null, null, 80));
        put("GA1", "engine alternator", 100, 45, new Source.Alternator(75.0, 25.0, 28.0, KnownReturn.ISOLATED));
        put("FC1", "", 60, 110, fuse("class-t", 200));
        put("QB1", "battery isolator", 60, 80, new Switching.Isolator(300.0, null, Poles.POSITIVE, Position.CLOSED));
        put("FC2", "", 100, 75, fuse("class-t", 125));
        put("24MAIN", "24 V main bar", 200, 102.5, new Distribution.Busbar(400.0, 240));
        run("W1", "GB1.1", "FC1.2", 0.6, 70);
        run("W2", "FC1.1", "QB1.2", 0.8, 70);
        run("W3", "QB1.1", "24MAIN.a", 2.2, 70);
        run("W4", "GA1.1", "FC2.1", 4, 35);
        run("W5", "FC2.2", "24MAIN.b", 0.5, 35);
    }

    private void circuits() {
        circuit(
                "FC3",
                fuse("gg", 25),
                "W6",
                "W7",
                120,
                "EA1",
                "saloon and cabins",
                new Consumer.Lighting(140.0, 1, 12, false, Phase.ALL, false),
                14,
                6);
        put(
                "MA1",
                "anchor windlass",
                150,
                190,
                new Consumer.ShortTimeMachine(1500.0, null, 0.8, null, 5, Phase.ALL, false));
        run(UNGUARDED, "24MAIN.d", "MA1.1", 11, 35);
        circuit(
                "FC4",
                fuse("gg", 15),
                "W9",
                "W10",
                180,
                "MA2",
                "bilge pump",
                new Consumer.Motor(180.0, 0.75, 1, null, null, null, Phase.ALL, true),
                16,
                6);
        circuit(
                "FC5",
                fuse("gg", 10),
                "W11",
                "W12",
                210,
                "P1",
                "navigation",
                new Consumer.Electronics(120.0, 1, Phase.ALL, true),
                9,
                4);
        circuit(
                "FC6",
                fuse("gg", 20),
                "W13",
                "W14",
                240,
                "MA3",
                "fresh water pump",
                new Consumer.Motor(150.0, 0.7, 1, null, null, null, Phase.ALL, false),
                7,
                4);
        circuit(
                "FC7",
                fuse("gg", 15),
                "W15",
                "W16",
                270,
                "EB1",
                "cabin heater fan",
                new Consumer.Heater(90.0, Phase.ALL, false),
                8,
                2.5);
        circuit(
                "FC8",
                fuse("gg", 10),
                "W17",
                "W18",
                300,
                "EA2",
                "deck and mast lights",
                new Consumer.Lighting(60.0, 1, 4, false, Phase.ALL, true),
                18,
                4);
    }

    private void circuit(
            String fuse,
            Particulars device,
            String in,
            String out,
            double x,
            String load,
            String name,
            Particulars consumer,
            double lengthM,
            double areaMm2) {
        put(fuse, "", x, 130, device);
        put(load, name, x, 190, consumer);
        run(in, "24MAIN." + tap(x), fuse + ".1", 0.2, areaMm2);
        run(out, fuse + ".2", load + ".1", lengthM, areaMm2);
    }

    private static String tap(double x) {
        return String.valueOf((char) ('a' + (int) (x / 30) - 2));
    }

    private static Protection.Fuse fuse(String family, double ratingA) {
        return new Protection.Fuse(family, ratingA, null, null, null, Poles.POSITIVE);
    }

    private void put(String id, String name, double x, double y, Particulars p) {
        d = d.with(Component.of(id, p, Place.at("1", x, y), List.of("24")).withName(name));
    }

    private void run(String id, String from, String to, double lengthM, double areaMm2) {
        Cable w = Cable.of(id, TerminalRef.parse(from, "from"), TerminalRef.parse(to, "to"))
                .withLengthM(lengthM)
                .withAreaMm2(areaMm2);
        d = d.with(RecordParts.with(w, "conductors", Conductors.TWO_WIRE));
    }

    private void conditions() {
        OperatingCondition sail = OperatingCondition.asDrawn("sail", "Under sail, night")
                .withSource("GA1", false)
                .withLoad("MA1", new LoadState(false, 0, 0, Extras.NONE));
        d = d.with(OperatingCondition.asDrawn("anchor", "Weighing anchor").withSource("GA1", true));
        d = d.with(sail);
        d = d.with(OperatingCondition.asDrawn("laid-up", "Laid up")
                .withSource("GA1", false)
                .withSwitch("QB1", "open"));
    }
}
