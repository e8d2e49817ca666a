package orlop.drawing;

/**
 * The whole document. Immutable; two drawings made by one edit from another share nearly everything.
 *
 * <p>A record may point to what is not there (a cable to a component just deleted): {@link Soundness} says so. The
 * store refuses such a file and edits never make one.
 *
 * @param vessel particulars of the whole
 * @param systems electrical systems by id
 * @param conditions operating conditions by id
 * @param locations places aboard by id
 * @param sheets sheets by id, in the order of the register
 * @param components components by tag
 * @param cables cables by tag
 * @param links direct connections by id
 * @param cableways cableways by id
 * @param notes free texts by id
 * @param measurements what was measured, by id
 * @param accepted findings that are lived with, by id
 * @param dayPlans day plans by id
 * @param extras keys that this version does not know
 */
public record Drawing(
        Vessel vessel,
        Ledger<ElectricalSystem> systems,
        Ledger<OperatingCondition> conditions,
        Ledger<Location> locations,
        Ledger<Sheet> sheets,
        Ledger<Component> components,
        Ledger<Cable> cables,
        Ledger<Link> links,
        Ledger<Cableway> cableways,
        Ledger<Note> notes,
        Ledger<Measurement> measurements,
        Ledger<Acceptance> accepted,
        Ledger<DayPlan> dayPlans,
        Extras extras) {

    /** A drawing with a vessel's name and nothing else. */
    public static Drawing empty(String vesselName) {
        return new Drawing(
                Vessel.named(vesselName),
                Ledger.empty(),
                Ledger.empty(),
                Ledger.empty(),
                Ledger.empty(),
                Ledger.empty(),
                Ledger.empty(),
                Ledger.empty(),
                Ledger.empty(),
                Ledger.empty(),
                Ledger.empty(),
                Ledger.empty(),
                Ledger.empty(),
                Extras.NONE);
    }

    public Drawing withVessel(Vessel v) {
        return new Drawing(
                v,
                systems,
                conditions,
                locations,
                sheets,
                components,
                cables,
                links,
                cableways,
                notes,
                measurements,
                accepted,
                dayPlans,
                extras);
    }

    public Drawing withSystems(Ledger<ElectricalSystem> v) {
        return new Drawing(
                vessel,
                v,
                conditions,
                locations,
                sheets,
                components,
                cables,
                links,
                cableways,
                notes,
                measurements,
                accepted,
                dayPlans,
                extras);
    }

    public Drawing withConditions(Ledger<OperatingCondition> v) {
        return new Drawing(
                vessel,
                systems,
                v,
                locations,
                sheets,
                components,
                cables,
                links,
                cableways,
                notes,
                measurements,
                accepted,
                dayPlans,
                extras);
    }

    public Drawing withSheets(Ledger<Sheet> v) {
        return new Drawing(
                vessel,
                systems,
                conditions,
                locations,
                v,
                components,
                cables,
                links,
                cableways,
                notes,
                measurements,
                accepted,
                dayPlans,
                extras);
    }

    public Drawing withComponents(Ledger<Component> v) {
        return new Drawing(
                vessel,
                systems,
                conditions,
                locations,
                sheets,
                v,
                cables,
                links,
                cableways,
                notes,
                measurements,
                accepted,
                dayPlans,
                extras);
    }

    public Drawing withCables(Ledger<Cable> v) {
        return new Drawing(
                vessel,
                systems,
                conditions,
                locations,
                sheets,
                components,
                v,
                links,
                cableways,
                notes,
                measurements,
                accepted,
                dayPlans,
                extras);
    }

    public Drawing withLinks(Ledger<Link> v) {
        return new Drawing(
                vessel,
                systems,
                conditions,
                locations,
                sheets,
                components,
                cables,
                v,
                cableways,
                notes,
                measurements,
                accepted,
                dayPlans,
                extras);
    }

    public Drawing withNotes(Ledger<Note> v) {
        return new Drawing(
                vessel,
                systems,
                conditions,
                locations,
                sheets,
                components,
                cables,
                links,
                cableways,
                v,
                measurements,
                accepted,
                dayPlans,
                extras);
    }

    public Drawing withMeasurements(Ledger<Measurement> v) {
        return new Drawing(
                vessel,
                systems,
                conditions,
                locations,
                sheets,
                components,
                cables,
                links,
                cableways,
                notes,
                v,
                accepted,
                dayPlans,
                extras);
    }

    public Drawing withAccepted(Ledger<Acceptance> v) {
        return new Drawing(
                vessel,
                systems,
                conditions,
                locations,
                sheets,
                components,
                cables,
                links,
                cableways,
                notes,
                measurements,
                v,
                dayPlans,
                extras);
    }

    /** This drawing with the component put in under its id. */
    public Drawing with(Component c) {
        return withComponents(components.with(c.id(), c));
    }

    /** This drawing with the cable put in under its id. */
    public Drawing with(Cable c) {
        return withCables(cables.with(c.id(), c));
    }

    /** This drawing with the link put in under its id. */
    public Drawing with(Link l) {
        return withLinks(links.with(l.id(), l));
    }

    public Drawing with(ElectricalSystem s) {
        return withSystems(systems.with(s.id(), s));
    }

    public Drawing with(OperatingCondition c) {
        return withConditions(conditions.with(c.id(), c));
    }

    public Drawing with(Sheet s) {
        return withSheets(sheets.with(s.id(), s));
    }

    /** Whether a component, cable or link has this id. */
    public boolean hasItem(String id) {
        return components.contains(id) || cables.contains(id) || links.contains(id);
    }
}
