package orlop.scene;

import java.util.List;
import java.util.Objects;
import orlop.drawing.Drawing;
import orlop.drawing.Words;
import orlop.findings.Finding;
import orlop.study.Results;

/**
 * What is to be shown.
 *
 * @param drawing the drawing
 * @param results of the condition to be shown, or the governing ones; items that it lacks are drawn without figures
 * @param findings all findings, in the order that numbers them from 1; those of other sheets are left out but keep their
 *     number
 * @param sheet id of the sheet
 * @param annotations which parts of the cables' annotations are shown
 * @param margin whether the findings are written out in a printed margin; a window has its own
 * @param words the language
 */
public record SceneRequest(
        Drawing drawing,
        Results results,
        List<Finding> findings,
        String sheet,
        Annotations annotations,
        boolean margin,
        Words words) {
    public SceneRequest {
        Objects.requireNonNull(drawing, "drawing");
        Objects.requireNonNull(results, "results");
        findings = List.copyOf(findings);
        Objects.requireNonNull(annotations, "annotations");
        Objects.requireNonNull(words, "words");
        if (!drawing.sheets().contains(sheet)) {
            throw new IllegalArgumentException("there is no sheet " + sheet);
        }
    }

    /** Everything shown, margin printed, in English: a sheet for paper. */
    public static SceneRequest paper(Drawing drawing, Results results, List<Finding> findings, String sheet) {
        return new SceneRequest(drawing, results, findings, sheet, Annotations.ALL, true, Words.english());
    }

    /** As {@link #paper}, but without the printed margin: a sheet for a window that shows the findings beside it. */
    public static SceneRequest screen(Drawing drawing, Results results, List<Finding> findings, String sheet) {
        return paper(drawing, results, findings, sheet).withMargin(false);
    }

    public SceneRequest withMargin(boolean m) {
        return new SceneRequest(drawing, results, findings, sheet, annotations, m, words);
    }

    public SceneRequest withAnnotations(Annotations a) {
        return new SceneRequest(drawing, results, findings, sheet, a, margin, words);
    }

    SceneRequest withFindings(List<Finding> all) {
        return new SceneRequest(drawing, results, all, sheet, annotations, margin, words);
    }
}
