package orlop.editor;

import java.util.Optional;
import java.util.Set;
import orlop.scene.Role;
import orlop.scene.SceneItem;

/** Finds out whether a drag begins on something that a person may set by hand: the leg of a cable, a label. */
final class HandSetGestures {
    private HandSetGestures() {}

    /**
     * The gesture that begins here; none on other things, and on what is selected together with others: that moves as one.
     *
     * @param item under the mouse
     */
    static Optional<Gesture> at(SheetCanvas canvas, Optional<SceneItem> item, Spot from) {
        if (item.isEmpty() || canvas.scene().isEmpty()) {
            return Optional.empty();
        }
        String id = item.get().subject();
        Set<String> selection = canvas.session().state().selection();
        if (selection.size() > 1 && selection.contains(id)) {
            return Optional.empty();
        }
        if (item.get().role() == Role.LABEL) {
            return Optional.of(new LabelGesture(canvas, item.get(), from));
        }
        return item.get().role() == Role.CABLE
                ? canvas.scene()
                        .flatMap(s -> Optional.ofNullable(s.routes().get(id)))
                        .map(r -> new LegGesture(canvas, r, from))
                : Optional.empty();
    }
}
