package orlop.scene;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Extras;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.Nature;
import orlop.drawing.Particulars;
import orlop.drawing.Place;
import orlop.drawing.Sheet;
import orlop.drawing.SheetSize;
import orlop.drawing.TerminalRef;
import orlop.findings.Finding;
import orlop.findings.Severity;
import orlop.study.CableResult;
import orlop.study.FaultRange;
import orlop.study.Results;

/**
 * Drawings of 20 to 200 components on one sheet or several, by seeded chance, on the grid that a draughtsman would take:
 * bands of a bar with its sources above and its feeders below, devices of every kind in the feeders, changeover switches
 * fed from two bars, junctions with a branch, converters that feed the next band, bars that go on to the next sheet.
 */
public final class GridDrawing {
    private static final double BAND_MM = 112;
    private static final double FIRST_MM = 14;
    private static final List<String> SYSTEMS = List.of("24", "12", "230", "400", "PV");
    private static final List<Kind> SOURCES = List.of(
            Kind.BATTERY, Kind.GENERATOR, Kind.ALTERNATOR, Kind.PV_ARRAY, Kind.TURBINE, Kind.SHORE_INLET, Kind.SUPPLY);
    private static final List<Kind> DEVICES = List.of(
            Kind.FUSE, Kind.FUSE, Kind.FUSE, Kind.CIRCUIT_BREAKER, Kind.CIRCUIT_BREAKER, Kind.RESIDUAL_CURRENT_DEVICE);
    private static final List<Kind> SWITCHES =
            List.of(Kind.ISOLATOR, Kind.CONTACTOR, Kind.SHUNT, Kind.DIODE, Kind.TERMINAL, Kind.COMBINING_RELAY);
    private static final List<Kind> LOADS = List.of(
            Kind.MOTOR,
            Kind.HEATER,
            Kind.LIGHTING,
            Kind.ELECTRONICS,
            Kind.SOCKET_OUTLET,
            Kind.SHORT_TIME_MACHINE,
            Kind.LOAD,
            Kind.INVERTER);
    private static final List<String> NAMES = List.of(
            "",
            "",
            "bilge pump",
            "saloon lights, port side aft",
            "radio",
            "refrigerator in the galley",
            "Ankerlicht",
            "x",
            "heads pump");

    private final Random random;
    private final Map<String, CableResult> results = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();
    private Drawing drawing = Drawing.empty("Grown by chance");
    private int wanted;
    private int count;
    private int cables;
    private String sheet = "";

    private GridDrawing(long seed) {
        random = new Random(seed);
        wanted = 20 + random.nextInt(181);
        drawing = drawing.with(ElectricalSystem.of("24", Nature.DC, 24))
                .with(ElectricalSystem.of("12", Nature.DC, 12))
                .with(ElectricalSystem.of("230", Nature.AC1, 230))
                .with(ElectricalSystem.of("400", Nature.AC3N, 400))
                .with(ElectricalSystem.of("PV", Nature.PV, 80));
        SheetSize size = List.of(SheetSize.A3, SheetSize.A2, SheetSize.A1).get(random.nextInt(3));
        int n = 1;
        while (count < wanted) {
            sheet = Integer.toString(n);
            drawing = drawing.with(
                    new Sheet(sheet, "00" + n, "Sheet " + n, size, "A", "for check", "owner", "", Extras.NONE));
            sheet(new SheetFrame(size).drawable());
            n++;
        }
    }

    /** The drawing of this seed, with invented figures and findings. */
    public static GridDrawing of(long seed) {
        return new GridDrawing(seed);
    }

    public Drawing drawing() {
        return drawing;
    }

    /** One sheet of it on paper. */
    public SceneRequest request(String sheetId) {
        return request(drawing, sheetId);
    }

    /** A sheet of another drawing with the same figures. */
    public SceneRequest request(Drawing d, String sheetId) {
        Results r = new Results("x", "By chance", true, 0, Map.of(), results, Map.of(), List.of());
        return SceneRequest.paper(d, r, findings, sheetId);
    }

    private void sheet(orlop.layout.Rect room) {
        int bands = Math.max(1, (int) ((room.height() - FIRST_MM + 6) / BAND_MM));
        String above = "";
        double feedX = 0;
        for (int i = 0; i < bands && count < wanted; i++) {
            Band b = new Band(i, room, above, feedX);
            b.draw(i + 1 < bands);
            above = b.feeder;
            feedX = b.feederX;
        }
    }

