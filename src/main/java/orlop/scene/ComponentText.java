package orlop.scene;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Group;
import orlop.drawing.Message;
import orlop.drawing.RefitStatus;
import orlop.drawing.Sheet;
import orlop.drawing.Stage;
import orlop.drawing.Unit;
import orlop.layout.TextMeasure;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.TextBlock.Line;
import orlop.scene.TextBlock.Run;
import orlop.study.ComponentResult;
import orlop.study.PointResult;
import orlop.study.TerminalResult;

/** The texts of a component: tag, name, main particulars, and what a source gives or a bar has. */
final class ComponentText {
    private static final double WIDE_MM = 36;
    /** Width of a component's text in a narrow room. */
    static final double NARROW_MM = 14;

    private static final double INSIDE_MM = 14;
    private static final int MOST_LINES = 3;

    private final SheetView view;
    private final Component component;
    private final Ink ink;
    private @Nullable List<Part> said;
    private @Nullable String particulars;
    private @Nullable Object content;

    ComponentText(SheetView view, Component component) {
        this.view = view;
        this.component = component;
        this.ink = view.ink(component.systems().get(0));
    }

    TextBlock block() {
        return bar() ? barBlock() : symbolBlock(WIDE_MM, MOST_LINES);
    }

    /** The same words in short lines, for where the room is narrow. */
    TextBlock narrow() {
        return bar() ? barBlock() : symbolBlock(NARROW_MM, Integer.MAX_VALUE);
    }

    private boolean bar() {
        return component.particulars() instanceof Distribution.Bar;
    }

