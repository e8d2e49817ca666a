package orlop.study;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.study.model.Rating;
import orlop.study.sizing.Sizing;

/**
 * What the sizing says of a cable, which is the same in all conditions.
 *
 * @param areaMm2 calculated with
 * @param nothingFits whether the area is left to us and no standard area would do
 * @param rating what it may carry; null where that is not known
 * @param designA what it is sized for
 * @param leastMm2 the least standard area that would do; infinite if none would
 * @param governedBy what asks for that
 * @param governingCondition number of the condition that asks for it; −1 where it does not depend on one
 * @param sizing what there is to say besides
 */
record SizedCable(
        double areaMm2,
        boolean nothingFits,
        @Nullable Rating rating,
        double designA,
        double leastMm2,
        GovernedBy governedBy,
        int governingCondition,
        CableSizing sizing) {

    /** Of all cables, by number. */
    static List<SizedCable> all(Sizing s, int count) {
        List<SizedCable> all = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            all.add(new SizedCable(
                    s.areaMm2(i),
                    s.nothingFits(i),
                    s.rating(i),
                    s.designA(i),
                    s.leastAreaMm2(i),
                    s.governedBy(i),
                    s.governingCondition(i),
                    s.sizing(i)));
        }
        return all;
    }
}