    /** A bar with what feeds it and what it feeds. */
    private final class Band {
        private final double top;
        private final orlop.layout.Rect room;
        private final String above;
        private final double feedX;
        private final String system;
        private final double pitch;
        private String feeder = "";
        private double feederX;
        private String bar = "";
        private String foot = "";
        private int taps;

        Band(int index, orlop.layout.Rect room, String above, double feedX) {
            this.top = room.minY() + FIRST_MM + index * BAND_MM;
            this.room = room;
            this.above = above;
            this.feedX = feedX;
            this.system = SYSTEMS.get(random.nextInt(SYSTEMS.size()));
            this.pitch = 37.5 + 2.5 * random.nextInt(4);
        }

        private String tap() {
            return bar + ".t" + taps++;
        }

        void draw(boolean more) {
            double first = grid(room.minX() + 15);
            int columns = (int) ((room.maxX() - first - 27) / pitch) + 1;
            double length = grid((columns - 1) * pitch + 15);
            boolean board = random.nextInt(4) == 0;
            // Now and then a bar is too short for what hangs on it: it grows, and what is farther off is led to.
            // A board's box leaves no lanes for that between it and the devices below: it is as long as it has to be.
            boolean tooShort = random.nextInt(6) == 0 && !board;
            double share = tooShort ? 0.6 + 0.35 * random.nextDouble() : 1;
            bar = add(
                    board
                            ? new Distribution.DistributionBoard(null, length, false)
                            : new Distribution.Busbar(400.0, Math.max(10, grid(share * (length - 15)) + 15)),
                    "WC",
                    first + (columns - 1) * pitch / 2,
                    top + 40,
                    0,
                    system);
            int feed = more && columns > 2 ? 1 + random.nextInt(columns - 2) : -1;
            sources(first, columns);
            for (int i = 0; i < columns && count < wanted; i++) {
                double x = grid(first + i * pitch);
                if (i == feed) {
                    feederX = x;
                    feeder = add(Kind.FUSE, x, top + 56, 0, system);
                    join(tap(), feeder + ".1");
                } else if (i + 1 < columns && i + 1 != feed && random.nextInt(9) == 0) {
                    branch(x, grid(first + ++i * pitch));
                } else {
                    column(x);
                }
            }
            if (random.nextInt(3) == 0 && count < wanted) {
                crossing(first, columns);
            }
        }

        private void sources(double first, int columns) {
            int n = 1 + random.nextInt(3);
            for (int i = 0; i < n; i++) {
                double x = grid(first + pitch * ((i + 0.5) * columns / n));
                if (!above.isEmpty() && Math.abs(x - feedX) < 36) {
                    continue;
                }
                String source = add(SOURCES.get(random.nextInt(SOURCES.size())), x, top + 5, 0, system);
                String device = add(device(), x, top + 25, 0, system);
                join(source + "." + first(source), device + ".1");
                cable(device + ".2", tap());
            }
            if (!above.isEmpty()) {
                List<Kind> kinds = List.of(Kind.DC_DC_CONVERTER, Kind.TRANSFORMER, Kind.CHARGER, Kind.INVERTER_CHARGER);
                String c = add(kinds.get(random.nextInt(kinds.size())), feedX, top + 12.5, 0, system);
                cable(above + ".2", c + ".1");
                cable(c + ".2", tap());
            }
        }

        private void column(double x) {
            String device = add(device(), x, top + 56, 0, system);
            join(tap(), device + ".1");
            String end = device + ".2";
            int more = random.nextInt(6);
            foot = more > 1 ? end : foot;
            if (more == 0) {
                String s = add(SWITCHES.get(random.nextInt(SWITCHES.size())), x, top + 71, 0, system);
                join(end, s + ".1");
                end = s + ".2";
            } else if (more == 1) {
                String s = add(Kind.CHANGEOVER_SWITCH, x, top + 72.5, 0, system);
                join(end, s + ".1");
                cable(bar + ".u" + taps++, s + ".2");
                end = s + ".3";
            }
            double aside = random.nextInt(6) == 0 ? 2.5 * (1 + random.nextInt(3)) : 0;
            double off = random.nextInt(20) == 0 ? 0.7 : 0;
            Kind kind = LOADS.get(random.nextInt(LOADS.size()));
            int turn = kind.terminals() == Kind.Terminals.ONE && random.nextInt(14) == 0 ? 90 : 0;
            String load = add(kind, x + aside + off, top + 94, turn, system);
            cable(end, load + ".1");
        }

