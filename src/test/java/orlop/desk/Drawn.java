package orlop.desk;

import java.util.List;
import java.util.Map;
import orlop.drawing.Drawing;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneRequest;
import orlop.study.Results;

/** Scenes of drawings that nothing has been worked out of. */
final class Drawn {
    private Drawn() {}

    static Scene of(Drawing d) {
        Results none = new Results(Results.GOVERNING, "", true, 0, Map.of(), Map.of(), Map.of(), List.of());
        return SceneBuilder.bundled().build(SceneRequest.screen(d, none, List.of(), "1"));
    }
}
