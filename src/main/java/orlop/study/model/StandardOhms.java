package orlop.study.model;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import orlop.standards.ConductorClass;
import orlop.standards.Conductors;
import orlop.standards.Finish;
import orlop.standards.Sourced;

/** Resistances at 20 °C of one sort of conductor, those of the standard areas at hand: they are asked for all the time. */
final class StandardOhms {
    private static final Conductors COPPER = Conductors.published();
    private static final Map<ConductorClass, Map<Finish, StandardOhms>> SORTS = sorts();

    private final ConductorClass strands;
    private final Finish finish;
    private final double[] areasMm2;
    private final double[] ohmPerKm;

    private StandardOhms(ConductorClass strands, Finish finish) {
        this.strands = strands;
        this.finish = finish;
        areasMm2 = COPPER.standardAreasMm2().stream().mapToDouble(a -> a).toArray();
        ohmPerKm = Arrays.stream(areasMm2).map(this::published).toArray();
    }

    private static Map<ConductorClass, Map<Finish, StandardOhms>> sorts() {
        Map<ConductorClass, Map<Finish, StandardOhms>> all = new EnumMap<>(ConductorClass.class);
        for (ConductorClass strands : ConductorClass.values()) {
            Map<Finish, StandardOhms> finishes = new EnumMap<>(Finish.class);
            for (Finish finish : Finish.values()) {
                finishes.put(finish, new StandardOhms(strands, finish));
            }
            all.put(strands, finishes);
        }
        return all;
    }

    static StandardOhms of(ConductorClass strands, Finish finish) {
        return Objects.requireNonNull(Objects.requireNonNull(SORTS.get(strands)).get(finish));
    }

    private double published(double areaMm2) {
        return sourced(areaMm2).value();
    }

    /** As {@link #perKm}, with its source. */
    Sourced sourced(double areaMm2) {
        return COPPER.r20OhmPerKm(areaMm2, strands, finish);
    }

    /** Of one conductor, in ohms per kilometre. */
    double perKm(double areaMm2) {
        int found = Arrays.binarySearch(areasMm2, areaMm2);
        return found >= 0 ? ohmPerKm[found] : published(areaMm2);
    }
}
