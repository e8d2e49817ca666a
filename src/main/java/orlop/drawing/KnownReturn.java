package orlop.drawing;

/** Whether the return of an engine part is isolated from its block. */
public enum KnownReturn implements Named {
    ISOLATED,
    NOT_ISOLATED,
    UNKNOWN
}
