package orlop.study.model;

import java.util.HashMap;
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
        private final Map<Double, AmpacityResult> known = new HashMap<>();

        private Curve(CableSituation situation) {
            this.situation = situation;
        }

        AmpacityResult at(double areaMm2) {
            return known.computeIfAbsent(areaMm2, a -> rules.ampacity().of(situation.withAreaMm2(a)));
        }

        /** The figure that may govern; empty if there is none or if it is doubted. */
        Optional<Rating> rating(double areaMm2, int parallel) {
            return at(areaMm2)
                    .carries()
                    .filter(AmpacityResult.Carries::mayGovern)
                    .map(c -> new Rating(c.amps() * parallel, c.provenance().compareTo(Provenance.MEMORY) >= 0));
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
