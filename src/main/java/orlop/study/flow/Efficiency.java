package orlop.study.flow;

import org.jspecify.annotations.Nullable;
import orlop.drawing.EfficiencyByLoad;

/**
 * What a converter takes for what it gives: output power over efficiency, and its idle power. Where its efficiency over
 * the load and its rating are known, the efficiency is that of the output.
 *
 * @param usual efficiency, above 0 to 1, where it does not follow the load
 * @param idleW taken whatever the output
 * @param ratedW output that a load of 100 % is; NaN where it is not known
 * @param byLoad null where it is not stated
 */
public record Efficiency(
        double usual, double idleW, double ratedW, @Nullable EfficiencyByLoad byLoad) {
    private static final int HALVINGS = 60;

    /** Efficiency while it gives so much; of a negative output that of none. */
    public double at(double outputW) {
        return byLoad == null || !(ratedW > 0) ? usual : byLoad.at(100 * Math.max(0, outputW) / ratedW);
    }

    /** Efficiency at its rated output. */
    public double full() {
        return byLoad == null || !(ratedW > 0) ? usual : byLoad.at(100);
    }

    /** What it takes while it gives so much; where it is not known what it gives, its idle power. */
    public double inputW(double outputW) {
        double given = outputW > 0 ? outputW : 0;
        return given / at(given) + idleW;
    }

    /** What it gives of an input, its idle power aside. */
    public double outputW(double inputW) {
        if (byLoad == null || !(ratedW > 0)) {
            return inputW * usual;
        }
        double low = 0;
        double high = inputW; // at an efficiency of 1
        for (int n = 0; n < HALVINGS; n++) {
            double middle = (low + high) / 2;
            if (middle / at(middle) <= inputW) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
