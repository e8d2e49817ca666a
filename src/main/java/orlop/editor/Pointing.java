package orlop.editor;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.findings.Finding;

/** Which finding is pointed at, on the sheet or in the margin: the other side lights it. */
final class Pointing {
    private final List<Runnable> listeners = new ArrayList<>();
    private @Nullable Finding finding;

    void listen(Runnable listener) {
        listeners.add(listener);
    }

    @Nullable
    Finding finding() {
        return finding;
    }

    /** @param f null for none */
    @SuppressWarnings("ReferenceEquality") // two findings may say the same of two places
    void at(@Nullable Finding f) {
        if (finding != f) {
            finding = f;
            listeners.forEach(Runnable::run);
        }
    }
}
