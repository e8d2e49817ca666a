package orlop.drawing;

import org.jspecify.annotations.Nullable;

/**
 * The vessel and what holds for the whole drawing.
 *
 * @param name the vessel's name
 * @param documentPrefix what the document numbers start with, such as {@code OSK-E}
 * @param ruleSet id of a rule set of the standards room; "" while none has been chosen
 * @param ambientC ambient temperature where nothing else is stated, −40 to 80
 * @param engineSpaceC ambient temperature of engine spaces, −40 to 90
 * @param faultMethod how fault currents are calculated
 * @param lengthM hull length, not known if null
 * @param buildYear year of build, not known if null
 * @param use private, commercial …; "" if not stated
 * @param flag state of registration, "" if not stated
 * @param owner who signs as drawn, "" if not stated
 * @param extras keys that this version does not know
 */
public record Vessel(
        String name,
        String documentPrefix,
        String ruleSet,
        double ambientC,
        double engineSpaceC,
        FaultMethod faultMethod,
        @Nullable Double lengthM,
        @Nullable Integer buildYear,
        String use,
        String flag,
        String owner,
        Extras extras) {
    public Vessel {
        Checks.text(name, "name");
        Checks.text(documentPrefix, "documentPrefix");
        Checks.text(ruleSet, "ruleSet");
        Checks.between(ambientC, -40, 80, "ambientC");
        Checks.between(engineSpaceC, -40, 90, "engineSpaceC");
        Checks.positiveOrUnknown(lengthM, "lengthM");
        Checks.text(use, "use");
        Checks.text(flag, "flag");
        Checks.text(owner, "owner");
    }

    /** A vessel of which nothing is known but its name. */
    public static Vessel named(String name) {
        return new Vessel(name, "", "", 30, 50, FaultMethod.IEC, null, null, "", "", "", Extras.NONE);
    }
}
