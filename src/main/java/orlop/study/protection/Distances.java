package orlop.study.protection;

import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Location;
import orlop.standards.RuleSet;
import orlop.standards.SourceKind;

/**
 * How far from where it starts a cable may run to its first device.
 *
 * <p>IEC 60364-4-43 433.2.2 and 434.2.1 (from memory) permit 3 m where there is no branch, the risk of a short circuit is
 * kept to a minimum and nothing combustible is near. None of that can be seen in a drawing. At a battery it is therefore
 * taken only for cables in a sheath or conduit outside engine spaces and vapour, and never past a branch; elsewhere it
 * is taken and said. Where it is not taken, 0.2 m is, as on small craft (engineering estimate).
 */
final class Distances {
    /** What is left of the permission where its conditions are not met. */
    static final double SHORT_M = 0.2;

    private final Drawing drawing;
    private final RuleSet rules;

    Distances(Drawing drawing, RuleSet rules) {
        this.drawing = drawing;
        this.rules = rules;
    }

    /** Greatest distance in metres. */
    double permittedM(SourceKind kind, Component source, Stretch stretch) {
        double table = rules.firstDeviceWithinM(kind, stretch.sheathed()).value();
        if (!isConditional() || table <= SHORT_M) {
            return table;
        }
        boolean battery = kind == SourceKind.BATTERY;
        boolean exposed = battery && (!stretch.sheathed() || stretch.engineSpace() || isRisky(source));
        return exposed || stretch.deviceCount() > 1 ? SHORT_M : table;
    }

    /** Whether the permission rests on conditions that a drawing does not show. */
    boolean isConditional() {
        return rules.id().equals("iec60364");
    }

    private boolean isRisky(Component source) {
        Location place = drawing.locations().get(source.location());
        return place != null && (place.engineSpace() || place.vapour());
    }
}
