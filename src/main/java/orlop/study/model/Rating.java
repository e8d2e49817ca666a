package orlop.study.model;

/**
 * What a cable may carry.
 *
 * @param amps all runs together, with all factors
 * @param fromMemory whether it rests on a value from memory or weaker
 */
public record Rating(double amps, boolean fromMemory) {}
