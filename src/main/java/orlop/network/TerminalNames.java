package orlop.network;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.drawing.Link;
import orlop.drawing.TerminalRef;

/** The names of terminals, {@code COMPONENT.n}, pin by pin; of a bar, those under which cables and links use it. */
final class TerminalNames {
    private final Pins pins;
    private final List<@Nullable Set<String>> taps;
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
            Set<String> of = taps.get(pin);
            String id = pins.componentOf(pin).id();
            List<String> names = of == null ? List.of() : List.copyOf(of);
            tapsOf.add(names);
            byPin.add(
                    terminal != null
                            ? List.of(id + "." + terminal)
                            : names.stream().map(t -> id + "." + t).toList());
        }
    }

    private void tap(int pin, TerminalRef t) {
        if (pin >= 0 && pins.isBar(pin)) {
            Set<String> at = taps.get(pin);
            if (at == null) {
                at = new LinkedHashSet<>();
                taps.set(pin, at);
            }
            at.add(t.terminal());
        }
    }

    /** Of a bar, the same without the component; empty for all else. */
    List<List<String>> taps() {
        return tapsOf;
    }

    List<List<String>> byPin() {
        return byPin;
    }
}