    private TextBlock symbolBlock(double wideMm, int mostLines) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(List.of(tag(Ink.INK))));
        Setting set = new Setting(lines, wideMm, mostLines);
        said().forEach(p -> set.add(p.text, p.ink));
        return TextBlock.of(lines);
    }

    /** A text and its ink. */
    private record Part(String text, Ink ink) {}

    /** What is set in lines below the tag. */
    private List<Part> said() {
        List<Part> all = said;
        if (all == null) {
            all = List.of(
                    new Part(component.name(), Ink.INK),
                    new Part(inside().isEmpty() ? mate() : "", brokenLink() ? Ink.DEFECT : Ink.QUIET),
                    new Part(particulars(), Ink.QUIET),
                    new Part(result(), dead() ? Ink.DEAD : ink),
                    new Part(switching().label(view.words()), Ink.INK),
                    new Part(status(), Ink.QUIET));
            said = all;
        }
        return all;
    }

    /** Equal for texts of one component that say the same and are set alike in any room. */
    Object content() {
        Object c = content;
        if (c == null) {
            c = made();
            content = c;
        }
        return c;
    }

    private Object made() {
        return bar() ? List.of(block(), result()) : List.of(tag(Ink.INK), said(), switching());
    }

    /** The tag, underlined where the thing is aboard already. */
    private Run tag(Ink tagInk) {
        return new Run(component.id(), Weight.BOLD, tagInk, component.refit() == RefitStatus.EXISTING);
    }

    private SwitchText switching() {
        return SwitchText.of(component.id(), component.particulars(), view.condition());
    }

    private TextBlock barBlock() {
        List<Run> runs = new ArrayList<>();
        runs.add(tag(dead() ? Ink.DEAD : ink));
        String name = component.name().replace('\n', ' ');
        if (!name.isEmpty()) {
            String cut = TextBlock.cut(name, 2 * WIDE_MM, TextBlock.SIZE_MM, Weight.REGULAR);
            runs.add(new Run(cut, Weight.REGULAR, Ink.INK));
        }
        String figures = Format.dotted(List.of(particulars(), voltage(), status()));
        if (!figures.isEmpty()) {
            runs.add(new Run(figures, Weight.REGULAR, Ink.QUIET));
        }
        return TextBlock.of(List.of(new Line(runs)));
    }

    /** Adds texts to lines of a width. */
    private record Setting(List<Line> lines, double wideMm, int mostLines) {
        void add(String text, Ink ink) {
            if (!text.isEmpty()) {
                for (String s : TextBlock.wrapped(text, wideMm, TextBlock.SIZE_MM, Weight.REGULAR, mostLines)) {
                    String line = s.endsWith(" ·") ? s.substring(0, s.length() - 2) : s;
                    if (!line.isEmpty()) {
                        lines.add(Line.of(line, Weight.REGULAR, ink));
                    }
                }
            }
        }
    }

    private String particulars() {
        String s = particulars;
        if (s == null) {
            s = ParticularsText.of(view.drawing(), component, view.words());
            particulars = s;
        }
        return s;
    }

    private String status() {
        String removed =
                component.refit() == RefitStatus.TO_BE_REMOVED ? view.words().text("scene.removed") : "";
        String traced = component.stage() == Stage.NOT_TRACED ? view.words().text("scene.not-traced") : "";
        List<String> others = view.drawnOver().getOrDefault(component.id(), List.of());
        String over =
                others.isEmpty() ? "" : view.words().text(Message.of("scene.drawn-over", String.join(", ", others)));
        return Format.dotted(List.of(removed, traced, over));
    }

    /** For a sheet link: where its other end is. */
    private String mate() {
        return mate("scene.mate");
    }

    private String mate(String key) {
        if (!(component.particulars() instanceof Distribution.SheetLink link)) {
            return "";
        }
        Component mate = view.drawing().components().get(link.mate());
        Sheet sheet =
                mate == null ? null : view.drawing().sheets().get(mate.place().sheet());
        if (brokenLink() || mate == null || sheet == null) {
            return view.words().text("scene.no-mate");
        }
        String number = SheetNumber.of(view.drawing(), sheet.id(), 0).text();
        String field = Zones.of(sheet.size()).at(mate.place().at());
        return view.words().text(Message.of(key, number, field));
    }

    /** Whether this is a sheet link whose other end is not there, or does not point back. */
    private boolean brokenLink() {
        if (!(component.particulars() instanceof Distribution.SheetLink link)) {
            return false;
        }
        Component mate = view.drawing().components().get(link.mate());
        return mate == null
                || !view.drawing().sheets().contains(mate.place().sheet())
                || !(mate.particulars() instanceof Distribution.SheetLink back)
                || !back.mate().equals(component.id());
    }

    /** What stands within the symbol: of an upright sheet link, the other end's sheet and field; "" if nothing fits. */
    String inside() {
        if (component.place().rotationDegree() % 180 != 0 || brokenLink()) {
            return "";
        }
        String text = mate("scene.mate");
        double width = TextMeasure.bundled().widthMm(text, TextBlock.SIZE_MM, Weight.BOLD);
        return width <= INSIDE_MM ? text : "";
    }

    private boolean dead() {
        return view.deadComponent(component.id());
    }

    private String result() {
        TerminalResult t = first();
        boolean source = component.kind().group() == Group.SOURCES;
        if (!source || t == null || t.voltageV() == null) {
            return source && dead() ? view.words().text("scene.off") : "";
        }
        return Format.dotted(List.of(
                Format.q(t.voltageV(), Unit.VOLT), t.currentA() == null ? "" : Format.q(t.currentA(), Unit.AMPERE)));
    }

    private @Nullable TerminalResult first() {
        ComponentResult r = view.request().results().components().get(component.id());
        return r == null || r.terminals().isEmpty() ? null : r.terminals().get(0);
    }

    private String voltage() {
        PointResult p = view.request().results().points().get(component.id());
        if (p != null) {
            return p.voltageV() == null
                    ? (dead() ? view.dead() : view.words().text("scene.not-calculated"))
                    : Format.q(p.voltageV(), Unit.VOLT);
        }
        ElectricalSystem s = view.drawing().systems().get(component.systems().get(0));
        return s == null ? "" : Format.q(s.nominalV(), Unit.VOLT);
    }

    /** {@code F4, fuse: bilge pump, 16 A gG}. */
    String words() {
        String term = view.words().text(component.kind().term());
        List<String> rest = new ArrayList<>();
        String refit = view.words().text("scene.refit." + component.refit().word());
        String stage = component.stage() == Stage.NOT_TRACED ? view.words().text("scene.not-traced") : "";
        String position = switching().full(view.words());
        for (String s : List.of(component.name(), particulars(), mate(), result(), position, refit, stage)) {
            if (!s.isEmpty()) {
                rest.add(s);
            }
        }
        String what = component.id() + ", " + term;
        return rest.isEmpty() ? what : what + ": " + String.join(", ", rest);
    }

    /** Kind and results, for a machine. */
    Map<String, String> data() {
        Map<String, String> data = new LinkedHashMap<>();
        data.put("kind", component.kind().word());
        data.put("system", String.join(" ", component.systems()));
        data.put("refit", component.refit().word());
        data.put("stage", component.stage().word());
        if (SwitchText.isSwitch(component.particulars())) {
            data.put("position", switching().actual());
            data.put("normal-position", switching().normal());
        }
        TerminalResult t = first();
        if (t != null && t.voltageV() != null) {
            data.put("voltage-v", Format.data(t.voltageV()));
        }
        if (t != null && t.currentA() != null) {
            data.put("current-a", Format.data(t.currentA()));
        }
        return data;
    }
}
