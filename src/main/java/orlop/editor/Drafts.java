package orlop.editor;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What was typed and couldn't be taken: it comes back when its field is shown again. */
final class Drafts {
    private final Map<String, String> texts = new LinkedHashMap<>();

    void keep(String field, String text) {
        texts.put(field, text);
    }

    void forget(String field) {
        texts.remove(field);
    }

    @Nullable
    String take(String field) {
        return texts.remove(field);
    }

    void clear() {
        texts.clear();
    }
}
