package orlop.scene;

import java.util.List;
import java.util.Map;
import orlop.drawing.Sheet;
import orlop.layout.Rect;

/** Makes scenes. Immutable; safe for use by many threads. */
public final class SceneBuilder {
    /** A builder that uses the program's own symbols. */
    public static SceneBuilder bundled() {
        return new SceneBuilder();
    }

    private SceneBuilder() {}

    /** The sheet that was asked for, as data. The same request gives the same scene. */
    public Scene build(SceneRequest request) {
        Sheet sheet = request.drawing().sheets().require(request.sheet());
        double w = sheet.size().widthMm();
        double h = sheet.size().heightMm();
        Rect drawable = new Rect(20, 10, w - 10, h - 10);
        return new Scene(sheet.id(), sheet.title(), w, h, drawable, List.of(), List.of(), List.of(), Map.of());
    }
}
