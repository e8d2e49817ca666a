package orlop.study.sizing;

/** What the heat of a fault asks of cables. */
@FunctionalInterface
public interface FaultHeat {
    /** Least standard area that bears it until a device opens; 0 where that is not known. */
    double leastAreaMm2(int cable);
}
