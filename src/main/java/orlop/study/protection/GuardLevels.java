package orlop.study.protection;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import orlop.standards.ProtectiveFamily;
import orlop.standards.RuleSet;
import orlop.study.model.DeviceModel;

/** For each device the least ampacity that it guards; one search a family and rating. */
final class GuardLevels {
    private final RuleSet rules;
    private final Map<String, Map<Double, Double>> known = new HashMap<>();

    GuardLevels(RuleSet rules) {
        this.rules = rules;
    }

    /** Least ampacity in amperes; 0 for a device of which the rating or the rule is not known: it passes. */
    double leastAmpacityA(DeviceModel d) {
        Double rating = d.ratingA();
        return rating == null ? 0 : leastAmpacityA(d.family(), rating);
    }

    /** As {@link #leastAmpacityA(DeviceModel)}, of a device of a family and rating. */
    double leastAmpacityA(Optional<ProtectiveFamily> family, double ratingA) {
        String id = family.isPresent() ? family.get().id() : "";
        Map<Double, Double> ofFamily = known.computeIfAbsent(id, k -> new HashMap<>());
        Double found = ofFamily.get(ratingA);
        if (found == null) {
            found = search(family, ratingA);
            ofFamily.put(ratingA, found);
        }
        return found;
    }

    /** Every rule guards the more the greater the ampacity is, so halving finds the border. */
    private double search(Optional<ProtectiveFamily> family, double ratingA) {
        double low = 0;
        double high = ratingA;
        while (!guards(family, ratingA, high)) {
            low = high;
            high *= 2;
            if (high > ratingA * 64) {
                return Double.POSITIVE_INFINITY;
            }
        }
        for (int n = 0; n < 60; n++) {
            double mid = (low + high) / 2;
            if (mid > 0 && guards(family, ratingA, mid)) {
                high = mid;
            } else {
                low = mid;
            }
        }
        return high;
    }

    private boolean guards(Optional<ProtectiveFamily> family, double ratingA, double ampacityA) {
        return DeviceModel.guards(rules, ampacityA, family, ratingA);
    }
}
