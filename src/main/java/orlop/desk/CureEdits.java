package orlop.desk;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Kind;
import orlop.drawing.Message;
import orlop.drawing.Particulars;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Protection;
import orlop.drawing.Tags;
import orlop.findings.Cure;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.standards.ProtectiveFamilies;
import orlop.standards.ProtectiveFamily;

/** Turns what a finding would have done into one edit, or into the field that a person has to fill in. */
public final class CureEdits {
    private CureEdits() {}

    /** What a cure comes to. */
    public sealed interface Action permits Made, Asked {}

    /**
     * An edit that cures.
     *
     * @param edit one step of the history
     * @param select what should be selected afterwards
     */
    public record Made(Edit edit, Set<String> select) implements Action {}

    /**
     * A person has to enter a value.
     *
     * @param item tag of the component or cable whose card is to be shown; "" for the particulars of the vessel
     * @param field name of the particular
     */
    public record Asked(String item, String field) implements Action {}

    /**
     * The edit or the question behind a cure.
     *
     * @param scenes finds the scene of a sheet, on whose lines a place for a device is looked for
     */
    public static Action of(Drawing d, Cure cure, Scenes scenes) {
        if (cure instanceof Cure.InsertDevice c) {
            return insert(d, c, scenes);
        }
        if (cure instanceof Cure.SetArea c) {
            Cable w = d.cables().get(c.cable());
            return w == null ? gone(c.label(), c.cable()) : made(Edits.change(w.withAreaMm2(c.areaMm2())), w.id());
        }
        if (cure instanceof Cure.ReplaceDevice c) {
            return replace(d, c);
        }
        if (cure instanceof Cure.SetRuns c) {
            Cable w = d.cables().get(c.cable());
            return w == null
                    ? gone(c.label(), c.cable())
                    : made(Edits.change(w.withParallel(c.runs()).withAreaMm2(c.areaMm2())), w.id());
        }
        if (cure instanceof Cure.TurnRound c) {
            return made(TurnedRound.edit(c.label(), c.component()), c.component());
        }
        if (cure instanceof Cure.EnterValue c) {
            return new Asked(c.item(), c.field());
        }
        throw new AssertionError("unknown cure " + cure);
    }

    /** Gives the scene of a sheet of the drawing at work. */
    @FunctionalInterface
    public interface Scenes {
        Scene of(String sheet);
    }

    private static Action insert(Drawing d, Cure.InsertDevice c, Scenes scenes) {
        Cable w = d.cables().get(c.cable());
        if (w == null) {
            return gone(c.label(), c.cable());
        }
        Particulars p = device(c.family(), c.ratingA(), c.breakingKa());
        Component end = d.components().require((c.atFrom() ? w.from() : w.to()).component());
        String system = end.systemOf((c.atFrom() ? w.from() : w.to()).terminal());
        Place place = place(scenes.of(end.place().sheet()), w, c.atFrom(), p.kind(), end);
        Component device =
                PolesFit.fitted(d, Component.of(Tags.next(d, p.kind()), p, place, java.util.List.of(system)));
        return made(Edits.insert(w.id(), device, share(w, c)), device.id());
    }

    /** Where along the cable: right at the terminal, or as far from it as the cure says. */
    private static double share(Cable w, Cure.InsertDevice c) {
        Double length = w.lengthM();
        double fromEnd = length == null || length == 0 ? 0 : Math.min(1, c.distanceM() / length);
        return c.atFrom() ? fromEnd : 1 - fromEnd;
    }

    private static Place place(Scene scene, Cable w, boolean atFrom, Kind kind, Component end) {
        Route route = scene.routes().get(w.id());
        InlinePlaces places =
                route == null ? null : InlinePlaces.of(scene, kind).orElse(null);
        if (route == null || places == null) {
            Point p = end.place().at();
            return new Place(end.place().sheet(), p.plus(0, atFrom ? 15 : -15), 0, false, null);
        }
        return places.nearEnd(route, atFrom);
    }

    /** A fuse or a breaker, as its family is; a family that nobody knows is taken for a fuse. */
    private static Particulars device(String family, double ratingA, double breakingKa) {
        boolean breaker = ProtectiveFamilies.published()
                .find(family)
                .filter(f -> f.kind() == ProtectiveFamily.Kind.BREAKER)
                .isPresent();
        return breaker
                ? new Protection.CircuitBreaker(
                        family, ratingA, null, breakingKa, null, null, Poles.POSITIVE, Position.CLOSED)
                : new Protection.Fuse(family, ratingA, breakingKa, null, null, Poles.POSITIVE);
    }

    private static Action replace(Drawing d, Cure.ReplaceDevice c) {
        Component old = d.components().get(c.device());
        if (old == null) {
            return gone(c.label(), c.device());
        }
        Particulars fresh;
        if (old.particulars() instanceof Protection.Fuse f) {
            fresh = new Protection.Fuse(c.family(), c.ratingA(), c.breakingKa(), null, f.resistanceOhm(), f.poles());
        } else if (old.particulars() instanceof Protection.CircuitBreaker b) {
            fresh = new Protection.CircuitBreaker(
                    c.family(), c.ratingA(), null, c.breakingKa(), null, b.resistanceOhm(), b.poles(), b.position());
        } else if (old.particulars() instanceof Protection.ResidualCurrentDevice r) {
            fresh = new Protection.ResidualCurrentDevice(
                    c.ratingA(),
                    r.residualMilliA(),
                    r.type(),
                    r.overcurrent(),
                    c.family(),
                    c.breakingKa(),
                    r.poles(),
                    r.position());
        } else {
            return new Asked(old.id(), "ratingA");
        }
        return made(Edits.change(old.withParticulars(fresh)), old.id());
    }

    private static Action gone(Message label, @Nullable String item) {
        return new Made(
                Edit.of(label, before -> {
                    throw new Edit.Refusal(Message.of("drawing.refuse.gone", String.valueOf(item)));
                }),
                Set.of());
    }

    private static Made made(Edit edit, String select) {
        return new Made(edit, Set.of(select));
    }
}
