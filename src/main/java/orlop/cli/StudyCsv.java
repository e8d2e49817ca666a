package orlop.cli;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import orlop.study.CableResult;
import orlop.study.Results;

/** The cables of one condition as CSV (RFC 4180, comma, decimal point, UTF-8). */
final class StudyCsv {
    private static final List<String> HEADS = List.of(
            "id",
            "from",
            "to",
            "lengthM",
            "areaMm2",
            "auto",
            "leastAreaMm2",
            "governedBy",
            "governingCondition",
            "currentA",
            "ampacityA",
            "conductorC",
            "dropV",
            "dropPercent",
            "dropFromSourcePercent",
            "lengthFromSourceM",
            "lossW",
            "faultFromMaxA",
            "faultFromMinA",
            "faultToMaxA",
            "faultToMinA",
            "protectedBy");

    String text(Results r) {
        StringBuilder out = new StringBuilder(String.join(",", HEADS)).append("\r\n");
        for (CableResult w : r.cables().values()) {
            out.append(row(w)).append("\r\n");
        }
        return out.toString();
    }

    private static String row(CableResult w) {
        Object[] cells = {
            w.id(),
            w.from(),
            w.to(),
            w.lengthM(),
            w.areaMm2(),
            w.auto(),
            w.leastAreaMm2(),
            w.governedBy() == null ? null : JsonValues.word(w.governedBy()),
            w.governingCondition(),
            w.currentA(),
            w.ampacityA(),
            w.conductorC(),
            w.dropV(),
            w.dropPercent(),
            w.dropFromSourcePercent(),
            w.lengthFromSourceM(),
            w.lossW(),
            w.faultFrom().maxA(),
            w.faultFrom().minA(),
            w.faultTo().maxA(),
            w.faultTo().minA(),
            String.join(" ", w.protectedBy())
        };
        return java.util.Arrays.stream(cells)
                .map(c -> quoted(Objects.toString(c, "")))
                .collect(Collectors.joining(","));
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
