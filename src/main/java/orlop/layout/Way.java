package orlop.layout;

import java.util.List;
import orlop.drawing.Point;

/**
 * The way that was found for a connection.
 *
 * @param connection what it joins
 * @param start the port at its first point
 * @param end the port at its last point
 * @param points two or more, each next to the last along the grid
 */
public record Way(Connection connection, Port start, Port end, List<Point> points) {
    public Way {
        points = List.copyOf(points);
    }
}
