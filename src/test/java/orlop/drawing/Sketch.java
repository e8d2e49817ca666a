package orlop.drawing;

import java.util.List;

/** A small invented drawing for tests: battery, fuse, isolator, bar, two loads, a converter to a second system. */
final class Sketch {
    private Sketch() {}

    static Drawing make() {
        Drawing d = Drawing.empty("Grey Heron")
                .with(ElectricalSystem.of("24", Nature.DC, 24))
                .with(ElectricalSystem.of("12", Nature.DC, 12))
                .with(Sheet.of("1", "main"))
                .with(component("GB1", Kind.BATTERY, 20, "24"))
                .with(component("FC1", Kind.FUSE, 40, "24"))
                .with(component("QB1", Kind.ISOLATOR, 60, "24"))
                .with(component("WC1", Kind.BUSBAR, 80, "24"))
                .with(component("E1", Kind.LOAD, 100, "24"))
                .with(component("E2", Kind.LOAD, 120, "24"))
                .with(component("XL1", Kind.SHEET_LINK, 140, "24").withParticulars(new Distribution.SheetLink("XL2")))
                .with(component("XL2", Kind.SHEET_LINK, 160, "24").withParticulars(new Distribution.SheetLink("XL1")))
                .with(component("XE1", Kind.NEUTRAL_EARTH_LINK, 180, "24")
                        .withParticulars(new Earth.NeutralEarthLink("GB1")))
                .with(Component.of("TB1", Kind.DC_DC_CONVERTER, Place.at("1", 200, 50), List.of("24", "12")))
                .with(component("E3", Kind.LOAD, 220, "12"))
                .with(cable("W1", "GB1.1", "FC1.1", 2.0))
                .with(cable("W2", "FC1.2", "QB1.1", 3.0))
                .with(cable("W3", "WC1.a", "E1.1", 10.0))
                .with(cable("W4", "WC1.b", "E2.1", null))
                .with(cable("W5", "WC1.c", "TB1.1", 1.5))
                .with(cable("W6", "TB1.2", "E3.1", 4.0))
                .with(Link.of(end("QB1.2"), end("WC1.main")))
                .with(new Link("strap", end("GB1.2"), end("E1.2"), 0.25, null, Extras.NONE));
        d = d.with(OperatingCondition.asDrawn("anchor", "at anchor")
                .withLoad("E1", new LoadState(true, 0.5, 0.25, Extras.NONE))
                .withSource("GB1", true)
                .withSwitch("QB1", "open"));
        d = d.withAccepted(d.accepted()
                        .with("a1", new Acceptance("a1", "rule", "FC1", "spare", "", "", List.of(), Extras.NONE)))
                .withMeasurements(d.measurements()
                        .with("m1", measured("m1", "W2"))
                        .with("m2", measured("m2", "FC1"))
                        .with("m3", measured("m3", "QB1.2~WC1.main")));
        return d.withNotes(d.notes().with("n1", new Note("n1", "1", new Point(5, 5), "note", 2.5, Extras.NONE)));
    }

    static Component component(String id, Kind kind, double xMm, String system) {
        return Component.of(id, kind, Place.at("1", xMm, 50), List.of(system));
    }

    static Cable cable(String id, String from, String to, @org.jspecify.annotations.Nullable Double lengthM) {
        return Cable.of(id, end(from), end(to)).withLengthM(lengthM);
    }

    static Measurement measured(String id, String item) {
        return new Measurement(id, item, "insulation", 1, "MΩ", "", "", Extras.NONE);
    }

    static TerminalRef end(String text) {
        return TerminalRef.parse(text, "end");
    }
}
