package orlop.findings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Acceptance;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Message;
import orlop.drawing.Quantity;
import orlop.drawing.Unit;
import orlop.network.Meetings;
import orlop.standards.ProtectiveFamilies;
import orlop.standards.Provenance;
import orlop.standards.RuleLimit;
import orlop.standards.RuleSet;
import orlop.standards.RuleSets;
import orlop.study.Remark;
import orlop.study.Results;
import orlop.study.Study;

/** What the rules look at, with the words they share. */
final class Case {
    private final Study study;
    private final RuleSet rules;
    private final Map<String, List<Message>> assumptions = new HashMap<>();
    private final Map<String, List<Acceptance>> accepted = new HashMap<>();
    private final Map<String, Item> items = new HashMap<>();

    private @Nullable List<Meetings.Meeting> meetings;

    private record Item(
            int order,
            String name,
            @Nullable Component component,
            @Nullable Cable cable) {}

    Case(Study study) {
        this.study = study;
        rules = RuleSets.published()
                .find(drawing().vessel().ruleSet())
                .orElseGet(() -> RuleSets.published().get("iec60364"));
        for (Remark r : study.governing().remarks()) {
            if (r.kind() == Remark.Kind.ASSUMED) {
                assumptions.computeIfAbsent(r.item(), k -> new ArrayList<>()).add(r.message());
            }
        }
        for (Component k : drawing().components().values()) {
            items.put(k.id(), new Item(items.size(), k.name(), k, null));
        }
        for (Cable w : drawing().cables().values()) {
            items.putIfAbsent(w.id(), new Item(items.size(), w.name(), null, w));
        }
        for (Acceptance a : drawing().accepted().values()) {
            accepted.computeIfAbsent(a.rule() + "|" + a.item(), k -> new ArrayList<>())
                    .add(a);
        }
    }

    /** Place of a component or a cable in the order of the drawing, components first; −1 if there is no such item. */
    int order(String item) {
        Item i = items.get(item);
        return i == null ? -1 : i.order();
    }

    /** The component of this tag; null if the drawing has none. */
    @Nullable
    Component component(String tag) {
        Item i = items.get(tag);
        return i == null ? null : i.component();
    }

    /** The cable of this tag; null if the drawing has none. */
    @Nullable
    Cable cable(String tag) {
        Item i = items.get(tag);
        return i == null ? null : i.cable();
    }

    Study study() {
        return study;
    }

    Drawing drawing() {
        return study.drawing();
    }

    RuleSet rules() {
        return rules;
    }

    Results governing() {
        return study.governing();
    }

    /** The alternating-current sources that can be joined. */
    List<Meetings.Meeting> meetings() {
        List<Meetings.Meeting> known = meetings;
        if (known == null) {
            known = Meetings.of(drawing());
            meetings = known;
        }
        return known;
    }

    /** The system of this id; null if the drawing has none. */
    @Nullable
    ElectricalSystem system(String id) {
        return drawing().systems().get(id);
    }

    /** Where this item is: at a component, on a cable. */
    Finding.Place place(String item) {
        return drawing().cables().contains(item) ? Finding.Place.cable(item) : Finding.Place.component(item);
    }

    /** A tag with what it is for: {@code W12 (bilge pump)}. */
    String named(String item) {
        Item i = items.get(item);
        return i == null || i.name().isEmpty() ? item : item + " (" + i.name() + ")";
    }

    /** Why somebody lives with what this rule says of an item; null if it says anything that nobody has accepted. */
    private @Nullable String reason(String rule, String item, Message says) {
        String reason = null;
        for (Acceptance a : accepted.getOrDefault(rule + "|" + item, List.of())) {
            if (a.messages().isEmpty() || a.messages().containsAll(Finding.keys(says))) {
                reason = a.reason();
            }
        }
        return reason;
    }

    /** Ids of all conditions. */
    List<String> conditions() {
        return List.copyOf(study.byCondition().keySet());
    }

    /** In which conditions, in words: all of them, or by name. */
    Message when(List<String> conditions) {
        return conditions.size() == study.byCondition().size()
                ? Message.of("findings.in-every-condition")
                : Message.of("findings.in-conditions", titles(conditions));
    }

    List<Object> titles(List<String> conditions) {
        List<Object> titles = new ArrayList<>();
        for (String id : conditions) {
            Results r = study.byCondition().get(id);
            titles.add(r == null ? id : r.title());
        }
        return titles;
    }

    static Quantity amps(double value) {
        return Math.abs(value) >= 10_000
                ? new Quantity(value / 1_000, Unit.KILOAMPERE)
                : new Quantity(value, Unit.AMPERE);
    }

    static Quantity percent(double value) {
        return new Quantity(value, Unit.PERCENT);
    }

    static Quantity area(double value) {
        return new Quantity(value, Unit.SQUARE_MILLIMETRE);
    }

    /** The standard's own name of a family; the id where it is not known. */
    static String family(String id) {
        return ProtectiveFamilies.published().find(id).map(f -> f.standard()).orElse(id);
    }

    static String word(Provenance p) {
        return p.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** A finding to be filled in. */
    Draft draft(String rule, Severity severity, Finding.Place place) {
        return new Draft(rule, severity, place);
    }

    /** Collects the parts of a finding. */
    final class Draft {
        private final String rule;
        private final Severity severity;
        private final Finding.Place place;
        private @Nullable Message message;
        private @Nullable Cure cure;
        private Finding.@Nullable Proposed proposed;
        private String clause = "";
        private String provenance = "";
        private List<String> conditions = List.copyOf(study.byCondition().keySet());

        private Draft(String rule, Severity severity, Finding.Place place) {
            this.rule = rule;
            this.severity = severity;
            this.place = place;
        }

        Draft says(String key, Object... arguments) {
            message = Message.of(key, arguments);
            return this;
        }

        Draft says(Message m) {
            message = m;
            return this;
        }

        Draft cure(@Nullable Cure c) {
            cure = c;
            return this;
        }

        Draft proposes(String family, double ratingA, double breakingKa) {
            proposed = new Finding.Proposed(family, ratingA, breakingKa);
            return this;
        }

        Draft by(RuleLimit limit) {
            return by(limit.clause(), word(limit.provenance()));
        }

        Draft by(String clauseText, String provenanceWord) {
            clause = clauseText;
            provenance = provenanceWord;
            return this;
        }

        Draft in(List<String> ids) {
            conditions = ids;
            return this;
        }

        Finding done() {
            Message m = message;
            if (m == null) {
                throw new IllegalStateException("a finding of " + rule + " says nothing");
            }
            return new Finding(
                    rule,
                    severity,
                    place,
                    Message.of("findings." + rule + ".title"),
                    m,
                    cure,
                    proposed,
                    clause,
                    provenance,
                    rule.equals(RemarkRule.ASSUMED) ? List.of() : assumptions.getOrDefault(place.item(), List.of()),
                    conditions,
                    reason(rule, place.item(), m));
        }
    }
}
