package orlop.editor;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.desk.RecordParts;
import orlop.desk.SessionState;
import orlop.drawing.Component;
import orlop.drawing.Conductors;
import orlop.drawing.Drawing;
import orlop.drawing.Message;
import orlop.drawing.Quantity;
import orlop.drawing.Unit;
import orlop.findings.Severity;
import orlop.study.CableResult;
import orlop.study.ComponentResult;
import orlop.study.FaultRange;
import orlop.study.GovernedBy;
import orlop.study.Results;
import orlop.study.TerminalResult;
import orlop.study.working.Figure;

/** The results of a component or cable as lines of its card. */
final class ResultRows {
    private final List<Row> rows = new ArrayList<>();

    private ResultRows() {}

    /**
     * One result.
     *
     * @param label key of what it is
     * @param value as it is shown
     * @param severity how bad it is, null for not at all
     */
    record Row(String label, String value, @Nullable Severity severity) {
        /** The figure whose working can be shown; empty for what has none. */
        Optional<Figure> figure() {
            return Arrays.stream(Figure.values())
                    .filter(f -> f.word().equals(label.equals("design-current") ? "least-area" : label))
                    .findFirst();
        }
    }

    /** The results of this item in the condition that is shown; empty if there are none. */
    static List<Row> of(SessionState s, String item) {
        ResultRows r = new ResultRows();
        Results results = s.results().orElse(null);
        if (results != null) {
            CableResult w = results.cables().get(item);
            ComponentResult c = results.components().get(item);
            if (w != null) {
                r.cable(s.drawing(), w);
            } else if (c != null) {
                r.component(c);
            }
        }
        return r.rows;
    }

    private void add(String label, String value) {
        add(label, value, null);
    }

    private void add(String label, String value, @Nullable Severity severity) {
        rows.add(new Row(label, value, severity));
    }

    private void cable(Drawing d, CableResult w) {
        if (!w.live() && w.conductors() != Conductors.PE) { // which carries nothing in service
            add("current", Texts.of("editor.result.dead"));
        } else if (w.currentA() != null) {
            add("current", current(w), over(Math.abs(w.currentA()), w.ampacityA()));
        }
        if (w.ampacityA() != null) {
            String amps = text(w.ampacityA(), Unit.AMPERE);
            add("ampacity", w.ampacityFromMemory() ? Texts.of("editor.result.from-memory", amps) : amps);
        }
        if (w.designCurrentA() != null) {
            add("design-current", text(w.designCurrentA(), Unit.AMPERE), over(w.designCurrentA(), w.ampacityA()));
        }
        if (w.dropPercent() != null && w.dropV() != null) {
            add("drop", text(w.dropPercent(), Unit.PERCENT) + "  " + text(threeDigits(w.dropV()), Unit.VOLT));
        }
        if (w.dropFromSourcePercent() != null) {
            add("drop-from-source", text(w.dropFromSourcePercent(), Unit.PERCENT));
        }
        fault("fault-near", w.faultFrom());
        fault("fault-far", w.faultTo());
        add("least-area", leastArea(w), tooThin(w));
        if (w.conductorC() != null) {
            add("conductor", text(w.conductorC(), Unit.DEGREE_CELSIUS));
        }
        if (w.lossW() != null) {
            add("loss", text(w.lossW(), Unit.WATT));
        }
        guards(d, w);
    }

    /** A device without a rating guards nothing that could be checked. */
    private void guards(Drawing d, CableResult w) {
        List<String> devices = w.protectedBy();
        if (devices.isEmpty()) {
            add("protected-by", Texts.of("editor.result.nothing"), w.live() ? Severity.DANGER : null);
        } else if (devices.stream().allMatch(id -> unrated(d, id))) {
            add("protected-by", Texts.of("editor.result.unrated", devices.get(0)), Severity.ADVICE);
        } else {
            add("protected-by", String.join(", ", devices));
        }
    }

