package orlop.drawing;

import java.util.List;
import java.util.stream.IntStream;

/** The positions in which a kind can stand, by the words of the file. */
public final class SwitchPositions {
    private static final List<String> OPEN_CLOSED = List.of("open", "closed");

    private SwitchPositions() {}

    /** The positions of these particulars: none for what does not switch. */
    public static List<String> of(Particulars p) {
        if (p instanceof Switching.Changeover c) {
            return IntStream.rangeClosed(0, c.ways())
                    .mapToObj(Integer::toString)
                    .toList();
        }
        boolean switches = p instanceof Switching.Isolator
                || p instanceof Switching.Contactor
                || p instanceof Switching.CombiningRelay
                || p instanceof Protection.CircuitBreaker
                || p instanceof Protection.ResidualCurrentDevice;
        return switches ? OPEN_CLOSED : List.of();
    }

    /** The position as drawn; "closed" for what does not switch. */
    public static String drawn(Particulars p) {
        if (p instanceof Switching.Changeover c) {
            return Integer.toString(c.position());
        }
        Position position = Position.CLOSED;
        if (p instanceof Switching.Isolator s) {
            position = s.position();
        } else if (p instanceof Switching.Contactor s) {
            position = s.position();
        } else if (p instanceof Switching.CombiningRelay s) {
            position = s.position();
        } else if (p instanceof Protection.CircuitBreaker s) {
            position = s.position();
        } else if (p instanceof Protection.ResidualCurrentDevice s) {
            position = s.position();
        }
        return position.word();
    }

    /** Where a component stands in a condition: as the condition says, else as drawn. */
    public static String in(OperatingCondition condition, Component c) {
        String said = condition.switches().get(c.id());
        return said != null && of(c.particulars()).contains(said) ? said : drawn(c.particulars());
    }
}
