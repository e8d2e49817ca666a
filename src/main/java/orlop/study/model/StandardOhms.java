package orlop.study.model;

import java.util.Arrays;
import orlop.standards.ConductorClass;
import orlop.standards.Conductors;
import orlop.standards.Finish;

/** Resistances at 20 °C of one sort of conductor, those of the standard areas at hand: they are asked for all the time. */
final class StandardOhms {
    private static final Conductors COPPER = Conductors.published();
    private static final StandardOhms[] SORTS =
            new StandardOhms[ConductorClass.values().length * Finish.values().length];

    static {
        for (ConductorClass strands : ConductorClass.values()) {
            for (Finish finish : Finish.values()) {
                SORTS[index(strands, finish)] = new StandardOhms(strands, finish);
            }
        }
    }

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

    private static int index(ConductorClass strands, Finish finish) {
        return strands.ordinal() * Finish.values().length + finish.ordinal();
    }

    static StandardOhms of(ConductorClass strands, Finish finish) {
        return SORTS[index(strands, finish)];
    }

    private double published(double areaMm2) {
        return COPPER.r20OhmPerKm(areaMm2, strands, finish).value();
    }

    /** Of one conductor, in ohms per kilometre. */
    double perKm(double areaMm2) {
        int found = Arrays.binarySearch(areasMm2, areaMm2);
        return found >= 0 ? ohmPerKm[found] : published(areaMm2);
    }
}
