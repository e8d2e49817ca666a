package orlop.study;

import org.jspecify.annotations.Nullable;

/**
 * What holds at a terminal of a component.
 *
 * @param id name of the terminal
 * @param system id of its system
 * @param voltageV between line and neutral in alternating current; null where it is dead
 * @param angleDeg null for DC and where it is dead
 * @param currentA of one phase, r.m.s., with the sign of the active power; positive out of a source, into a load; through an in-line device from 1 to 2
 * @param powerW active power of that current, of all phases together, same sign
 */
public record TerminalResult(
        String id,
        String system,
        @Nullable Double voltageV,
        @Nullable Double angleDeg,
        @Nullable Double currentA,
        @Nullable Double powerW) {}
