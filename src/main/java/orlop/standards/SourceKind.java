package orlop.standards;

import java.util.Locale;

/** Where a conductor starts, as far as the distance to its first overcurrent device goes. */
public enum SourceKind {
    /** Straight at a battery's terminal. */
    BATTERY,
    /** At any other point of a DC system that can feed a fault: a busbar, a switch, a distribution point. */
    DC_POINT,
    /** At the output of a charger, alternator, converter or PV controller. */
    CHARGING_SOURCE,
    /** At a generator, an inverter or a transformer. */
    AC_SOURCE,
    /** At the shore inlet. */
    SHORE_INLET;

    static SourceKind parse(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace(' ', '_'));
    }
}
