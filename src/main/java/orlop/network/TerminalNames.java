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

/** The names of terminals, {@code COMPONENT.n}, pin by pin; of a bar, those under which cables and links use it. */
final class TerminalNames {
    private final Pins pins;
    private final List<@Nullable List<String>> taps;
    private final List<List<String>> byPin;
    private final List<List<String>> tapsOf;

    /** The pins of the ends of all cables are known, −1 where there is none. */
    TerminalNames(Drawing drawing, Pins pins, int[] fromPin, int[] toPin) {
        this.pins = pins;
        taps = new ArrayList<>(Collections.nCopies(pins.count(), null));
        int n = 0;
        for (Cable w : drawing.cables().values()) {
            tap(fromPin[n], w.from());
            tap(toPin[n++], w.to());
        }
        for (Link l : drawing.links().values()) {
            tap(pins.of(l.from()), l.from());
            tap(pins.of(l.to()), l.to());
        }
        byPin = new ArrayList<>(pins.count());
        tapsOf = new ArrayList<>(pins.count());
        for (int pin = 0; pin < pins.count(); pin++) {
            String terminal = pins.terminalOf(pin);
            List<String> of = taps.get(pin);
            String id = pins.componentOf(pin).id();
            List<String> names = of == null ? List.of() : distinct(of);
            tapsOf.add(names);
            byPin.add(
                    terminal != null
                            ? List.of(id + "." + terminal)
                            : names.stream().map(t -> id + "." + t).toList());
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

    /** Of a bar, the same without the component; empty for all else. */
    List<List<String>> taps() {
        return tapsOf;
    }

    List<List<String>> byPin() {
        return byPin;
    }
}
