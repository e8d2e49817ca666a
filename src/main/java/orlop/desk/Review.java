package orlop.desk;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import orlop.drawing.Drawing;
import orlop.drawing.OnPaper;
import orlop.findings.Checker;
import orlop.findings.Finding;
import orlop.study.Study;
import orlop.study.StudyOptions;

/**
 * What was worked out of a drawing.
 *
 * @param study its results; it holds the drawing that they belong to
 * @param findings what a checker would write in the margin, the gravest first
 */
public record Review(Study study, List<Finding> findings) {
    public Review {
        findings = List.copyOf(findings);
    }

    /** How a review is made. */
    @FunctionalInterface
    public interface Maker {
        /**
         * @param stale asked on the way; once true, the work is given up
         * @throws java.util.concurrent.CancellationException if {@code stale} said so
         */
        Review of(Drawing drawing, BooleanSupplier stale);
    }

    /** Studies and checks a drawing, by any thread. */
    public static Review of(Drawing drawing, BooleanSupplier stale) {
        Study study = Study.of(drawing, StudyOptions.DEFAULT, stale);
        return new Review(study, Checker.check(study));
    }

    /** This review, as that of another drawing: empty unless that differs from this one's on paper only. */
    public Optional<Review> onPaper(Drawing other) {
        return OnPaper.differOnly(drawing(), other)
                ? Optional.of(new Review(study.withDrawing(other), findings))
                : Optional.empty();
    }

    /** The drawing that the figures belong to. */
    public Drawing drawing() {
        return study.drawing();
    }
}
