package orlop.study;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.network.NetPoint;
import orlop.network.Numbering;
import orlop.study.model.Plan;

/** The ids of a drawing's cables, components and points, which the results of all conditions share. */
final class Ids {
    private final Rows.Index cables;
    private final Rows.Index components;
    private @Nullable List<NetPoint> lastPoints;
    private Rows.Index lastIndex = new Rows.Index(List.of());

    Ids(Plan plan) {
        cables = new Rows.Index(plan.cables().stream().map(w -> w.cable().id()).toList());
        Numbering numbering = plan.numbering();
        List<String> tags = new ArrayList<>(numbering.componentCount());
        for (int i = 0; i < numbering.componentCount(); i++) {
            tags.add(numbering.component(i).id());
        }
        components = new Rows.Index(tags);
    }

    Rows.Index cables() {
        return cables;
    }

    Rows.Index components() {
        return components;
    }

    /** Of the points of a network; networks that share their points get the same. */
    Rows.Index points(List<NetPoint> points) {
        if (points != lastPoints) {
            lastIndex = new Rows.Index(points.stream().map(NetPoint::id).toList());
            lastPoints = points;
        }
        return lastIndex;
    }
}
