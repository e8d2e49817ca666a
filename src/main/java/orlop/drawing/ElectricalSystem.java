package orlop.drawing;

import org.jspecify.annotations.Nullable;

/**
 * A voltage level with its nature. Terminals of different systems never join.
 *
 * @param id short name that stands in the lines: {@code 24}, {@code 230}, {@code PV}
 * @param name in words, "" for none
 * @param nature direct or alternating, phases
 * @param nominalV nominal voltage; of three-phase systems, line to line
 * @param highestV highest in service: charging, equalising, open circuit
 * @param frequencyHz 0 for direct current
 * @param earthing as intended
 * @param vitalDropPercent limit of drop for vital circuits, the rule set's if null
 * @param otherDropPercent limit of drop for other circuits, the rule set's if null
 * @param extras keys that this version does not know
 */
public record ElectricalSystem(
        String id,
        String name,
        Nature nature,
        double nominalV,
        double highestV,
        double frequencyHz,
        Earthing earthing,
        @Nullable Double vitalDropPercent,
        @Nullable Double otherDropPercent,
        Extras extras) {
    public ElectricalSystem {
        Checks.id(id, "id");
        Checks.text(name, "name");
        Checks.notNegative(nominalV, "nominalV");
        Checks.notNegative(highestV, "highestV");
        Checks.between(frequencyHz, 0, 1_000, "frequencyHz");
        Checks.betweenOrUnknown(vitalDropPercent, 0, 100, "vitalDropPercent");
        Checks.betweenOrUnknown(otherDropPercent, 0, 100, "otherDropPercent");
    }

    /** A system of this nature and nominal voltage; the highest voltage is 1.2 times it in DC and 1.1 times in AC. */
    public static ElectricalSystem of(String id, Nature nature, double nominalV) {
        double highestV = defaultHighestV(nature, nominalV);
        double hz = nature.isDc() ? 0 : 50;
        return new ElectricalSystem(id, "", nature, nominalV, highestV, hz, Earthing.UNKNOWN, null, null, Extras.NONE);
    }

    /**
     * What a device in it has to be made for: in DC the highest voltage in service; in AC the nominal voltage, because
     * rated voltages of AC devices include the supply's ±10 % (IEC 60038; from memory).
     */
    public double deviceVoltageV() {
        return nature.isDc() && highestV > 0 ? highestV : nominalV;
    }

    /** What the highest voltage is taken for when a file gives none: 1.2 times nominal in DC, 1.1 times in AC. */
    public static double defaultHighestV(Nature nature, double nominalV) {
        return (nature.isDc() ? 12 : 11) * nominalV / 10;
    }
}
