package orlop.network;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.drawing.Link;
import orlop.drawing.TerminalRef;

/**
 * The names of terminals, {@code COMPONENT.n}, pin by pin; of a bar, those under which cables and links use it. Whole
 * names are put together when they are asked for: most are never read. Immutable.
 */
final class TerminalNames {
    private final Pins pins;
    private final List<@Nullable List<String>> taps;

    /** The pins of the ends of all cables are known, −1 where there is none. */
    TerminalNames(Drawing drawing, Cable[] cables, Pins pins, int[] fromPin, int[] toPin) {
        this.pins = pins;
        taps = new ArrayList<>(Collections.nCopies(pins.count(), null));
        for (int n = 0; n < cables.length; n++) {
            tap(fromPin[n], cables[n].from());
            tap(toPin[n], cables[n].to());
        }
        for (Link l : drawing.links().values()) {
            tap(pins.of(l.from()), l.from());
            tap(pins.of(l.to()), l.to());
        }
        for (int pin = 0; pin < pins.count(); pin++) {
            List<String> of = taps.get(pin);
            if (of != null) {
                taps.set(pin, distinct(of));
            }
        }
    }

    private void tap(int pin, TerminalRef t) {
        if (pin >= 0 && pins.isBar(pin)) {
            List<String> at = taps.get(pin);
            if (at == null) {
                at = new ArrayList<>();
                taps.set(pin, at);
            }
            at.add(t.terminal());
        }
    }

    /** Each once, in the order in which they come first. */
    private static List<String> distinct(List<String> names) {
        if (names.size() > 24) {
            return List.copyOf(new LinkedHashSet<>(names));
        }
        List<String> kept = new ArrayList<>(names.size());
        for (String name : names) { // of a few that is sooner done than a set is made
            if (!kept.contains(name)) {
                kept.add(name);
            }
        }
        return List.copyOf(kept);
    }

    /** Of a bar, the names without the component; empty for all else. */
    List<String> taps(int pin) {
        List<String> of = taps.get(pin);
        return of == null ? List.of() : of;
    }

    /** One name, or all under which cables and links use a bar. */
    List<String> of(int pin) {
        String terminal = pins.terminalOf(pin);
        String id = pins.componentOf(pin).id();
        return terminal != null
                ? List.of(id + "." + terminal)
                : taps(pin).stream().map(t -> id + "." + t).toList();
    }
}
