package orlop.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import orlop.drawing.Message;
import orlop.study.Remark;
import orlop.study.Results;

/** What the study met and assumed, as findings: one for each item and kind. */
final class RemarkRule implements Rule {
    static final String ASSUMED = "assumed";

    private final String id;
    private final Severity severity;
    private final Remark.Kind kind;

    private RemarkRule(String id, Severity severity, Remark.Kind kind) {
        this.id = id;
        this.severity = severity;
        this.kind = kind;
    }

    static RemarkRule assumed() {
        return new RemarkRule(ASSUMED, Severity.ADVICE, Remark.Kind.ASSUMED);
    }

    static RemarkRule noOperatingPoint() {
        return new RemarkRule("no-operating-point", Severity.DANGER, Remark.Kind.COLLAPSE);
    }

    static RemarkRule contradictorySources() {
        return new RemarkRule("contradictory-sources", Severity.DANGER, Remark.Kind.CONTRADICTION);
    }

    static RemarkRule beyondRating() {
        return new RemarkRule("beyond-rating", Severity.DEFECT, Remark.Kind.BEYOND_RATING);
    }

    static RemarkRule notCalculated() {
        return new RemarkRule("not-calculated", Severity.DEFECT, Remark.Kind.NOT_CALCULATED);
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public List<Finding> check(Case c) {
        Map<String, List<Message>> messages = new LinkedHashMap<>();
        Map<String, List<String>> conditions = new LinkedHashMap<>();
        for (Results r : c.study().byCondition().values()) {
            for (Remark remark : r.remarks()) {
                if (remark.kind() == kind && !remark.message().key().equals("study.assumed.no-length")) {
                    addOnce(messages.computeIfAbsent(remark.item(), k -> new ArrayList<>()), remark.message());
                    addOnce(conditions.computeIfAbsent(remark.item(), k -> new ArrayList<>()), r.condition());
                }
            }
        }
        List<Finding> found = new ArrayList<>();
        messages.forEach((item, said) -> found.add(c.draft(id, severity, c.place(item))
                .says(together(said))
                .in(conditions.getOrDefault(item, List.of()))
                .done()));
        return found;
    }

    /** Sentences one behind the other. */
    private static Message together(List<Message> said) {
        return said.stream()
                .reduce((a, b) -> Message.of("findings.one-then-other", a, b))
                .orElseThrow();
    }

    private static <T> void addOnce(List<T> list, T value) {
        if (!list.contains(value)) {
            list.add(value);
        }
    }
}