        /** A junction that feeds the load below it and the one in the next column. */
        private void branch(double x, double next) {
            String device = add(device(), x, top + 56, 0, system);
            join(tap(), device + ".1");
            String j = add(Kind.JUNCTION, x, top + 70, 0, system);
            cable(device + ".2", j + ".a");
            for (double at : new double[] {x, next}) {
                String load = add(LOADS.get(random.nextInt(LOADS.size())), at, top + 94, 0, system);
                cable(j + ".b" + count, load + ".1");
            }
        }

        /** One load more at the end of the bar, fed from the bar or from the foot of the last device. */
        private void crossing(double first, int columns) {
            double x = grid(first + (columns - 1) * pitch + pitch / 2);
            if (x + 14 < room.maxX()) {
                String load = add(Kind.ELECTRONICS, x, top + 94, 0, system);
                cable(random.nextBoolean() || foot.isEmpty() ? tap() : foot, load + ".1");
            }
        }

        private String first(String id) {
            return drawing.components().require(id).particulars().terminals().get(0);
        }
    }

    private Kind device() {
        return DEVICES.get(random.nextInt(DEVICES.size()));
    }

    private static double grid(double mm) {
        return Math.rint(mm / 2.5) * 2.5;
    }

    private String add(Kind kind, double x, double y, int turn, String system) {
        return add(kind.defaults(), kind.letters(), x, y, turn, system);
    }

    private String add(Particulars p, String letters, double x, double y, int turn, String system) {
        String id = letters + ++count;
        boolean named = p instanceof Consumer || random.nextInt(4) == 0;
        Place place = Place.at(sheet, x, grid(y)).withRotationDegree(turn);
        drawing = drawing.with(Component.of(id, p, place, systems(p, system))
                .withName(named ? NAMES.get(random.nextInt(NAMES.size())) : ""));
        if (random.nextInt(25) == 0) {
            Severity s = random.nextBoolean() ? Severity.ADVICE : Severity.DEFECT;
            findings.add(
                    SampleSheet.finding("rule", s, Finding.Place.component(id), "A doubt", "Said of it.", null, null));
        }
        return id;
    }

    private static List<String> systems(Particulars p, String system) {
        return p instanceof orlop.drawing.Conversion
                ? List.of(system, system.equals("24") ? "12" : "24")
                : List.of(system);
    }

    /** A cable or, as often, a link. */
    private void join(String from, String to) {
        if (random.nextBoolean()) {
            cable(from, to);
        } else {
            drawing = drawing.with(Link.of(TerminalRef.parse(from, "from"), TerminalRef.parse(to, "to")));
        }
    }

    private void cable(String from, String to) {
        String id = "W" + ++cables;
        Cable c = Cable.of(id, TerminalRef.parse(from, "from"), TerminalRef.parse(to, "to"))
                .withLengthM(1 + random.nextInt(400) / 10.0)
                .withAreaMm2(List.of(1.5, 2.5, 6.0, 16.0, 70.0).get(random.nextInt(5)));
        drawing = drawing.with(c);
        FaultRange f = new FaultRange(20.0 + random.nextInt(9000), 10.0);
        boolean live = random.nextInt(10) > 0;
        results.put(
                id,
                SampleSheet.result(
                        c,
                        live,
                        live ? random.nextInt(2000) / 13.0 : null,
                        live ? random.nextInt(90) / 11.0 : null,
                        live ? f : FaultRange.NONE,
                        live ? f : FaultRange.NONE));
        if (random.nextInt(20) == 0) {
            Finding.Proposed p = random.nextBoolean() ? new Finding.Proposed("gg", 16, 10) : null;
            Severity s = p == null ? Severity.DEFECT : Severity.DANGER;
            findings.add(SampleSheet.finding(
                    "rule", s, Finding.Place.on(id, true, 0), "Something missing", "Said of it.", null, p));
        }
    }
}
