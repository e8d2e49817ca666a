package orlop.scene;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Conductors;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Message;
import orlop.drawing.RefitStatus;
import orlop.drawing.Stage;
import orlop.drawing.Unit;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.TextBlock.Line;
import orlop.scene.TextBlock.Run;
import orlop.standards.WireGauge;
import orlop.study.CableResult;
import orlop.study.GovernedBy;

/** The annotation of a cable: {@code W12  2×6 mm² · 14 m} over {@code 18.4 A · 8.5 % · Ik 0.27 kA}. */
final class CableText {
    /** Behind an area that rests on a value from memory. */
    static final String MEMORY = "†";

    /** Before a length that nobody has measured. */
    static final String ESTIMATED = "≈";

    private final SheetView view;
    private final Cable cable;
    private final String system;
    private final @Nullable CableResult result;
    private @Nullable Content content;
    private @Nullable TextBlock block;
    private @Nullable String size;
    private @Nullable String length;
    private @Nullable String figures;

    CableText(SheetView view, Cable cable, String system) {
        this.view = view;
        this.cable = cable;
        this.system = system;
        this.result = view.result(cable.id());
    }

    TextBlock block() {
        TextBlock made = block;
        if (made == null) {
            made = made();
            block = made;
        }
        return made;
    }

    private TextBlock made() {
        Content c = content();
        List<Line> lines = new ArrayList<>();
        List<Run> first = new ArrayList<>();
        first.add(new Run(c.tag, Weight.BOLD, Ink.INK, c.existing));
        if (!c.what.isEmpty()) {
            first.add(new Run(c.what, Weight.REGULAR, Ink.INK));
        }
        lines.add(new Line(first));
        if (!c.figures.isEmpty()) {
            lines.add(Line.of(c.figures, Weight.REGULAR, c.ink));
        }
        if (!c.status.isEmpty()) {
            lines.add(Line.of(c.status, Weight.REGULAR, Ink.QUIET));
        }
        return TextBlock.of(lines);
    }

    /** The same words in lines of at most so many parts, for where the room is narrow. */
    TextBlock narrow(int inLine) {
        List<Line> lines = new ArrayList<>();
        for (Line line : block().lines()) {
            for (Run run : line.runs()) {
                List<String> parts = Format.parts(run.text());
                for (int i = 0; i < parts.size(); i += inLine) {
                    String text = Format.dotted(parts.subList(i, Math.min(parts.size(), i + inLine)));
                    lines.add(Line.of(text, run.weight(), run.ink()));
                }
            }
        }
        return TextBlock.of(lines);
    }

    /**
     * What the text says and how; from equal ones come equal blocks.
     *
     * @param what size and length as far as they are shown
     * @param ink of the figures
     */
    record Content(
            String tag,
            boolean existing,
            String what,
            String figures,
            Ink ink,
            String status,
            String size,
            String length,
            int conductors) {}

    Content content() {
        Content c = content;
        if (c == null) {
            String what = Format.dotted(List.of(
                    view.request().annotations().size() ? size() : "",
                    view.request().annotations().length() ? length() : ""));
            c = new Content(
                    cable.id(),
                    cable.refit() == RefitStatus.EXISTING,
                    what,
                    figures(),
                    live() ? view.ink(system) : Ink.DEAD,
                    status(),
                    size(),
                    length(),
                    conductorCount());
            content = c;
        }
        return c;
    }

    boolean removed() {
        return cable.refit() == RefitStatus.TO_BE_REMOVED;
    }

    private boolean live() {
        return result == null || result.live();
    }

    /** {@code 2×6 mm²}, {@code 3G2.5 mm²} with a protective conductor, {@code 2 runs of 2×70 mm²} for two runs. */
    String size() {
        String s = size;
        if (s == null) {
            s = sized();
            size = s;
        }
        return s;
    }

    private String sized() {
        Double area = cable.areaMm2() != null ? cable.areaMm2() : result == null ? null : result.areaMm2();
        String mm2 = area == null ? "? " + Unit.SQUARE_MILLIMETRE.sign() : Format.q(area, Unit.SQUARE_MILLIMETRE);
        Conductors c = conductors();
        String shown = mm2 + (area == null || !view.request().annotations().gauge() ? "" : gauge(area));
        String one = c == null ? shown : c.count() + (c.hasPe() && c != Conductors.PE ? "G" : "×") + shown;
        String all = cable.parallel() > 1 ? view.words().text(Message.of("scene.runs", cable.parallel(), one)) : one;
        return memory() ? all + MEMORY : all;
    }

    private static String gauge(double areaMm2) {
        String around = WireGauge.around(areaMm2);
        return around.isEmpty() ? "" : " (" + around + ")";
    }

    /** Whether nobody has measured its length. */
    boolean estimated() {
        return cable.lengthEstimated() && cable.lengthM() != null;
    }

