package orlop.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.Particulars;
import orlop.drawing.Place;
import orlop.drawing.Source;
import orlop.drawing.Tags;

/** New components: their tags and the systems that they most likely belong to. A person can change both on the card. */
public final class Placings {
    private Placings() {}

    /**
     * A fresh component with every default, in poles that its system has.
     *
     * @param preferred id of the system to take where the kind leaves it open; "" for none
     * @throws IllegalStateException if the drawing has no system
     */
    public static Component fresh(Drawing d, Kind kind, Place place, String preferred) {
        return PolesFit.fitted(d, Component.of(Tags.next(d, kind), kind, place, systems(d, kind, preferred)));
    }

    /** The systems that a component of this kind most likely belongs to: one, or in and out. */
    static List<String> systems(Drawing d, Kind kind, String preferred) {
        List<ElectricalSystem> all = new ArrayList<>();
        d.systems().find(preferred).ifPresent(all::add);
        d.systems().stream().filter(s -> !s.id().equals(preferred)).forEach(all::add);
        if (all.isEmpty()) {
            throw new IllegalStateException("the drawing has no electrical system");
        }
        Particulars p = kind.defaults();
        if (kind.spansSystems()) {
            ElectricalSystem in = first(all, input(p), all.get(0));
            ElectricalSystem out = first(all, s -> output(p).test(s) && !s.id().equals(in.id()), in);
            return in.id().equals(out.id()) ? List.of(in.id()) : List.of(in.id(), out.id());
        }
        return List.of(first(all, only(p), all.get(0)).id());
    }

    private static ElectricalSystem first(
            List<ElectricalSystem> all, Predicate<ElectricalSystem> wanted, ElectricalSystem otherwise) {
        return all.stream().filter(wanted).findFirst().orElse(otherwise);
    }

    private static boolean ac(ElectricalSystem s) {
        return !s.nature().isDc();
    }

    private static boolean plainDc(ElectricalSystem s) {
        return s.nature() == Nature.DC;
    }

    private static Predicate<ElectricalSystem> only(Particulars p) {
        if (p instanceof Source.Battery || p instanceof Source.Alternator || p instanceof Source.Turbine) {
            return Placings::plainDc;
        }
        if (p instanceof Source.PvArray) {
            return s -> s.nature() == Nature.PV;
        }
        boolean shoreOrEngine =
                p instanceof Source.ShorePedestal || p instanceof Source.ShoreInlet || p instanceof Source.Generator;
        return shoreOrEngine ? Placings::ac : s -> true;
    }

    private static Predicate<ElectricalSystem> input(Particulars p) {
        if (p instanceof Conversion.Inverter
                || p instanceof Conversion.InverterCharger
                || p instanceof Conversion.DcDcConverter) {
            return Placings::plainDc;
        }
        if (p instanceof Conversion.ChargeController) {
            return s -> s.nature() == Nature.PV;
        }
        return p instanceof Conversion.PlainConverter ? s -> true : Placings::ac;
    }

    private static Predicate<ElectricalSystem> output(Particulars p) {
        if (p instanceof Conversion.Charger
                || p instanceof Conversion.ChargeController
                || p instanceof Conversion.DcDcConverter) {
            return Placings::plainDc;
        }
        return p instanceof Conversion.PlainConverter ? s -> true : Placings::ac;
    }
}
