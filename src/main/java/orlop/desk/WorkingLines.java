package orlop.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import orlop.drawing.Message;
import orlop.drawing.Words;
import orlop.study.Workings;
import orlop.study.working.Figure;
import orlop.study.working.Working;

/** Workings in words, line by line, for the window and for commands. */
public final class WorkingLines {
    private final Words words;

    public WorkingLines(Words words) {
        this.words = words;
    }

    /** {@code u = 100 · ΔU / Un = 5.8 %}, or {@code L = 14 m}. */
    public String sum(Working w) {
        String middle = w.formula().isEmpty() ? "" : w.formula() + " = ";
        return w.symbol() + " = " + middle + w.value().text();
    }

    /** What it is, where it is from and how firm it is. */
    public String says(Working w) {
        StringBuilder s = new StringBuilder(words.text(w.what()));
        if (w.because() != null) {
            s.append(": ").append(words.text(w.because()));
        }
        if (w.provenance() != null) {
            String firm = w.provenance().name().toLowerCase(Locale.ROOT).replace('_', '-');
            s.append(" [")
                    .append(words.text(Message.of("study.working.firm." + firm)))
                    .append(']');
        }
        return s.toString();
    }

    /** All of it as indented text. */
    public String text(Map<Figure, Workings.Shown> workings) {
        List<String> lines = new ArrayList<>();
        String condition = "?";
        for (Workings.Shown shown : workings.values()) {
            if (!shown.condition().equals(condition)) {
                condition = shown.condition();
                lines.add(condition(condition) + ":");
            }
            shown.of().forEach(w -> add(w, 1, lines));
        }
        return lines.isEmpty() ? "" : String.join("\n", lines) + "\n";
    }

    /** In which condition it holds. */
    public String condition(String title) {
        return words.text(
                title.isEmpty()
                        ? Message.of("desk.working.every-condition")
                        : Message.of("desk.working.condition", title));
    }

    private void add(Working w, int depth, List<String> lines) {
        lines.add("  ".repeat(depth) + sum(w) + "   " + says(w));
        w.inputs().forEach(i -> add(i, depth + 1, lines));
    }
}
