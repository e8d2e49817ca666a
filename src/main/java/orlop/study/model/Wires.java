package orlop.study.model;

import java.util.List;
import orlop.drawing.Conductors;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Nature;
import orlop.drawing.Phase;

/**
 * The conductors of a three-phase system that is calculated phase by phase: numbers 0 to 2 are L1 to L3, 3 is the
 * neutral; a set of them is a mask with bit {@code 1 << number}.
 */
public final class Wires {
    /** How many there are at most. */
    public static final int COUNT = 4;

    /** Number of the neutral. */
    public static final int N = 3;

    /** Their names by number. */
    public static final List<String> NAMES = List.of("L1", "L2", "L3", "N");

    static final int LINES = 0b0111;
    static final int NEUTRAL = 1 << N;
    static final int ALL = LINES | NEUTRAL;

    private Wires() {}

    /** Whether a set holds a conductor. */
    public static boolean has(int mask, int wire) {
        return (mask & 1 << wire) != 0;
    }

    /** How many line conductors a set holds. */
    public static int lines(int mask) {
        return Integer.bitCount(mask & LINES);
    }

    /** What a load of these phases hangs on; nothing for {@link Phase#ALL}, which takes what reaches it. */
    static int of(Phase phase) {
        return switch (phase) {
            case L1 -> 0b1001;
            case L2 -> 0b1010;
            case L3 -> 0b1100;
            case L1_L2 -> 0b0011;
            case L2_L3 -> 0b0110;
            case L3_L1 -> 0b0101;
            case ALL -> 0;
        };
    }

    static int of(ElectricalSystem system) {
        return system.nature() == Nature.AC3N ? ALL : LINES;
    }

    /** Whether a cable has one circuit of two conductors, so that its phase is to be found. */
    static boolean isPair(Conductors conductors) {
        return conductors == Conductors.L_N || conductors == Conductors.L_N_PE || conductors == Conductors.TWO_WIRE;
    }

    /** Whether a set is one circuit: a phase and the neutral, or two phases. */
    static boolean isCircuit(int mask) {
        boolean neutral = has(mask, N);
        return lines(mask) == (neutral ? 1 : 2);
    }

    /** The two conductors of a circuit; of three phases the three pairs of a delta. */
    public static List<int[]> branches(int mask) {
        if (lines(mask) == 3) {
            return List.of(new int[] {0, 1}, new int[] {1, 2}, new int[] {2, 0});
        }
        if (lines(mask) == 1) {
            return has(mask, N) ? List.of(new int[] {Integer.numberOfTrailingZeros(mask), N}) : List.of();
        }
        return switch (mask & LINES) {
            case 0b011 -> List.of(new int[] {0, 1});
            case 0b110 -> List.of(new int[] {1, 2});
            case 0b101 -> List.of(new int[] {2, 0});
            default -> List.of();
        };
    }

    /** Nominal voltage of one of those branches: line to neutral for a phase and the neutral, else line to line. */
    public static double nominalV(ElectricalSystem system, int mask) {
        return lines(mask) == 2 && !has(mask, N) ? system.nominalV() : Plan.phaseV(system);
    }

    /** As a person reads them: {@code L1, N}. */
    static String words(int mask) {
        StringBuilder words = new StringBuilder();
        for (int wire = 0; wire < COUNT; wire++) {
            if (has(mask, wire)) {
                words.append(words.isEmpty() ? "" : ", ").append(NAMES.get(wire));
            }
        }
        return words.toString();
    }
}
