package orlop.network;

import java.util.List;

/**
 * One or more terminals that are joined without impedance.
 *
 * @param id the component that names it: a bar before a junction before anything else; with its terminal if another
 *     point has that name
 * @param system id of its system
 * @param terminals {@code COMPONENT.n}, in the order of the drawing
 */
public record NetPoint(String id, String system, List<String> terminals) {
    public NetPoint {
        terminals = ReadLater.keep(terminals);
    }
}
