package orlop.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import orlop.network.Attachment;
import orlop.study.flow.Flow;
import orlop.study.flow.Part;
import orlop.study.model.Notes;
import orlop.study.model.Operation;
import orlop.study.model.Plan;
import orlop.study.model.SourceModel;

/** Sources without a resistance that stand side by side: those that agree share, those that don't contradict. */
final class Together {
    private record Stiff(String id, int node, int back, SourceModel model) {}

    private final Operation operation;
    private final List<Stiff> stiff = new ArrayList<>();

    Together(Plan plan, Operation operation) {
        this.operation = operation;
        for (Attachment t : operation.network().attachments()) {
            boolean converter = t.role() == Attachment.Role.CONVERTER;
            SourceModel m = converter ? plan.output(t.component()) : plan.source(t.component());
            int pin = converter ? t.outputPin() : t.pin();
            boolean holds = m != null && (m.part() == Part.EMF || m.part() == Part.LIMITED) && m.second() == 0;
            if (m != null && holds && t.on() && operation.network().feeding().feeds(pin) && !operation.isAc(pin)) {
                int back = converter || t.returnPin() < 0
                        ? -1
                        : operation.assembly().node(t.returnPin());
                stiff.add(new Stiff(t.component().id(), operation.assembly().node(pin), back, m));
            }
        }
    }

    /** Says of sources that hold the same voltage at the same place that they are taken to share alike. */
    void noteSharing(Notes notes) {
        Map<String, List<Object>> alike = new LinkedHashMap<>();
        for (Stiff s : stiff) {
            String key = s.node() + " " + s.back() + " " + s.model().part() + " "
                    + s.model().first();
            alike.computeIfAbsent(key, k -> new ArrayList<>()).add(s.id());
        }
        for (List<Object> ids : alike.values()) {
            if (ids.size() > 1) {
                notes.assumed((String) ids.get(0), "study.assumed.equal-share", List.copyOf(ids));
            }
        }
    }

    /** Says which sources contradict each other, at the first of them; at the place itself if none is to be found. */
    void noteContradiction(Flow.Trouble trouble, String item, String place, String condition, Notes notes) {
        List<Object> ids = quarrelling(trouble);
        if (ids.isEmpty()) {
            notes.add(Remark.Kind.CONTRADICTION, item, condition, "study.contradiction", place);
        } else {
            String first = (String) ids.get(0);
            notes.add(
                    Remark.Kind.CONTRADICTION,
                    first,
                    condition,
                    "study.contradiction-of",
                    List.copyOf(ids),
                    place(ids));
        }
    }

    private String place(List<Object> ids) {
        for (Stiff s : stiff) {
            if (s.id().equals(ids.get(0)) && s.node() >= 0) {
                return operation.network().points().get(s.node()).id();
            }
        }
        return "";
    }

    /** Two at one place with different voltages; where there are none, all of the island. */
    private List<Object> quarrelling(Flow.Trouble trouble) {
        Flow flow = operation.flow();
        List<Stiff> here = stiff.stream()
                .filter(s -> s.model().part() == Part.EMF && s.node() >= 0)
                .filter(s -> flow.islandOf(s.node()) == flow.islandOf(trouble.node()))
                .toList();
        for (Stiff s : here) {
            for (Stiff t : here) {
                boolean same = s.node() == t.node() && s.back() == t.back();
                if (same && s.model().first() != t.model().first()) {
                    return List.of(s.id(), t.id());
                }
            }
        }
        return here.size() < 2
                ? List.of()
                : here.stream().map(s -> (Object) s.id()).toList();
    }
}
