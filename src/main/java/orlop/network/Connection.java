package orlop.network;

import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Link;

/**
 * What joins two pins: a cable, a link, a way through a device.
 *
 * @param kind what sort of way
 * @param item id of the cable, link or component
 * @param a pin at one end: a cable's {@code from}, a device's terminal 1, a diode's anode
 * @param b pin at the other end
 * @param lengthM counted along a path, 0 or more
 * @param resistanceOhm of a device, 0 or more; of no meaning for a cable
 * @param closed whether current can pass
 * @param contracted whether both ends are one point, because it has no impedance and is closed
 * @param cable the cable, null for all else
 * @param link the link, null for all else
 * @param device the component, null for cables and links
 */
public record Connection(
        Kind kind,
        String item,
        int a,
        int b,
        double lengthM,
        double resistanceOhm,
        boolean closed,
        boolean contracted,
        @Nullable Cable cable,
        @Nullable Link link,
        @Nullable Component device) {
    /** The sorts of ways from pin to pin. */
    public enum Kind {
        CABLE,
        LINK,
        /** Through a fuse, breaker, switch, shunt, terminal or impedance. */
        DEVICE,
        /** From one way of a changeover switch (a) to its common terminal (b). */
        WAY,
        /** From a diode's anode to its cathode. */
        DIODE,
        /** From a sheet to its other end on another sheet. */
        SHEET
    }

    /** The pin at the other end. */
    public int other(int pin) {
        return pin == a ? b : a;
    }

    /** The cable of a connection that is one. */
    public Cable theCable() {
        if (cable == null) {
            throw new IllegalStateException(item + " is no cable");
        }
        return cable;
    }

    /** The component of a connection through one. */
    public Component theDevice() {
        if (device == null) {
            throw new IllegalStateException(item + " is no component");
        }
        return device;
    }
}
