package orlop.scene;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Chemistry;
import orlop.drawing.Component;
import orlop.drawing.Conductors;
import orlop.drawing.Consumer;
import orlop.drawing.Conversion;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Extras;
import orlop.drawing.FaultMethod;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.Message;
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
import orlop.drawing.Vessel;
import orlop.findings.Cure;
import orlop.findings.Finding;
import orlop.findings.Severity;
import orlop.study.CableResult;
import orlop.study.ComponentResult;
import orlop.study.FaultRange;
import orlop.study.GovernedBy;
import orlop.study.PointResult;
import orlop.study.Results;
import orlop.study.TerminalResult;

/** An invented vessel's main distribution with invented figures: the drawing that the tests of the sheet look at. */
public final class SampleSheet {
    private Drawing drawing;
    private final Map<String, CableResult> cables = new LinkedHashMap<>();
    private final Map<String, ComponentResult> components = new LinkedHashMap<>();
    private final Map<String, PointResult> points = new LinkedHashMap<>();

    private SampleSheet() {
        Vessel v = new Vessel(
                "Pilot cutter OSKERRIN",
                "OSK-E",
                "iec60364",
                45,
                60,
                FaultMethod.IEC,
                null,
                null,
                "",
                "",
                "owner",
                Extras.NONE);
        drawing = Drawing.empty("").withVessel(v);
        drawing = drawing.with(ElectricalSystem.of("24", Nature.DC, 24))
                .with(ElectricalSystem.of("12", Nature.DC, 12))
                .with(ElectricalSystem.of("230", Nature.AC1, 230))
                .with(ElectricalSystem.of("PV", Nature.PV, 80))
                .with(OperatingCondition.asDrawn("anchor", "At anchor, evening"))
                .with(new Sheet(
                        "1",
                        "001",
                        "Main distribution, 24 V and 12 V",
                        SheetSize.A3,
                        "B",
                        "for check",
                        "owner",
                        "2026-11-25",
                        Extras.NONE))
                .with(Sheet.of("2", "Alternating current"))
                .with(Sheet.of("3", "Engine and starting"));
        sources();
        loads();
        cables();
        results();
    }

    /** The drawing. */
    public static Drawing drawing() {
        return new SampleSheet().drawing;
    }

    /** The sheet for paper, with its findings. */
    public static SceneRequest request() {
        SampleSheet s = new SampleSheet();
        return SceneRequest.paper(s.drawing, s.resultsAtAnchor(), findings(), "1");
    }

    private Results resultsAtAnchor() {
        return new Results("anchor", "At anchor, evening", true, 0, points, cables, components, List.of());
    }

    private void put(String id, String name, Particulars p, double x, double y, String... systems) {
        drawing = drawing.with(
                Component.of(id, p, Place.at("1", x, y), List.of(systems)).withName(name));
    }

    private void fuse(String id, String family, double ratingA, double x, double y, String system) {
        put(id, "", new Protection.Fuse(family, ratingA, null, null, null, Poles.POSITIVE), x, y, system);
    }

    private void link(String from, String to) {
        drawing = drawing.with(Link.of(TerminalRef.parse(from, "from"), TerminalRef.parse(to, "to")));
    }

    private void cable(
            String id, String from, String to, double lengthM, double areaMm2, @Nullable Conductors conductors) {
        Cable c = Cable.of(id, TerminalRef.parse(from, "from"), TerminalRef.parse(to, "to"))
                .withLengthM(lengthM)
                .withAreaMm2(areaMm2);
        drawing = drawing.with(conductors == null ? c : with(c, conductors));
    }

    private static Cable with(Cable c, Conductors conductors) {
        return new Cable(
                c.id(),
                c.from(),
                c.to(),
                c.lengthM(),
                c.lengthEstimated(),
                c.areaMm2(),
                c.parallel(),
                conductors,
                c.construction(),
                c.returns(),
                c.measured(),
                c.conductorC(),
                c.refit(),
                c.stage(),
                c.name(),
                c.cableways(),
                c.bends(),
                c.labelAt(),
                c.locked(),
                c.extras());
    }

