package orlop.study.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.IntConsumer;
import orlop.network.Network;
import orlop.network.ReadLater;

/**
 * From which source the drop to each pin is reckoned: of all that deliver current to it, the one with the highest
 * voltage, so that the drop is the greatest.
 *
 * <p>A source delivers current to a pin if it gives current and there is a way from it to the pin along which current
 * flows, or which has no impedance. A converter's output is a source of what lies behind it. Where sources have the
 * same voltage it is the nearest. The way is the shortest of those along which current flows. A pin at the end of a way
 * that carries nothing is reckoned as the place where that way begins. Where nobody gives current, the feeding path of
 * {@link orlop.network.Feeding} stands. So nothing depends on the order in which components are drawn.
 */
public final class Delivery {
    private final Network network;
    private final int[] source;
    private final int[] via;
    private final double[] lengthM;
    private final int[] top;
    private final boolean[] doubtful;

    /** All arrays are by pin; they are kept as they are. */
    Delivery(Network network, int[] source, int[] via, double[] lengthM, int[] top) {
        this.network = network;
        this.source = source;
        this.via = via;
        this.lengthM = lengthM;
        this.top = top;
        doubtful = doubtful();
    }

    private boolean[] doubtful() {
        boolean[] found = new boolean[source.length];
        if (!network.numbering().hasUnknownLength()) {
            return found;
        }
        boolean[] done = new boolean[source.length];
        for (int pin = 0; pin < found.length; pin++) {
            List<Integer> way = new ArrayList<>();
            int at = pin;
            while (at >= 0 && !done[at]) {
                done[at] = true;
                way.add(at);
                at = before(at);
            }
            for (int k = way.size() - 1; k >= 0; k--) {
                int here = way.get(k);
                int up = before(here);
                found[here] = up >= 0 && (found[up] || network.numbering().isOfUnknownLength(via[here]));
            }
        }
        return found;
    }

    /** Whether a cable of unknown length lies on the way, so that neither length nor drop is known. */
    public boolean isDoubtful(int pin) {
        return doubtful[pin];
    }

    /** Number of the attachment from which the pin's drop is reckoned; −1 where nothing feeds the pin. */
    public int source(int pin) {
        return source[pin];
    }

    /**
     * The pin from which the pin's drop is reckoned: where the source gives its current; if the source is a bank that is
     * being charged, the fork at which the charging current leaves the way. −1 where nothing feeds the pin.
     */
    public int topPin(int pin) {
        return top[pin];
    }

    /** The last connection of the way from the source; −1 at its start and where nothing feeds the pin. */
    public int via(int pin) {
        return via[pin];
    }

    /** The pin before this one on that way; −1 at its start and where nothing feeds the pin. */
    public int before(int pin) {
        return via[pin] < 0 ? -1 : network.connections().get(via[pin]).other(pin);
    }

    /** Length of that way; NaN where nothing feeds the pin. */
    public double lengthM(int pin) {
        return lengthM[pin];
    }

    /** Connections from the source to the pin, in that order. */
    public List<Integer> pathTo(int pin) {
        List<Integer> path = new ArrayList<>();
        for (int at = pin; at >= 0 && via[at] >= 0; at = before(at)) {
            path.add(via[at]);
        }
        Collections.reverse(path);
        return path;
    }

    /** Connections from {@link #topPin} to the pin, in that order. */
    public List<Integer> fallTo(int pin) {
        List<Integer> path = new ArrayList<>();
        fallTo(pin, path::add);
        Collections.reverse(path);
        return path;
    }

    /** The same, given one by one from the pin upwards, without a list. */
    public void fallTo(int pin, IntConsumer each) {
        for (int at = pin; at >= 0 && via[at] >= 0 && at != top[pin]; at = before(at)) {
            each.accept(via[at]);
        }
    }

    /** Tags of the components and cables from that source to the pin; empty where nothing feeds it. */
    public List<String> tagsTo(int pin) {
        return source[pin] < 0 ? List.of() : new ReadLater<>(() -> network.tags(source[pin], pathTo(pin)));
    }
}
