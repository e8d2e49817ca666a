package orlop.findings;

import orlop.drawing.Message;

/** What would cure a finding, free of any position on paper. */
public sealed interface Cure
        permits Cure.InsertDevice, Cure.SetArea, Cure.SetRuns, Cure.ReplaceDevice, Cure.TurnRound, Cure.EnterValue {

    /** The field of a vessel's rule set. */
    String RULE_SET = "ruleSet";

    /** The words on the button: "insert 200 A gG". */
    Message label();

    /**
     * Put a fuse or breaker into a cable.
     *
     * @param cable tag of the cable
     * @param atFrom at which end
     * @param distanceM from that end, 0 to sit on the terminal
     * @param family id of a family of the standards room
     * @param ratingA rated current
     * @param breakingKa breaking capacity
     */
    record InsertDevice(
            Message label,
            String cable,
            boolean atFrom,
            double distanceM,
            String family,
            double ratingA,
            double breakingKa)
            implements Cure {}

    /**
     * Give a cable another area.
     *
     * @param cable tag of the cable
     * @param areaMm2 of each conductor
     */
    record SetArea(Message label, String cable, double areaMm2) implements Cure {}

    /**
     * Lay several equal runs side by side.
     *
     * @param cable tag of the cable
     * @param runs 2 to 20
     * @param areaMm2 of each conductor
     */
    record SetRuns(Message label, String cable, int runs, double areaMm2) implements Cure {}

    /**
     * Change a device's rating and family.
     *
     * @param device tag of the device
     */
    record ReplaceDevice(Message label, String device, String family, double ratingA, double breakingKa)
            implements Cure {}

    /**
     * Lead to terminal 1 what is led to terminal 2, and turn the component so that the lines stay where they are.
     *
     * @param component tag of the component
     */
    record TurnRound(Message label, String component) implements Cure {}

    /**
     * Somebody has to enter what is not known.
     *
     * @param item tag of the component or cable; "" for the vessel
     * @param field the particular's key
     */
    record EnterValue(Message label, String item, String field) implements Cure {}
}
