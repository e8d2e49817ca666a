package orlop.layout;

import java.util.List;
import orlop.drawing.Point;
import orlop.drawing.TerminalRef;

/**
 * A cable or link that wants a way over the sheet.
 *
 * @param id tag of the cable or id of the link
 * @param from where it starts
 * @param to where it ends
 * @param bends corners set by hand, in order; empty leaves it to the router
 */
public record Connection(String id, TerminalRef from, TerminalRef to, List<Point> bends) {
    public Connection {
        bends = List.copyOf(bends);
    }
}
