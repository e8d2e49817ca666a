package orlop.store;

import java.util.List;
import java.util.function.Function;
import orlop.drawing.Acceptance;
import orlop.drawing.Cable;
import orlop.drawing.Cableway;
import orlop.drawing.Component;
import orlop.drawing.DayPlan;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Ledger;
import orlop.drawing.Link;
import orlop.drawing.Location;
import orlop.drawing.Measurement;
import orlop.drawing.Note;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Sheet;

/**
 * One list of the file.
 *
 * @param key its key
 * @param of the ledger of the drawing that stands in it
 * @param shape the shape of an item
 * @param id the id of an item
 */
record Section<V>(String key, Function<Drawing, Ledger<V>> of, Function<V, Shape> shape, Function<Object, String> id) {

    static final String VERSION = "orlop";
    static final String VESSEL = "vessel";

    static final Section<ElectricalSystem> SYSTEMS =
            section("systems", ElectricalSystem.class, Drawing::systems, Shapes.SYSTEM, ElectricalSystem::id);
    static final Section<OperatingCondition> CONDITIONS = section(
            "conditions", OperatingCondition.class, Drawing::conditions, Shapes.CONDITION, OperatingCondition::id);
    static final Section<Location> LOCATIONS =
            section("locations", Location.class, Drawing::locations, Shapes.LOCATION, Location::id);
    static final Section<Sheet> SHEETS = section("sheets", Sheet.class, Drawing::sheets, Shapes.SHEET, Sheet::id);
    static final Section<Component> COMPONENTS = new Section<>(
            "components",
            Drawing::components,
            c -> Shapes.component(c.kind()),
            c -> Component.class.cast(c).id());
    static final Section<Cable> CABLES = section("cables", Cable.class, Drawing::cables, Shapes.CABLE, Cable::id);
    static final Section<Link> LINKS = section("links", Link.class, Drawing::links, Shapes.LINK, Link::id);
    static final Section<Cableway> CABLEWAYS =
            section("cableways", Cableway.class, Drawing::cableways, Shapes.CABLEWAY, Cableway::id);
    static final Section<Note> NOTES = section("notes", Note.class, Drawing::notes, Shapes.NOTE, Note::id);
    static final Section<Measurement> MEASUREMENTS =
            section("measurements", Measurement.class, Drawing::measurements, Shapes.MEASUREMENT, Measurement::id);
    static final Section<Acceptance> ACCEPTED =
            section("accepted", Acceptance.class, Drawing::accepted, Shapes.ACCEPTANCE, Acceptance::id);
    static final Section<DayPlan> DAY_PLANS =
            section("dayPlans", DayPlan.class, Drawing::dayPlans, Shapes.DAY_PLAN, DayPlan::id);

    /** Every list, in the order of the file. */
    static final List<Section<?>> ALL = List.of(
            SYSTEMS,
            CONDITIONS,
            LOCATIONS,
            SHEETS,
            COMPONENTS,
            CABLES,
            LINKS,
            CABLEWAYS,
            NOTES,
            MEASUREMENTS,
            ACCEPTED,
            DAY_PLANS);

    private static <V> Section<V> section(
            String key, Class<V> type, Function<Drawing, Ledger<V>> of, Shape shape, Function<V, String> id) {
        return new Section<>(key, of, v -> shape, v -> id.apply(type.cast(v)));
    }
}
