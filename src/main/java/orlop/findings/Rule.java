package orlop.findings;

import java.util.List;

/** One thing that a checker looks for. */
interface Rule {
    /** Its word: {@code missing-fuse}. */
    String id();

    /** All findings of this rule, in any order. */
    List<Finding> check(Case c);
}
