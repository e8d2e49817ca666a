package orlop.desk;

import orlop.drawing.Acceptance;
import orlop.drawing.Edit;
import orlop.drawing.Message;
import orlop.findings.Finding;

/** Takes back that somebody lives with a finding: it stands open again. */
public final class Reopening {
    private Reopening() {}

    /** Takes back every acceptance of what this rule says of this item. */
    public static Edit of(Finding f) {
        String rule = f.rule();
        String item = f.place().item();
        return Edit.of(Message.of("desk.reopen", rule, item), d -> {
            var kept = d.accepted();
            for (Acceptance a : d.accepted().values()) {
                if (a.rule().equals(rule) && a.item().equals(item)) {
                    kept = kept.without(a.id());
                }
            }
            return d.withAccepted(kept);
        });
    }
}
