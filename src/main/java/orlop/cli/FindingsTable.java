package orlop.cli;

import java.util.List;
import orlop.drawing.Message;
import orlop.drawing.Words;
import orlop.findings.Finding;

/** Findings as numbered notes for a person. */
final class FindingsTable {
    private final Words words = Words.english();

    String text(List<Finding> findings) {
        if (findings.isEmpty()) {
            return words.text("cli.findings.none") + "\n";
        }
        StringBuilder out = new StringBuilder();
        int number = 0;
        for (Finding f : findings) {
            number++;
            String severity = words.text("cli.severity." + f.severity().word());
            String item = f.place().item();
            String place = item.isEmpty() ? words.text("cli.findings.whole") : item;
            out.append(words.text(Message.of("cli.findings.head", number, severity, place, words.text(f.title()))))
                    .append('\n');
            out.append("    ").append(words.text(f.message())).append('\n');
            if (f.cure() != null) {
                out.append("    ")
                        .append(words.text(
                                Message.of("cli.findings.cure", f.cure().label())))
                        .append('\n');
            }
            if (f.acceptedReason() != null) {
                out.append("    ")
                        .append(words.text(Message.of("cli.findings.accepted", f.acceptedReason())))
                        .append('\n');
            }
        }
        return out.toString();
    }
}
