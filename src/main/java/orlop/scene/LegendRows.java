package orlop.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.drawing.RefitStatus;
import orlop.drawing.Words;
import orlop.findings.Severity;
import orlop.layout.Placed;
import orlop.layout.Rect;
import orlop.layout.Side;
import orlop.layout.TextMeasure.Weight;
import orlop.layout.Way;
import orlop.scene.TextBlock.Line;
import orlop.scene.TextBlock.Run;
import orlop.study.CableResult;
import orlop.symbols.Bounds;
import orlop.symbols.Symbol;
import orlop.symbols.SymbolLibrary;

/** What is explained on a sheet: only the marks, systems, lines and symbols that stand on it. */
final class LegendRows {
    private static final double MARKER_MM = 3.7;
    private static final double SYMBOL_MM = 3.9;
    private static final double SYMBOL_SCALE = 0.5;
    private static final double WIDE_MM = 8;
    private static final double LEAST_MM = 4.5;
    private static final double HALF_MM = LegendRow.SAMPLE_MM / 2;

    private final SheetView view;
    private final Words words;
    private final List<FoundPlace> found;
    private final SymbolLibrary library;
    private final List<LegendRow> rows = new ArrayList<>();
    private final Set<String> systems = new HashSet<>();
    private final Set<RefitStatus> refits = EnumSet.noneOf(RefitStatus.class);
    private final Map<Kind, Placed> kinds = new LinkedHashMap<>();
    private boolean protective;
    private boolean strokes;
    private boolean links;
    private boolean dead;
    private boolean figures;
    private boolean memory;
    private boolean estimated;
    private boolean switches;

    private LegendRows(SheetView view, List<FoundPlace> found, SymbolLibrary library) {
        this.view = view;
        this.words = view.words();
        this.found = found;
        this.library = library;
        view.ways().values().forEach(this::see);
        view.placed().values().forEach(this::see);
    }

    private void see(Way w) {
        Cable c = view.cable(w);
        if (c == null) {
            links = true;
            return;
        }
        if (view.protective(c.id())) {
            protective = true;
        } else {
            systems.add(view.system(w));
        }
        CableText text = new CableText(view, c, "");
        CableResult r = view.result(c.id());
        strokes = strokes || text.conductorCount() > 0;
        memory = memory || text.memory();
        estimated = estimated || text.estimated();
        dead = dead || view.dead(c.id());
        figures = figures || (r != null && r.live() && r.currentA() != null);
        refits.add(c.refit());
    }

    private void see(Placed p) {
        Component c = p.component();
        dead = dead || view.deadComponent(c.id());
        switches = switches || SwitchText.isSwitch(c.particulars());
        refits.add(c.refit());
        kinds.putIfAbsent(c.kind(), p);
    }

    static List<LegendRow> of(SheetView view, List<FoundPlace> found, SymbolLibrary library) {
        LegendRows r = new LegendRows(view, found, library);
        r.marks();
        r.systems();
        r.lines();
        r.refit();
        r.symbols();
        return r.rows;
    }

    private void row(String key, LegendRow.Sample sample) {
        rows.add(new LegendRow(words.text(key), sample));
    }

    private void marks() {
        for (Severity s : Severity.values()) {
            if (found.stream().anyMatch(f -> f.finding().severity() == s)) {
                row("scene.legend." + s.word(), (x, y) -> Marker.sample(s, x, y, MARKER_MM, false));
            }
        }
        found.stream().filter(f -> f.finding().accepted()).findFirst().ifPresent(f -> {
            Severity s = f.finding().severity();
            row("scene.legend.accepted", (x, y) -> Marker.sample(s, x, y, MARKER_MM, true));
        });
        if (found.stream().anyMatch(f -> f.proposal() != null)) {
            row(
                    "scene.legend.proposed",
                    (x, y) -> List.of(new Mark.SymbolAt(ProposalItems.SYMBOL, x, y, 90, false, Ink.DANGER)));
        }
    }

    private void systems() {
        for (ElectricalSystem s : view.drawing().systems().values()) {
            if (systems.contains(s.id())) {
                String text = s.name().isEmpty() || s.name().contains("\n") ? SystemName.nature(s) : s.name();
                rows.add(new LegendRow(
                        words.text(Message.of("scene.legend.cable", text)),
                        (x, y) -> cable(view.lineName(s.id()), view.ink(s.id()), x, y)));
            }
        }
        if (protective) {
            String name = words.text("scene.protective");
            row("scene.legend.protective", (x, y) -> cable(name, Ink.PROTECTIVE, x, y));
        }
    }

    private static List<Mark> cable(String name, Ink ink, double x, double y) {
        double half = Math.min(HALF_MM - 1, SystemName.width(name) / 2 + 0.7);
        return List.of(
                Mark.Line.solid(SheetComposer.CABLE_MM, ink, new Point(x - HALF_MM, y), new Point(x - half, y)),
                Mark.Line.solid(SheetComposer.CABLE_MM, ink, new Point(x + half, y), new Point(x + HALF_MM, y)),
                SystemName.text(name, x, y, ink));
    }

