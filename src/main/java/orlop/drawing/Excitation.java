package orlop.drawing;

/** How a generator is excited, which decides what it holds in a fault. */
public enum Excitation implements Named {
    /** Permanent-magnet or auxiliary-winding excitation. */
    SUPPORTED,
    SELF,
    CAPACITOR,
    UNKNOWN
}
