package orlop.study.protection;

import java.util.HashMap;
import java.util.Map;
import orlop.standards.RuleSet;
import orlop.study.model.DeviceModel;

/** For each device the least ampacity that it guards; one search a family and rating. */
final class GuardLevels {
    private final RuleSet rules;
    private final Map<String, Double> known = new HashMap<>();

    GuardLevels(RuleSet rules) {
        this.rules = rules;
    }

    /** Least ampacity in amperes; 0 for a device of which the rating or the rule is not known: it passes. */
    double leastAmpacityA(DeviceModel d) {
        Double rating = d.ratingA();
        if (rating == null) {
            return 0;
        }
        double ratingA = rating;
        String key = d.family().map(f -> f.id()).orElse("") + " " + ratingA;
        return known.computeIfAbsent(key, k -> search(d, ratingA));
    }

    /** Every rule guards the more the greater the ampacity is, so halving finds the border. */
    private double search(DeviceModel d, double ratingA) {
        double low = 0;
        double high = ratingA;
        while (!d.guards(rules, high)) {
            low = high;
            high *= 2;
            if (high > ratingA * 64) {
                return Double.POSITIVE_INFINITY;
            }
        }
        for (int n = 0; n < 60; n++) {
            double mid = (low + high) / 2;
            if (mid > 0 && d.guards(rules, mid)) {
                high = mid;
            } else {
                low = mid;
            }
        }
        return high;
    }
}
