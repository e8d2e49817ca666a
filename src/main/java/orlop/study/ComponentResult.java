package orlop.study;

import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Kind;
import orlop.network.FeedingPath;

/**
 * What holds for a component.
 *
 * @param id its tag
 * @param kind its kind
 * @param live whether a source feeds it in this condition
 * @param terminals its terminals, those that are connected at least
 * @param dropFromSourcePercent for a load: drop from the source to it at its rated current; null else
 * @param dropLimitPercent for a load: what is permitted; null else
 * @param feedingPath tags of the components and cables on the path from the source to it, source first; empty if dead
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
        feedingPath = FeedingPath.keep(feedingPath);
    }
}
