package orlop.study.protection;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import orlop.study.Gap;

/** Gathers gaps; the same gap at the same end of the same cable is kept once. */
final class Gaps {
    private final Map<String, Gap> found = new LinkedHashMap<>();

    void add(Gap gap) {
        found.putIfAbsent(gap.kind() + "|" + gap.cable() + "|" + gap.atFrom() + "|" + gap.device(), gap);
    }

    List<Gap> all() {
        return new ArrayList<>(found.values());
    }
}
