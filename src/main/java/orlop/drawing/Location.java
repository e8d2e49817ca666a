package orlop.drawing;

import org.jspecify.annotations.Nullable;

/**
 * A place aboard. Rules on ambient temperature, ignition and ventilation read it.
 *
 * @param id short name
 * @param name in words
 * @param ambientC ambient temperature; null takes the vessel's
 * @param wet whether spray or washing reaches it
 * @param engineSpace whether it is an engine space
 * @param batterySpace whether batteries stand in it
 * @param vapour whether petrol or gas vapour can gather in it
 * @param extras keys that this version does not know
 */
public record Location(
        String id,
        String name,
        @Nullable Double ambientC,
        boolean wet,
        boolean engineSpace,
        boolean batterySpace,
        boolean vapour,
        Extras extras) {
    public Location {
        Checks.id(id, "id");
        Checks.text(name, "name");
        Checks.betweenOrUnknown(ambientC, -40, 90, "ambientC");
    }
}