    private static boolean unrated(Drawing d, String device) {
        Component c = d.components().get(device);
        if (c == null) {
            return false;
        }
        Record p = (Record) c.particulars();
        List<Object> known = RecordParts.of(p.getClass()).stream()
                .filter(part -> part.name().equals("ratingA") || part.name().equals("settingA"))
                .map(part -> Optional.ofNullable(RecordParts.get(p, part.name())))
                .flatMap(Optional::stream)
                .toList();
        return known.isEmpty();
    }

    private static @Nullable Severity over(double currentA, @Nullable Double ampacityA) {
        return ampacityA != null && currentA > ampacityA ? Severity.DANGER : null;
    }

    private static @Nullable Severity tooThin(CableResult w) {
        boolean thin = w.areaMm2() != null
                && w.leastAreaMm2() != null
                && !w.auto()
                && w.areaMm2() < w.leastAreaMm2() * (1 - 1e-9);
        return thin ? Severity.DEFECT : null;
    }

    private static String current(CableResult w) {
        double currentA = w.currentA() == null ? 0 : Math.abs(w.currentA());
        String now = text(currentA, Unit.AMPERE);
        if (w.ampacityA() == null) {
            return now;
        }
        return Texts.of("editor.result.of", now, text(w.ampacityA(), Unit.AMPERE));
    }

    private static String leastArea(CableResult w) {
        if (w.leastAreaMm2() == null && w.governedBy() == GovernedBy.DROP) {
            return Texts.of("editor.result.not-alone");
        }
        if (w.leastAreaMm2() == null || w.governedBy() == null) {
            return Texts.of("editor.result.no-area");
        }
        Message why = Message.of("editor.governed." + CardWords.word(w.governedBy()));
        return Texts.of("editor.result.area", text(w.leastAreaMm2(), Unit.SQUARE_MILLIMETRE), why);
    }

    private void fault(String label, FaultRange f) {
        if (f.unlimited()) {
            add(label, Texts.of("editor.result.fault-unlimited"));
        }
        if (f.maxA() != null) {
            double min = f.minA() == null ? f.maxA() : f.minA();
            add(label, Texts.of("editor.result.range", kiloAmpere(min), kiloAmpere(f.maxA())));
        }
    }

    private static String kiloAmpere(double a) {
        return a >= 1000 ? text(a / 1000, Unit.KILOAMPERE) : text(a, Unit.AMPERE);
    }

    private void component(ComponentResult c) {
        if (!c.live()) {
            add("state", Texts.of("editor.result.dead"));
        }
        boolean several = c.terminals().size() > 1;
        int shown = 0;
        for (TerminalResult t : c.terminals()) {
            if (t.voltageV() != null && shown++ < 8) {
                rows.add(new Row(several ? "#" + t.id() : "terminal", terminal(t), null));
            }
        }
        if (c.dropFromSourcePercent() != null) {
            Double limit = c.dropLimitPercent();
            boolean over = limit != null && c.dropFromSourcePercent() > limit;
            String drop = text(c.dropFromSourcePercent(), Unit.PERCENT);
            add(
                    "drop-to-load",
                    limit == null ? drop : Texts.of("editor.result.of", drop, text(limit, Unit.PERCENT)),
                    over ? Severity.DEFECT : null);
        }
    }

    private static String terminal(TerminalResult t) {
        StringBuilder s = new StringBuilder(text(t.voltageV() == null ? 0 : t.voltageV(), Unit.VOLT));
        if (t.currentA() != null) {
            s.append("  ").append(text(t.currentA(), Unit.AMPERE));
        }
        if (t.powerW() != null) {
            boolean kilo = Math.abs(t.powerW()) >= 1000;
            s.append("  ").append(kilo ? text(t.powerW() / 1000, Unit.KILOWATT) : text(t.powerW(), Unit.WATT));
        }
        return s.toString();
    }

    /** No length of a cable is known so well that a fourth digit of its drop would mean anything. */
    private static double threeDigits(double value) {
        return new BigDecimal(value).round(new MathContext(3)).doubleValue();
    }

    private static String text(double value, Unit unit) {
        return new Quantity(value, unit).text();
    }
}
