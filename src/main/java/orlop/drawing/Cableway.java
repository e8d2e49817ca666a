package orlop.drawing;

/**
 * A stretch of tray, conduit or trunking along which cables run.
 *
 * @param id short name
 * @param name in words
 * @param from name of the place at one end
 * @param to name of the place at the other end
 * @param lengthM 0 or more
 * @param extras keys that this version does not know
 */
public record Cableway(String id, String name, String from, String to, double lengthM, Extras extras) {
    public Cableway {
        Checks.id(id, "id");
        Checks.text(name, "name");
        Checks.text(from, "from");
        Checks.text(to, "to");
        Checks.notNegative(lengthM, "lengthM");
    }
}
