package orlop.study.model;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import orlop.drawing.Message;
import orlop.study.Remark;

/** Gathers what was met and assumed; the same remark is kept once. */
public final class Notes {
    private final Set<Remark> remarks = new LinkedHashSet<>();

    /** A value was not known. */
    public void assumed(String item, String key, Object... arguments) {
        add(Remark.Kind.ASSUMED, item, "", key, arguments);
    }

    /** Something is not calculated. */
    public void notCalculated(String item, String key, Object... arguments) {
        add(Remark.Kind.NOT_CALCULATED, item, "", key, arguments);
    }

    /** Any remark. */
    public void add(Remark.Kind kind, String item, String condition, String key, Object... arguments) {
        remarks.add(new Remark(kind, item, condition, Message.of(key, arguments)));
    }

    /** All of them in the order in which they came. */
    public List<Remark> all() {
        return new ArrayList<>(remarks);
    }
}
