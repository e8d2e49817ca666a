package orlop.store;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Acceptance;
import orlop.drawing.Cable;
import orlop.drawing.Cableway;
import orlop.drawing.Component;
import orlop.drawing.Conductors;
import orlop.drawing.DayPlan;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Earth;
import orlop.drawing.EfficiencyByLoad;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Extras;
import orlop.drawing.FaultMethod;
import orlop.drawing.Finish;
import orlop.drawing.Kind;
import orlop.drawing.Laying;
import orlop.drawing.Ledger;
import orlop.drawing.Link;
import orlop.drawing.LoadState;
import orlop.drawing.Location;
import orlop.drawing.Measurement;
import orlop.drawing.Nature;
import orlop.drawing.Note;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Particulars;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.drawing.RefitStatus;
import orlop.drawing.Sheet;
import orlop.drawing.SheetSize;
import orlop.drawing.Stage;
import orlop.drawing.TerminalRef;
import orlop.drawing.Vessel;

/** Drawings for tests in which nothing has its default value. */
final class Specimens {
    static final String OTHER = "OTHER";

    private Specimens() {}

    /** The particulars of a kind with every single one different from its default. */
    static Particulars unusual(Kind kind) {
        if (kind == Kind.SHEET_LINK) {
            return new Distribution.SheetLink(OTHER);
        }
        if (kind == Kind.NEUTRAL_EARTH_LINK) {
            return new Earth.NeutralEarthLink(OTHER);
        }
        Object record = kind.defaults();
        for (RecordComponent c : record.getClass().getRecordComponents()) {
            record = changed(record, c);
        }
        return (Particulars) record;
    }

    private static Object changed(Object record, RecordComponent c) {
        @Nullable Object old = Plan.get(c.getAccessor(), record);
        for (Object candidate : candidates(c.getType(), old)) {
            Object next = candidate.equals(old) ? null : with(record, c, candidate);
            if (next != null) {
                return next;
            }
        }
        throw new AssertionError("no other value of " + c + " is accepted");
    }

    private static List<Object> candidates(Class<?> type, @Nullable Object old) {
        if (type.isEnum()) {
            return Arrays.asList(type.getEnumConstants());
        }
        if (type == boolean.class) {
            return List.of(true, false);
        }
        if (type == String.class) {
            return List.of("größe \"Ω\"\n<&> \uD83D\uDEA2");
        }
        if (type == int.class) {
            return List.of(((Integer) java.util.Objects.requireNonNull(old)) + 1, 2, 1, 0);
        }
        if (type == EfficiencyByLoad.class) {
            return List.of(EfficiencyByLoad.read("12.5:80.5 50:91"));
        }
        return List.of(0.123456789, 12.5, 0.5, -0.25, 1e-7, 7.0, 40.0);
    }