    private void sources() {
        put(
                "GB1",
                "",
                new Source.Battery(Chemistry.LITHIUM_IRON_PHOSPHATE, 1, 1, 400.0, null, null, null, null, 78),
                62.5,
                57.5,
                "24");
        put("QB1", "", new Switching.Isolator(300.0, null, Poles.POSITIVE, Position.CLOSED), 112.5, 65, "24");
        put("24MAIN", "main bar", new Distribution.Busbar(400.0, 250), 160, 110, "24");
        put(
                "GC1",
                "on the wheelhouse",
                new Source.PvArray(430.0, 49.0, 11.0, 41.0, 10.5, -0.27, null, 2, 2, 0, null, 0),
                175,
                32.5,
                "PV");
        put("QB2", "", new Switching.Isolator(25.0, null, Poles.BOTH, Position.CLOSED), 175, 50, "PV");
        put(
                "T3",
                "charge controller",
                new Conversion.ChargeController(50.0, 150.0, null, 0.97, 0, null),
                175,
                77.5,
                "PV",
                "24");
        put("XD1", "shore inlet", new Source.ShoreInlet(16.0, null, null), 262.5, 27.5, "230");
        put(
                "FB1",
                "",
                new Protection.ResidualCurrentDevice(16.0, 30.0, "A", true, "mcb-b", null, Poles.L_N, Position.CLOSED),
                262.5,
                45,
                "230");
        put(
                "T1",
                "inverter/charger",
                new Conversion.InverterCharger(2000.0, 0.88, 12, 70.0, 30.0, null, null, null),
                262.5,
                77.5,
                "24",
                "230");
        put("XL1", "230 V board", new Distribution.SheetLink("XL2"), 315, 77.5, "230");
        drawing = drawing.with(
                Component.of("XL2", new Distribution.SheetLink("XL1"), Place.at("2", 70, 80), List.of("230")));
        fuse("F9", "gg", 50, 175, 102.5, "24");
        fuse("F6", "gg", 100, 262.5, 102.5, "24");
    }

    private void loads() {
        fuse("F2", "gg", 160, 45, 122.5, "24");
        fuse("F3", "gg", 25, 87.5, 122.5, "24");
        fuse("F4", "gg", 16, 130, 122.5, "24");
        fuse("F5", "gg", 40, 195, 122.5, "24");
        put(
                "M1",
                "anchor windlass",
                new Consumer.ShortTimeMachine(1500.0, 78.0, 0.8, null, 5, Phase.ALL, false),
                45,
                170,
                "24");
        put("E1", "saloon and cabins", new Consumer.Lighting(148.0, 1, 12, false, Phase.ALL, false), 87.5, 170, "24");
        put("M2", "bilge pump", new Consumer.Motor(280.0, 0.8, 0.8, null, null, null, Phase.ALL, true), 130, 170, "24");
        put("T2", "", new Conversion.DcDcConverter(360.0, 12.4, 0, 0.92, 0, false, null, true), 195, 150, "24", "12");
        put("12NAV", "navigation", new Distribution.Busbar(60.0, 115), 227.5, 180, "12");
        fuse("F11", "iso8820-f", 10, 182.5, 192.5, "12");
        fuse("F12", "iso8820-f", 5, 225, 192.5, "12");
        fuse("F13", "iso8820-f", 7.5, 267.5, 192.5, "12");
        put("P1", "radio", new Consumer.Electronics(60.0, 1, Phase.ALL, true), 182.5, 232.5, "12");
        put("P2", "plotter", new Consumer.Electronics(24.0, 1, Phase.ALL, false), 225, 232.5, "12");
        put("P3", "instruments", new Consumer.Electronics(28.0, 1, Phase.ALL, true), 267.5, 232.5, "12");
    }

    private void cables() {
        link("GC1.1", "QB2.1");
        link("XD1.1", "FB1.1");
        link("F9.2", "24MAIN.f9");
        link("F6.2", "24MAIN.f6");
        for (String f : List.of("F2", "F3", "F4", "F5")) {
            link("24MAIN." + f, f + ".1");
        }
        for (String f : List.of("F11", "F12", "F13")) {
            link("12NAV." + f, f + ".1");
        }
        cable("W1", "GB1.1", "QB1.1", 1.8, 70, null);
        cable("W2", "QB1.2", "24MAIN.w2", 0.9, 70, null);
        cable("W15", "QB2.2", "T3.1", 9, 6, null);
        cable("W9", "T3.2", "F9.1", 2.2, 16, null);
        cable("W20", "FB1.2", "T1.3", 9, 2.5, Conductors.L_N_PE);
        cable("W18", "T1.2", "XL1.1", 3, 4, Conductors.L_N_PE);
        cable("W3", "T1.1", "F6.1", 1.4, 35, null);
        cable("W4", "F2.2", "M1.1", 11, 35, null);
        cable("W5", "F3.2", "E1.1", 14, 4, null);
        cable("W6", "F4.2", "M2.1", 16, 6, null);
        cable("W8", "F5.2", "T2.1", 2, 10, null);
        cable("W7", "T2.2", "12NAV.w7", 1.2, 10, null);
        cable("W11", "F11.2", "P1.1", 6, 2.5, null);
        cable("W12", "F12.2", "P2.1", 9, 2.5, null);
        cable("W13", "F13.2", "P3.1", 11, 4, null);
    }

