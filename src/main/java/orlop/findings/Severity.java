package orlop.findings;

import orlop.drawing.Named;

/** How grave a finding is. */
public enum Severity implements Named {
    /** Can burn or kill. */
    DANGER,
    /** Breaks the rule set. */
    DEFECT,
    /** Worth knowing: an assumption, a better way. */
    ADVICE;

    /** 0 for the gravest, then upwards. */
    int rank() {
        return this == DANGER ? 0 : this == DEFECT ? 1 : 2;
    }
}
