package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.Nature;
import orlop.drawing.Place;
import orlop.drawing.Poles;
import orlop.drawing.Protection;
import orlop.drawing.Sheet;
import orlop.drawing.TerminalRef;
import orlop.study.CableResult;
import orlop.study.FaultRange;
import orlop.study.Results;

/** Drawings of 20 to 60 components by seeded chance: bars with feeders and drops, some things off the grid or turned. */
public final class RandomSheet {
    private static final List<Kind> LOADS =
            List.of(Kind.MOTOR, Kind.LIGHTING, Kind.ELECTRONICS, Kind.HEATER, Kind.SOCKET_OUTLET, Kind.LOAD);
    private static final List<String> NAMES =
            List.of("", "bilge pump", "saloon lights aft", "radio", "refrigerator in the galley", "Ankerlicht", "x");

    private final Random random;
    private Drawing drawing = Drawing.empty("Test vessel");
    private final List<CableResult> results = new ArrayList<>();
    private int count;
    private int cables;

    private RandomSheet(long seed) {
        random = new Random(seed);
        drawing = drawing.with(ElectricalSystem.of("24", Nature.DC, 24))
                .with(ElectricalSystem.of("230", Nature.AC1, 230))
                .with(ElectricalSystem.of("400", Nature.AC3N, 400))
                .with(Sheet.of("1", "By chance"));
        int rows = 2 + random.nextInt(2);
        int columns = 4 + random.nextInt(4);
        for (int row = 0; row < rows; row++) {
            row(row, rows, columns);
        }
        strays();
    }

    /** A request for the drawing of this seed, with invented figures. */
    public static SceneRequest request(long seed) {
        RandomSheet s = new RandomSheet(seed);
        var map = new java.util.LinkedHashMap<String, CableResult>();
        s.results.forEach(r -> map.put(r.id(), r));
        var results = new Results("x", "By chance", true, 0, java.util.Map.of(), map, java.util.Map.of(), List.of());
        return SceneRequest.paper(s.drawing, results, List.of(), "1");
    }

    private String system(int row) {
        return List.of("24", "230", "400").get(row % 3);
    }

    private void row(int row, int rows, int columns) {
        double height = 230.0 / rows;
        double y = 30 + row * height;
        String system = system(row);
        String bar = "B" + row;
        put(bar, new Distribution.Busbar(null, 280), 177.5, y + 22.5, 0, system);
        String source = add(Kind.SUPPLY, 50 + 5 * random.nextInt(40), y, 0, system);
        cable(source + ".1", bar + ".in");
        double pitch = 270.0 / columns;
        for (int i = 0; i < columns; i++) {
            double x = grid(45 + i * pitch);
            String fuse = "F" + row + i;
            put(fuse, new Protection.Fuse("gg", 16.0, null, null, null, Poles.POSITIVE), x, grid(y + 35), 0, system);
            drawing = drawing.with(Link.of(new TerminalRef(bar, "t" + i), new TerminalRef(fuse, "1")));
            boolean aside = random.nextInt(4) == 0;
            double lx = aside ? grid(x + 5 + random.nextInt(8)) : x;
            String load = add(LOADS.get(random.nextInt(LOADS.size())), lx, grid(y + height - 17), 0, system);
            cable(fuse + ".2", load + ".1");
        }
    }

    /** A few things anywhere where there is room, joined to whatever of their system is there. */
    private void strays() {
        int n = random.nextInt(6);
        for (int i = 0; i < n; i++) {
            double x = 40 + random.nextInt(270) + (random.nextInt(3) == 0 ? 0.7 : 0);
            double y = 30 + random.nextInt(200);
            if (!free(x, y)) {
                continue;
            }
            int row = random.nextInt(2);
            String load = add(Kind.ELECTRONICS, x, y, 90 * random.nextInt(4), system(row));
            cable("B" + row + ".s" + i, load + ".1");
        }
    }

    private boolean free(double x, double y) {
        for (Component c : drawing.components().values()) {
            boolean bar = c.particulars() instanceof Distribution.Busbar;
            double dx = Math.abs(c.place().at().xMm() - x);
            double dy = Math.abs(c.place().at().yMm() - y);
            if (dy < 15 && (bar || dx < 15)) {
                return false;
            }
        }
        return true;
    }

    private static double grid(double mm) {
        return Math.rint(mm / 2.5) * 2.5;
    }

    private String add(Kind kind, double x, double y, int turn, String system) {
        String id = "E" + count++;
        put(id, kind.defaults(), x, y, turn, system);
        return id;
    }

    private void put(String id, orlop.drawing.Particulars p, double x, double y, int turn, String system) {
        Place place = Place.at("1", x, y).withRotationDegree(turn);
        String name = p instanceof Consumer ? NAMES.get(random.nextInt(NAMES.size())) : "";
        drawing = drawing.with(Component.of(id, p, place, List.of(system)).withName(name));
    }

    private void cable(String from, String to) {
        String id = "W" + ++cables;
        Cable c = Cable.of(id, TerminalRef.parse(from, "from"), TerminalRef.parse(to, "to"))
                .withLengthM(1 + random.nextInt(400) / 10.0)
                .withAreaMm2(2.5);
        drawing = drawing.with(c);
        double fault = 20 + random.nextInt(9000);
        FaultRange f = new FaultRange(fault, fault / 2);
        boolean live = random.nextInt(8) > 0;
        results.add(SampleSheet.result(
                c,
                live,
                live ? random.nextInt(2000) / 13.0 : null,
                live ? random.nextInt(90) / 11.0 : null,
                live ? f : FaultRange.NONE,
                live ? f : FaultRange.NONE));
    }
}