    private static @Nullable Object with(Object record, RecordComponent changed, Object value) {
        RecordComponent[] components = record.getClass().getRecordComponents();
        List<@Nullable Object> arguments = new ArrayList<>();
        for (RecordComponent c : components) {
            arguments.add(c.getName().equals(changed.getName()) ? value : Plan.get(c.getAccessor(), record));
        }
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            Constructor<?> constructor = record.getClass().getConstructor(types);
            return constructor.newInstance(arguments.toArray());
        } catch (InvocationTargetException e) {
            return null; // out of range: the next candidate
        } catch (ReflectiveOperationException e) {
            throw new LinkageError(record.toString(), e);
        }
    }

    /** A component of this kind that has nothing at its default. */
    static Component component(String id, Kind kind, Particulars particulars) {
        List<String> systems = kind.spansSystems() ? List.of("24", "230") : List.of("24");
        return new Component(
                id,
                "bilge \u201Cpump\u201D",
                new Place("S1", new Point(70.5, -55), 270, true, new Point(-2.5, 12)),
                systems,
                RefitStatus.EXISTING,
                Stage.NOT_TRACED,
                "ER",
                true,
                particulars,
                extras());
    }

    static Extras extras() {
        java.util.Map<String, String> json = new java.util.LinkedHashMap<>();
        json.put("zz-future", "{ \"deep\": [1, 2.50, null, \"\\u0001\"] }");
        json.put("aa-future", "true");
        return new Extras(json);
    }

    /** A drawing with one component of this kind and what it needs. */
    static Drawing of(Kind kind) {
        Component c = component("K1", kind, unusual(kind));
        Kind otherKind = kind == Kind.SHEET_LINK ? Kind.SHEET_LINK : Kind.SUPPLY;
        Particulars other = kind == Kind.SHEET_LINK ? new Distribution.SheetLink("K1") : unusual(otherKind);
        return frame().with(c).with(component(OTHER, otherKind, other));
    }

    private static Drawing frame() {
        Drawing d = Drawing.empty("")
                .withVessel(new Vessel(
                        "Grey Heron",
                        "GH-E",
                        "iec60364",
                        35,
                        55.5,
                        FaultMethod.PLAIN,
                        14.2,
                        1962,
                        "private",
                        "none",
                        "A. Owner",
                        extras()))
                .with(new ElectricalSystem(
                        "24",
                        "ship's",
                        Nature.DC,
                        24,
                        30.4,
                        16.7,
                        orlop.drawing.Earthing.NEGATIVE_BONDED,
                        5.0,
                        10.0,
                        extras()))
                .with(ElectricalSystem.of("230", Nature.AC1, 230))
                .with(new Sheet(
                        "S1", "001", "Main", SheetSize.A1, "B", "for check", "A.O.", "E.L.", "1 May", extras()));
        return new Drawing(
                d.vessel(),
                d.systems(),
                d.conditions(),
                Ledger.<Location>empty()
                        .with("ER", new Location("ER", "engine room", 55.0, true, true, true, true, extras())),
                d.sheets(),
                d.components(),
                d.cables(),
                d.links(),
                Ledger.<Cableway>empty().with("T1", new Cableway("T1", "tray", "bridge", "ER", 7.25, extras())),
                d.notes(),
                d.measurements(),
                d.accepted(),
                d.dayPlans(),
                extras());
    }

    /** A cable that has nothing at its default. */
    static Cable cable(String id, String from, String to) {
        return new Cable(
                id,
                TerminalRef.parse(from, "from"),
                TerminalRef.parse(to, "to"),
                3.5,
                true,
                70.0,
                2,
                Conductors.L3_N_PE,
                new Cable.Construction(2, Finish.TINNED, 105, Laying.CONDUIT, 3, true, 60.0),
                new Cable.Return(4.5, 95.0),
                new Cable.Measured(0.001, 0.002, 0.003, 0.004, 0.005, 0.006, 0.007),
                25.0,
                RefitStatus.TO_BE_REMOVED,
                Stage.TESTED,
                "main feeder",
                List.of("T1"),
                List.of(new Point(1, 2), new Point(3.25, 4)),
                new Point(5, 6),
                true,
                extras());
    }

    /** Every kind once, and every list filled, with nothing at its default. */
    static Drawing everything() {
        Drawing d = frame();
        for (Kind kind : Kind.values()) {
            d = d.with(component("K-" + kind.word(), kind, unusual(kind)));
        }
        d = d.with(component(OTHER, Kind.SHEET_LINK, new Distribution.SheetLink("K-sheet-link")));
        d = d.with(cable("W1", "K-battery.1", "K-busbar.main"))
                .with(Cable.of("W2", TerminalRef.parse("K-busbar.b", "from"), TerminalRef.parse("K-fuse.1", "to")));
        TerminalRef a = TerminalRef.parse("K-fuse.2", "from");
        TerminalRef b = TerminalRef.parse("K-isolator.1", "to");
        d = d.with(Link.of(a, b)).with(new Link("LK1", b, a, 0.125, 250.0, extras()));
        OperatingCondition anchor = OperatingCondition.asDrawn("anchor", "at anchor")
                .withLoad("K-load", new LoadState(false, 0.5, 0.25, extras()))
                .withLoad("K-motor", LoadState.DEFAULT)
                .withSource("K-battery", false)
                .withSwitch("K-isolator", "open");
        d = d.with(new OperatingCondition(
                        anchor.id(), anchor.name(), anchor.loads(), anchor.sources(), anchor.switches(), extras()))
                .with(OperatingCondition.asDrawn("laid-up", ""));
        return new Drawing(
                d.vessel(),
                d.systems(),
                d.conditions(),
                d.locations(),
                d.sheets(),
                d.components(),
                d.cables(),
                d.links(),
                d.cableways(),
                Ledger.<Note>empty()
                        .with("N1", new Note("N1", "S1", new Point(9, 8), "two\nlines\tΩ", 2.5, true, extras())),
                Ledger.<Measurement>empty()
                        .with("M1", new Measurement("M1", "W1", "insulation", 1.5, "MΩ", "2 May", "dry", extras())),
                Ledger.<Acceptance>empty()
                        .with(
                                "A1",
                                new Acceptance(
                                        "A1",
                                        "missing-fuse",
                                        "W1",
                                        "spare",
                                        "A.O.",
                                        "3 May",
                                        List.of("findings.x", "findings.y"),
                                        extras())),
                Ledger.<DayPlan>empty()
                        .with(
                                "D1",
                                new DayPlan(
                                        "D1",
                                        "a day",
                                        List.of(
                                                new DayPlan.Step("anchor", 16.5, extras()),
                                                new DayPlan.Step("laid-up", 7.5)),
                                        extras())),
                d.extras());
    }
}
