package orlop.drawing;

import java.util.List;

/**
 * Anything on the drawing that is no cable and no link.
 *
 * @param id its tag, after IEC 81346-2
 * @param name what it is for: "bilge pump"; "" for none
 * @param place where it stands on paper
 * @param systems ids of the systems that it belongs to: one, or two and more for kinds between systems
 * @param refit existing, new, to be removed
 * @param stage how far it has come
 * @param location id of a {@link Location}, "" where nothing is stated
 * @param locked whether it can be neither moved nor deleted
 * @param particulars what is special to its kind
 * @param extras keys that this version does not know
 */
public record Component(
        String id,
        String name,
        Place place,
        List<String> systems,
        RefitStatus refit,
        Stage stage,
        String location,
        boolean locked,
        Particulars particulars,
        Extras extras) {
    public Component {
        Checks.id(id, "id");
        Checks.text(name, "name");
        systems = List.copyOf(systems);
        systems.forEach(s -> Checks.id(s, "system"));
        if (systems.isEmpty() || systems.size() > 6) {
            throw new Checks.OutOfRange(
                    "systems", Message.of("drawing.range.systems", "systems"), "a component has 1 to 6 systems");
        }
        Checks.text(location, "location");
    }

    /** A new component of this kind with every default. */
    public static Component of(String id, Kind kind, Place place, List<String> systems) {
        return of(id, kind.defaults(), place, systems);
    }

    /** A new component with these particulars. */
    public static Component of(String id, Particulars particulars, Place place, List<String> systems) {
        return new Component(
                id, "", place, systems, RefitStatus.NEW, Stage.PLANNED, "", false, particulars, Extras.NONE);
    }

    public Kind kind() {
        return particulars.kind();
    }

    /** The id of the system that a terminal belongs to. */
    public String systemOf(String terminal) {
        return systems.get(Math.min(particulars.systemOf(terminal), systems.size() - 1));
    }

    public Component withId(String v) {
        return new Component(v, name, place, systems, refit, stage, location, locked, particulars, extras);
    }

    public Component withName(String v) {
        return new Component(id, v, place, systems, refit, stage, location, locked, particulars, extras);
    }

    public Component withPlace(Place v) {
        return new Component(id, name, v, systems, refit, stage, location, locked, particulars, extras);
    }

    public Component withSystems(List<String> v) {
        return new Component(id, name, place, v, refit, stage, location, locked, particulars, extras);
    }

    public Component withParticulars(Particulars v) {
        return new Component(id, name, place, systems, refit, stage, location, locked, v, extras);
    }

    public Component withLocked(boolean v) {
        return new Component(id, name, place, systems, refit, stage, location, v, particulars, extras);
    }
}
