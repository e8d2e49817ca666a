package orlop.editor;

import java.util.Optional;
import orlop.layout.Rect;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

/** The part of a sheet on which something is drawn. */
final class DrawnPart {
    /** Around what is drawn there is room for the marks of findings. */
    private static final double ROUND_MM = 6;

    private DrawnPart() {}

    /** Empty if nothing is drawn. */
    static Optional<Rect> of(Scene scene) {
        return scene.items().stream()
                .filter(i -> switch (i.role()) {
                    case COMPONENT, BAR, CABLE, LINK, LABEL, NOTE -> true;
                    default -> false;
                })
                .map(SceneItem::bounds)
                .reduce(Rect::union)
                .map(r -> r.grown(ROUND_MM));
    }
}
