package orlop.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A label on its way to its place: where it stands meanwhile, what was decided on it at each stage, and how that went the
 * last time. Once all are placed, only what serves the next time is left, and nothing changes any more.
 */
final class LabelState {
    final Label label;
    /** The same label when the sheet was labelled the last time; null if it was not there. */
    @Nullable
    LabelState was;
    /** Whether it is not as it was, or was not there. */
    boolean other;

    @Nullable
    Spot chosen;

    Label.@Nullable Put settled;

    Ground.@Nullable Text text;

    Decisions.@Nullable Far far;

    private final List<Decisions.@Nullable Decision> decisions = new ArrayList<>(3); // by stage
    private @Nullable Candidates candidates;
    private @Nullable Boolean beyond;
    private Label.@Nullable Put put;

    LabelState(Label label) {
        this.label = label;
    }

    String id() {
        return label.id();
    }

    /** What was decided on it at a stage; null if nothing was. */
    Decisions.@Nullable Decision decision(int stage) {
        return stage < decisions.size() ? decisions.get(stage) : null;
    }

    /** How many stages there were up to the last at which something was decided on it. */
    int stages() {
        return decisions.size();
    }

    void decided(int stage, Decisions.Decision d) {
        while (decisions.size() <= stage) {
            decisions.add(null);
        }
        decisions.set(stage, d);
    }

    Spot chosen() {
        return Objects.requireNonNull(chosen);
    }

    /** Made once, and only for those that are decided anew. */
    Candidates candidates() {
        Candidates c = candidates;
        if (c == null) {
            c = new Candidates(label.spots());
            candidates = c;
        }
        return c;
    }

    /** Whether what it speaks of lies outside the area: its text stays with it and is not drawn in from afar. */
    boolean beyond(Rect area) {
        Boolean b = beyond;
        if (b == null) {
            b = !candidates().any(s -> area.contains(s.rect()));
            beyond = b;
        }
        return b;
    }

    /** Where it stands in the end. */
    Label.Put put() {
        return Objects.requireNonNull(put);
    }

    /** Is told where it stands in the end. */
    void placed(Label.Put where) {
        put = where;
    }

    /** The chain ends here: what was before the earlier labelling is not needed. */
    void forget() {
        was = null;
        chosen = null;
        settled = null;
        text = null;
        candidates = null;
    }
}
