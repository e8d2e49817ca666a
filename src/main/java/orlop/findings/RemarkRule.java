package orlop.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Message;
import orlop.drawing.RefitStatus;
import orlop.study.Remark;
import orlop.study.Results;

/** What the study met and assumed, as findings: one for each item and kind. */
final class RemarkRule implements Rule {
    static final String ASSUMED = "assumed";

    /** Texts whose second argument is the text of a particular that is not known, by its name in the file. */
    private static final Set<String> NOT_KNOWN = Set.of("study.assumed.no-load", "study.assumed.no-output");

    private static final String VALUE = "study.value.";

    /** Texts that one particular of the item would do away with, by its name in the file. */
    private static final Map<String, String> CURED_BY = Map.of(
            "study.assumed.battery-ohm-ah", "capacityAh",
            "study.assumed.shore", "faultMaxA",
            "study.assumed.power-point", "powerPointV",
            "study.not-calculated.inverter-fault", "ratedVa");

    private static final String NO_RULE_SET = "study.assumed.rule-set";

    /**
     * What is not said as a finding: the length has a rule of its own; the others are conventions of the model, which
     * nobody can replace by entering anything. They stand with the assumptions of what is found at the same place.
     */
    private static final Set<String> NOT_SAID = Set.of(
            "study.assumed.no-length",
            "study.assumed.generator-held",
            "study.assumed.charger-factor",
            "study.assumed.drive-fault",
            GatheredRule.FAULT_HEAT_TIME,
            GatheredRule.SHORT_RUN); // gathered

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
        boolean misled = kind == Remark.Kind.COLLAPSE && ReturnRule.any(c.drawing());
        Map<String, List<Message>> messages = new LinkedHashMap<>();
        Map<String, List<String>> conditions = new LinkedHashMap<>();
        for (Results r : c.study().byCondition().values()) {
            for (Remark remark : r.remarks()) {
                if (remark.kind() == kind
                        && !NOT_SAID.contains(remark.message().key())
                        && stays(c, remark.item())
                        && !(misled && ReturnRule.explains(c.drawing(), remark.item()))) {
                    addOnce(messages.computeIfAbsent(remark.item(), k -> new ArrayList<>()), remark.message());
                    addOnce(conditions.computeIfAbsent(remark.item(), k -> new ArrayList<>()), r.condition());
                }
            }
        }
        List<Finding> found = new ArrayList<>();
        messages.forEach((item, said) -> found.add(c.draft(id, severity, c.place(item))
                .says(together(said))
                .in(conditions.getOrDefault(item, List.of()))
                .cure(cure(item, said))
                .done()));
        return found;
    }

    /** Only a person can say which rules hold, and what an item is rated for. */
    private static @Nullable Cure cure(String item, List<Message> said) {
        if (said.stream().anyMatch(m -> m.key().equals(NO_RULE_SET))) {
            return new Cure.EnterValue(Message.of("findings.cure.enter-rule-set"), "", Cure.RULE_SET);
        }
        for (Message m : said) {
            if (NOT_KNOWN.contains(m.key()) && m.arguments().get(1) instanceof Message value) {
                return enter(item, value, value.key().substring(VALUE.length()));
            }
        }
        for (Message m : said) {
            String field = CURED_BY.get(m.key());
            if (field != null) {
                return enter(item, Message.of(VALUE + field), field);
            }
        }
        return null;
    }

    private static Cure enter(String item, Message value, String field) {
        return new Cure.EnterValue(Message.of("findings.cure.enter-value", item, value), item, field);
    }

    /** Whether the item is not to be removed. */
    private static boolean stays(Case c, String item) {
        Component k = c.drawing().components().get(item);
        return k == null || k.refit() != RefitStatus.TO_BE_REMOVED;
    }

    /** Sentences one behind the other. */
    private static Message together(List<Message> said) {
        return said.stream()
                .reduce((a, b) -> Message.of(Finding.TOGETHER, a, b))
                .orElseThrow();
    }

    private static <T> void addOnce(List<T> list, T value) {
        if (!list.contains(value)) {
            list.add(value);
        }
    }
}
