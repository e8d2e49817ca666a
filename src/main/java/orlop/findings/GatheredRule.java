package orlop.findings;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import orlop.drawing.Component;
import orlop.drawing.Message;
import orlop.drawing.RefitStatus;
import orlop.study.Remark;
import orlop.study.Results;

/** A remark that holds for many items alike, said once for the whole drawing with the items listed. */
final class GatheredRule implements Rule {
    static final String FAULT_HEAT_TIME = "study.assumed.fault-heat-time";
    static final String SHORT_RUN = "study.assumed.short-run";

    private final String id;
    private final String key;

    private GatheredRule(String id, String key) {
        this.id = id;
        this.key = key;
    }

    /** Devices of which nobody knows how much they let through. */
    static GatheredRule heatUnknown() {
        return new GatheredRule("fault-heat-unknown", FAULT_HEAT_TIME);
    }

    /** Cables that run on to their device by a permission with conditions. */
    static GatheredRule shortRuns() {
        return new GatheredRule("unguarded-run", SHORT_RUN);
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public List<Finding> check(Case c) {
        Map<Integer, Message> said = new TreeMap<>(); // in the order of the drawing
        Set<String> conditions = new LinkedHashSet<>();
        for (Results r : c.study().byCondition().values()) {
            for (Remark remark : r.remarks()) {
                if (remark.message().key().equals(key) && stays(c, remark.item())) {
                    said.put(c.order(remark.item()), remark.message());
                    conditions.add(r.condition());
                }
            }
        }
        if (said.isEmpty()) {
            return List.of();
        }
        List<Object> items = new ArrayList<>();
        for (Message m : said.values()) {
            items.add(
                    m.arguments().size() > 1
                            ? Message.of("findings.item-of", m.arguments().toArray())
                            : tag(m));
        }
        return List.of(c.draft(id, Severity.ADVICE, Finding.Place.component(""))
                .says("findings." + id + ".why", items)
                .in(List.copyOf(conditions))
                .done());
    }

    private static Object tag(Message m) {
        return m.arguments().get(0);
    }

    private static boolean stays(Case c, String item) {
        Component k = c.component(item);
        return k == null || k.refit() != RefitStatus.TO_BE_REMOVED;
    }
}