    private void lines() {
        if (strokes) {
            row("scene.legend.strokes", (x, y) -> {
                List<Mark> marks = new ArrayList<>(line(x, y, SheetComposer.CABLE_MM, Ink.INK));
                marks.addAll(Strokes.marks(x, y, true, 3, Ink.INK));
                return marks;
            });
        }
        if (links) {
            row("scene.legend.link", (x, y) -> line(x, y, SheetComposer.LINK_MM, Ink.INK));
        }
        if (dead) {
            row("scene.legend.dead", (x, y) -> line(x, y, SheetComposer.CABLE_MM, Ink.DEAD));
        }
        if (figures) {
            row("scene.legend.figures", text(words.text("scene.legend.figures.sample"), false));
        }
        if (memory) {
            row("scene.legend.memory", text(CableText.MEMORY, false));
        }
        if (estimated) {
            row("scene.legend.estimated", text(CableText.ESTIMATED, false));
        }
        if (switches) {
            row("scene.legend.switch", (x, y) -> List.of());
        }
    }

    private void refit() {
        if (refits.contains(RefitStatus.EXISTING)) {
            row("scene.legend.existing", text(words.text("scene.legend.tag"), true));
            if (refits.contains(RefitStatus.NEW)) {
                row("scene.legend.new", text(words.text("scene.legend.tag"), false));
            }
        }
        if (refits.contains(RefitStatus.TO_BE_REMOVED)) {
            row("scene.legend.removed", (x, y) -> {
                List<Mark> marks = new ArrayList<>(line(x, y, SheetComposer.CABLE_MM, Ink.INK));
                marks.addAll(Strokes.cross(x - 3, y, Ink.INK));
                marks.addAll(Strokes.cross(x + 3, y, Ink.INK));
                return marks;
            });
        }
    }

    private void symbols() {
        List<LegendRow> all = new ArrayList<>();
        kinds.forEach((kind, p) -> all.add(new LegendRow(words.text(kind.term().key()), sampleMm(p), symbol(p))));
        // The wide ones stand together, so that the columns of the others are narrow.
        all.sort(Comparator.comparing(r -> r.sampleMm() < WIDE_MM));
        rows.addAll(all);
    }

    private double sampleMm(Placed p) {
        Optional<Symbol> s = base(p);
        if (s.isEmpty()) {
            return LegendRow.SAMPLE_MM;
        }
        Bounds b = s.get().bounds();
        return Math.max(LEAST_MM, scale(b) * (b.maxXMm() - b.minXMm()));
    }

    /** The symbol of a component; of one with more terminals than any symbol has, that of its kind. */
    private Optional<Symbol> base(Placed p) {
        if (p.bar() != null) {
            return Optional.empty();
        }
        Optional<Symbol> own = library.named(p.symbol());
        String kind = p.component().kind().word();
        return own.or(() -> library.find(kind, "", "1")).or(() -> library.find(kind, "", ""));
    }

    private static double scale(Bounds b) {
        double wide = b.maxXMm() - b.minXMm();
        double high = b.maxYMm() - b.minYMm();
        return Math.min(SYMBOL_SCALE, Math.min(2 * HALF_MM / wide, SYMBOL_MM / high));
    }

    private LegendRow.Sample symbol(Placed p) {
        Rect bar = p.bar();
        if (bar != null) {
            boolean boxed = !bar.equals(p.ink());
            return (x, y) -> bar(x, y, boxed);
        }
        return (x, y) -> {
            Symbol base = base(p).orElseThrow();
            Bounds b = base.bounds();
            double scale = scale(b);
            double cx = scale * (b.minXMm() + b.maxXMm()) / 2;
            double cy = scale * (b.minYMm() + b.maxYMm()) / 2;
            return List.of(new Mark.SymbolAt(base.name(), x - cx, y - cy, 0, false, Ink.INK, scale));
        };
    }

    private static List<Mark> bar(double x, double y, boolean boxed) {
        List<Mark> marks = new ArrayList<>();
        if (boxed) {
            marks.add(new Mark.Box(
                    Rect.of(x - HALF_MM, y - 1.4, 2 * HALF_MM, 2.8), null, Ink.INK, 0.25, Mark.Dash.SOLID));
        }
        double half = boxed ? HALF_MM - 1 : HALF_MM;
        marks.add(new Mark.Box(Rect.of(x - half, y - 0.6, 2 * half, 1.2), Ink.INK, null, 0, Mark.Dash.SOLID));
        return marks;
    }

    private static List<Mark> line(double x, double y, double width, Ink ink) {
        return List.of(Mark.Line.solid(width, ink, new Point(x - HALF_MM, y), new Point(x + HALF_MM, y)));
    }

    private static LegendRow.Sample text(String s, boolean underlined) {
        TextBlock block = TextBlock.of(List.of(new Line(List.of(new Run(s, Weight.BOLD, Ink.INK, underlined)))));
        return (x, y) -> block.marks(
                Rect.of(x - block.width() / 2, y - block.height() / 2 + 0.2, block.width(), block.height()),
                Side.RIGHT);
    }
}
