package orlop.findings;

import java.util.List;
import orlop.study.Study;

/** Goes over a study as an electrician would, with every rule. */
public final class Checker {
    private Checker() {}

    /** All findings, the gravest first, then in the order of the drawing. Accepted ones are marked, not left out. */
    public static List<Finding> check(Study study) {
        return List.of();
    }
}
