package orlop.findings;

import orlop.drawing.Named;

/** How grave a finding is. */
public enum Severity implements Named {
    /** Can burn or kill. */
    DANGER,
    /** Breaks the rule set. */
    DEFECT,
    /** Worth knowing: an assumption, a better way. */
    ADVICE
}
