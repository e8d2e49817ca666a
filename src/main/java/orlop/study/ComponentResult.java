package orlop.study;

import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Kind;
import orlop.network.ReadLater;

/**
 * What holds for a component.
 *
 * @param id its tag
 * @param kind its kind
 * @param live whether a source feeds it in this condition
 * @param terminals its terminals, those that are connected at least
 * @param dropFromSourcePercent for a load: drop to it at its rated current, the greatest over the sources that deliver current to it,
 *     never negative; null where a cable of unknown length lies on the way, and for all else
 * @param dropLimitPercent for a load: what is permitted; null else
 * @param feedingPath tags of the components and cables on the path to it from the source that delivers current to it with the
 *     highest voltage, source first; empty if dead
 */
public record ComponentResult(
        String id,
        Kind kind,
        boolean live,
        List<TerminalResult> terminals,
        @Nullable Double dropFromSourcePercent,
        @Nullable Double dropLimitPercent,
        List<String> feedingPath) {
    public ComponentResult {
        terminals = List.copyOf(terminals);
        feedingPath = ReadLater.keep(feedingPath);
    }
}
