package orlop.cli;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Drawing;
import orlop.drawing.Message;
import orlop.drawing.Quantity;
import orlop.drawing.Unit;
import orlop.drawing.Words;
import orlop.study.CableResult;
import orlop.study.GovernedBy;
import orlop.study.Results;

/** The cables of one condition as a table for a person. */
final class StudyTable {
    private static final String NONE = "–";
    private final Words words = Words.english();

    String text(Drawing drawing, Results r) {
        TextTable table = new TextTable(Stream.of(
                        "cable",
                        "from",
                        "to",
                        "size",
                        "length",
                        "current",
                        "ampacity",
                        "drop",
                        "source",
                        "least",
                        "fault",
                        "guarded")
                .map(k -> words.text("cli.table." + k))
                .toList());
        for (CableResult w : r.cables().values()) {
            table.row(cells(w));
        }
        String vessel = drawing.vessel().name();
        String head = words.text(Message.of("cli.table.title", vessel, r.title()));
        String state = r.converged() ? "" : words.text("cli.table.not-converged") + "\n";
        boolean marked = r.cables().values().stream().anyMatch(CableResult::ampacityFromMemory);
        String mark = marked ? words.text("cli.table.memory") + "\n" : "";
        return head + "\n" + state + "\n" + table.text() + mark;
    }

    private List<String> cells(CableResult w) {
        return List.of(
                w.id(),
                w.from().toString(),
                w.to().toString(),
                size(w),
                show(w.lengthM(), Unit.METRE),
                show(w.currentA(), Unit.AMPERE),
                show(w.ampacityA(), Unit.AMPERE) + (w.ampacityFromMemory() ? " m" : ""),
                show(w.dropPercent(), Unit.PERCENT),
                show(w.dropFromSourcePercent(), Unit.PERCENT),
                least(w),
                fault(w),
                guards(w.protectedBy()));
    }

    /** The two nearest devices, and how many more. */
    private static String guards(List<String> devices) {
        int shown = Math.min(2, devices.size());
        String more = devices.size() > shown ? " +" + (devices.size() - shown) : "";
        return devices.isEmpty() ? NONE : String.join(" ", devices.subList(0, shown)) + more;
    }

    private static String size(CableResult w) {
        if (w.areaMm2() == null) {
            return NONE;
        }
        String runs = w.parallel() > 1 ? w.parallel() + "×" : "";
        String size = runs + w.conductors().count() + "×" + show(w.areaMm2(), Unit.SQUARE_MILLIMETRE);
        return w.auto() ? size + " auto" : size;
    }

    private String least(CableResult w) {
        return w.leastAreaMm2() == null && w.governedBy() == GovernedBy.DROP
                ? words.text("cli.table.not-alone")
                : show(w.leastAreaMm2(), Unit.SQUARE_MILLIMETRE);
    }

    private static String fault(CableResult w) {
        if (w.faultTo().unlimited()) {
            return Words.english().text("cli.table.fault-unlimited");
        }
        Double a = w.faultTo().maxA();
        return a != null && a >= 1_000 ? show(a / 1000, Unit.KILOAMPERE) : show(a, Unit.AMPERE);
    }

    private static String show(@Nullable Double value, Unit unit) {
        return value == null ? NONE : new Quantity(value, unit).text();
    }
}
