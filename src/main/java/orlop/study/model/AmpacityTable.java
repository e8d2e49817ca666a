package orlop.study.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import orlop.drawing.Cable;
import orlop.standards.AmpacityResult;
import orlop.standards.CableSituation;
import orlop.standards.Construction;
import orlop.standards.Laying;
import orlop.standards.Provenance;
import orlop.standards.RuleSet;

/** Asks a rule set for ampacities, each situation once. Not safe for several threads. */
final class AmpacityTable {
    private final RuleSet rules;
    private final Map<CableSituation, Curve> curves = new HashMap<>();

    AmpacityTable(RuleSet rules) {
        this.rules = rules;
    }

    /** Ampacity over area of all cables that lie alike. */
    final class Curve {
        private final CableSituation situation;
        private final List<Figure> known = new ArrayList<>(); // standard areas are few: found faster than in a map

        private Curve(CableSituation situation) {
            this.situation = situation;
        }

        AmpacityResult at(double areaMm2) {
            return figure(areaMm2).result;
        }

        private Figure figure(double areaMm2) {
            for (int k = 0; k < known.size(); k++) {
                if (known.get(k).areaMm2 == areaMm2) {
                    return known.get(k);
                }
            }
            Figure found = new Figure(areaMm2, rules.ampacity().of(situation.withAreaMm2(areaMm2)));
            known.add(found);
            return found;
        }

        /** The figure that may govern; empty if there is none or if it is doubted. */
        Optional<Rating> rating(double areaMm2, int parallel) {
            Figure f = figure(areaMm2);
            if (parallel != f.parallel) {
                f.rating = f.result
                        .carries()
                        .filter(AmpacityResult.Carries::mayGovern)
                        .map(c -> new Rating(c.amps() * parallel, c.provenance().compareTo(Provenance.MEMORY) >= 0));
                f.parallel = parallel;
            }
            return f.rating;
        }
    }

    /** What is known of one area, and the rating of so many runs that was asked for last. */
    private static final class Figure {
        private final double areaMm2;
        private final AmpacityResult result;
        private int parallel;
        private Optional<Rating> rating = Optional.empty();

        Figure(double areaMm2, AmpacityResult result) {
            this.areaMm2 = areaMm2;
            this.result = result;
        }
    }

    Curve curve(Cable w, double ambientC, int loaded) {
        return curves.computeIfAbsent(situation(w, ambientC, loaded), Curve::new);
    }

    private static CableSituation situation(Cable w, double ambientC, int loaded) {
        Cable.Construction how = w.construction();
        Laying laying = switch (how.laying()) {
            case FREE_AIR -> Laying.FREE_AIR;
            case CONDUIT -> Laying.CONDUIT;
            case BUNCHED -> Laying.BUNCHED;
            case SHEATHED -> Laying.ON_SURFACE;
        };
        return new CableSituation(
                1,
                how.insulationC(),
                laying,
                loaded == 1 ? Construction.SINGLE_CORE : Construction.MULTICORE,
                loaded,
                w.parallel() + how.bunchedWith(),
                ambientC,
                how.engineSpace());
    }
}
