package orlop.standards;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The rule sets that a vessel can be checked against. Immutable. */
public final class RuleSets {
    private final Map<String, RuleSet> byId = new LinkedHashMap<>();

    private RuleSets() {
        RuleTables tables = new RuleTables();
        for (CsvRow row : CsvTable.load("rule-sets.csv").rows()) {
            byId.put(row.word("rule_set"), new RuleSet(row, ampacity(row), tables));
        }
    }

    private static Ampacity ampacity(CsvRow row) {
        return switch (row.word("rule_set")) {
            case "abyc" -> SmallCraftAmpacity.abyc();
            case "iso13297" -> SmallCraftAmpacity.iso13297();
            case "iec60364" -> new Iec60364Ampacity();
            case "iec60092" -> new Iec60092Ampacity();
            default -> throw row.wrong("no ampacity table is known for this rule set");
        };
    }

    private static final class Holder {
        static final RuleSets PUBLISHED = new RuleSets();
    }

    /** The published rule sets. */
    public static RuleSets published() {
        return Holder.PUBLISHED;
    }

    /** All of them, in a fixed order. */
    public Collection<RuleSet> all() {
        return Collections.unmodifiableCollection(byId.values());
    }

    /** The rule set of that id, if there is one. */
    public Optional<RuleSet> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /**
     * The rule set of that id.
     *
     * @throws IllegalArgumentException if there is none, naming those there are
     */
    public RuleSet get(String id) {
        return find(id).orElseThrow(
                        () -> new IllegalArgumentException("no rule set " + id + "; there are " + byId.keySet()));
    }
}