    /** Whether the area hangs on an ampacity that is known from memory only. */
    boolean memory() {
        return result != null
                && (result.governedBy() == GovernedBy.AMPACITY || result.governedBy() == GovernedBy.DEVICE)
                && (result.ampacityFromMemory() || result.sizing().fromMemory());
    }

    /** How many conductors one run has; 0 if that is not known. */
    int conductorCount() {
        Conductors c = conductors();
        return c == null ? 0 : c.count();
    }

    private @Nullable Conductors conductors() {
        if (cable.conductors() != null) {
            return cable.conductors();
        }
        if (result != null) {
            return result.conductors();
        }
        ElectricalSystem s = view.drawing().systems().get(system);
        return s != null && s.nature().isDc() ? Conductors.TWO_WIRE : null;
    }

    private String length() {
        String s = length;
        if (s == null) {
            s = measured();
            length = s;
        }
        return s;
    }

    private String measured() {
        Double m = cable.lengthM();
        if (m == null && result != null && result.lengthM() > 0) {
            m = result.lengthM();
        }
        if (m == null) {
            return "? " + Unit.METRE.sign();
        }
        return estimated() ? ESTIMATED + " " + Format.q(m, Unit.METRE) : Format.q(m, Unit.METRE);
    }

    private String figures() {
        String s = figures;
        if (s == null) {
            s = calculated();
            figures = s;
        }
        return s;
    }

    private String calculated() {
        if (result == null) {
            return "";
        }
        if (result.conductors() == Conductors.PE) {
            return ""; // it is there for faults and carries nothing in service
        }
        if (!result.live()) {
            return view.dead();
        }
        Annotations a = view.request().annotations();
        Double current = result.currentA();
        Double drop = result.dropPercent();
        Double fault = farFault(result);
        return Format.dotted(List.of(
                a.current() && current != null ? Format.q(Math.abs(current), Unit.AMPERE) : "",
                a.drop() && drop != null ? Format.percent(Math.abs(drop)) : "",
                a.fault() ? fault(fault) : ""));
    }

    private String fault(@Nullable Double ampere) {
        if (ampere != null) {
            return view.words().text(Message.of("scene.fault", Format.fault(ampere)));
        }
        boolean endless = result != null
                && (result.faultFrom().unlimited() || result.faultTo().unlimited());
        return endless ? view.words().text("scene.fault-unlimited") : "";
    }

    /** The highest fault current at the end where it is lower: the far one, whichever way the cable was drawn. */
    static @Nullable Double farFault(CableResult r) {
        Double from = r.faultFrom().maxA();
        Double to = r.faultTo().maxA();
        if (from == null || to == null) {
            return to == null ? from : to;
        }
        return Math.min(from, to);
    }

    private String status() {
        String removed =
                cable.refit() == RefitStatus.TO_BE_REMOVED ? view.words().text("scene.removed") : "";
        String traced = cable.stage() == Stage.NOT_TRACED ? view.words().text("scene.not-traced") : "";
        return Format.dotted(List.of(removed, traced));
    }

    private String refit() {
        return view.words().text("scene.refit." + cable.refit().word());
    }

    /** {@code W6, cable from F4 to M2: 2×6 mm² · 16 m; 11.5 A · 5.6 % · Ik 0.24 kA}. */
    String words() {
        String text = Format.dotted(List.of(size(), length()));
        String figures = figures();
        String stage = cable.stage() == Stage.NOT_TRACED ? ", " + view.words().text("scene.not-traced") : "";
        return view.words()
                .text(Message.of(
                        "scene.cable",
                        cable.id(),
                        cable.from().component(),
                        cable.to().component(),
                        (figures.isEmpty() ? text : text + "; " + figures) + "; " + refit() + stage));
    }

    /** The study's values, for a machine. */
    Map<String, String> data() {
        Map<String, String> data = new LinkedHashMap<>();
        data.put("from", cable.from().toString());
        data.put("to", cable.to().toString());
        data.put("system", system);
        put(data, "length-m", cable.lengthM());
        put(data, "area-mm2", cable.areaMm2() != null ? cable.areaMm2() : result == null ? null : result.areaMm2());
        data.put("auto", Boolean.toString(cable.auto()));
        data.put("conductors", Integer.toString(conductorCount()));
        data.put("parallel", Integer.toString(cable.parallel()));
        data.put("refit", cable.refit().word());
        data.put("stage", cable.stage().word());
        if (result != null) {
            data.put("live", Boolean.toString(result.live()));
            put(data, "current-a", result.currentA());
            put(data, "drop-percent", result.dropPercent());
            put(data, "drop-v", result.dropV());
            put(data, "drop-from-source-percent", result.dropFromSourcePercent());
            put(data, "ampacity-a", result.ampacityA());
            put(data, "least-area-mm2", result.leastAreaMm2());
            put(data, "fault-max-a", farFault(result));
        }
        return data;
    }

    private static void put(Map<String, String> data, String key, @Nullable Double value) {
        if (value != null) {
            data.put(key, Format.data(value));
        }
    }
}
