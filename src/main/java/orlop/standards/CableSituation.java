package orlop.standards;

import java.util.Objects;

/**
 * What the ampacity of a conductor depends on.
 *
 * @param areaMm2 of one conductor, mm², above 0
 * @param insulationC temperature the insulation is rated for, °C, 40 to 300
 * @param laying how the cable lies
 * @param construction cables of one core or cores in one sheath
 * @param loadedConductors of this circuit that carry current: 2 for DC and single phase, 3 or 4 for three phases; 1 to 4
 * @param circuits circuits that lie together, this one included (parallel runs of one circuit count each); 1 is alone
 * @param ambientC temperature of the air in that place, °C, −40 to 90
 * @param engineSpace whether it lies in an engine space
 */
public record CableSituation(
        double areaMm2,
        double insulationC,
        Laying laying,
        Construction construction,
        int loadedConductors,
        int circuits,
        double ambientC,
        boolean engineSpace) {
    /** Refuses numbers out of range. */
    public CableSituation {
        Checks.positive(areaMm2, "areaMm2");
        Checks.between(insulationC, 40, 300, "insulationC");
        Objects.requireNonNull(laying, "laying");
        Objects.requireNonNull(construction, "construction");
        Checks.between(loadedConductors, 1, 4, "loadedConductors");
        Checks.between(circuits, 1, 1000, "circuits");
        Checks.between(ambientC, -40, 90, "ambientC");
    }

    /** The same with another area: what sizing asks along a series of areas. */
    public CableSituation withAreaMm2(double otherMm2) {
        return new CableSituation(
                otherMm2, insulationC, laying, construction, loadedConductors, circuits, ambientC, engineSpace);
    }
}