    private void results() {
        result("W1", 37.04, 0.214, 7900, 6104);
        result("W2", 37.04, 0.107, 5950, 5512);
        result("W15", 0.6, 0.11, 22, 21.4);
        result("W9", 2.0, 0.13, 2900, 2610);
        result("W18", 1.7, 0.12, 27, 26.2);
        result("W3", -17.63, 0.14, 4100, 4350);
        result("W4", 0, 0, 5200, 1604);
        result("W5", 6.17, 3.92, 5200, 184.3);
        result("W6", 11.52, 5.61, 5200, 241.7);
        result("W8", 3.72, 0.19, 5200, 2130);
        result("W7", 7.1, 0.31, 38, 38);
        result("W11", 3.0, 2.6, 38, 38);
        result("W12", 1.9, 2.5, 38, 38);
        result("W13", 2.2, 2.2, 38, 38);
        dead("W20");
        source("GB1", Kind.BATTERY, "24", 25.9, 37.04);
        source("GC1", Kind.PV_ARRAY, "PV", 82.4, 0.6);
        components.put("XD1", new ComponentResult("XD1", Kind.SHORE_INLET, false, List.of(), null, null, List.of()));
        points.put("24MAIN", new PointResult("24MAIN", "24", List.of(), 25.8, null, FaultRange.NONE, 2.7));
        points.put("12NAV", new PointResult("12NAV", "12", List.of(), 12.4, null, FaultRange.NONE, 1.2));
    }

    private void source(String id, Kind kind, String system, double voltageV, double currentA) {
        TerminalResult t = new TerminalResult("1", system, voltageV, null, currentA, voltageV * currentA);
        components.put(id, new ComponentResult(id, kind, true, List.of(t), null, null, List.of(id)));
    }

    private void result(String id, double currentA, double dropPercent, double faultFromA, double faultToA) {
        FaultRange from = new FaultRange(faultFromA, faultFromA * 0.8);
        FaultRange to = new FaultRange(faultToA, faultToA * 0.8);
        cables.put(id, result(drawing.cables().require(id), true, currentA, dropPercent, from, to));
    }

    private void dead(String id) {
        cables.put(id, result(drawing.cables().require(id), false, null, null, FaultRange.NONE, FaultRange.NONE));
    }

    /** A result with these figures; the rest is made up. */
    static CableResult result(
            Cable c,
            boolean live,
            @Nullable Double currentA,
            @Nullable Double dropPercent,
            FaultRange from,
            FaultRange to) {
        return new CableResult(
                c.id(),
                c.from(),
                c.to(),
                "24",
                live,
                c.lengthM() == null ? 0 : c.lengthM(),
                c.areaMm2() == null ? Double.valueOf(4) : c.areaMm2(),
                c.auto(),
                c.conductors() == null ? Conductors.TWO_WIRE : c.conductors(),
                c.parallel(),
                4.0,
                GovernedBy.AMPACITY,
                null,
                currentA,
                currentA,
                50.0,
                false,
                60.0,
                dropPercent,
                dropPercent,
                dropPercent,
                c.lengthM(),
                1.0,
                from,
                to,
                List.of(),
                orlop.study.CableSizing.NONE);
    }

    static List<Finding> findings() {
        List<Finding> all = new ArrayList<>();
        all.add(finding(
                "missing-fuse",
                Severity.DANGER,
                Finding.Place.on("W1", true, 0),
                "No fuse at the battery",
                "GB1 can drive 7.9 kA into W1 and nothing opens it. A device belongs at the positive terminal.",
                new Cure.InsertDevice(
                        Message.of("scene.label", "insert 200 A class T"), "W1", true, 0, "class-t", 200, 20),
                new Finding.Proposed("class-t", 200, 20)));
        all.add(finding(
                "drop",
                Severity.DEFECT,
                Finding.Place.cable("W6"),
                "Drop to a vital load",
                "5.9 % from GB1 to M2, limit 3 %; alike in every condition. At 50 °C conductor.",
                new Cure.SetArea(Message.of("scene.label", "W6 to 2×16 mm², +2.9 kg copper"), "W6", 16),
                null));
        all.add(finding(
                "starting",
                Severity.ADVICE,
                Finding.Place.component("M1"),
                "Assumed: starting current of M1",
                "None is given; 4 × 78 A was taken for the dip at M2 and for the bands of F2.",
                new Cure.EnterValue(Message.of("scene.label", "enter it, or accept with a reason"), "M1", "startingA"),
                null));
        return all;
    }

    static Finding finding(
            String rule,
            Severity severity,
            Finding.Place place,
            String title,
            String message,
            @Nullable Cure cure,
            Finding.@Nullable Proposed proposed) {
        return new Finding(
                rule,
                severity,
                place,
                Message.of("scene.label", title),
                Message.of("scene.label", message),
                cure,
                proposed,
                "",
                "seen",
                List.of(),
                List.of("anchor"),
                null);
    }
}
