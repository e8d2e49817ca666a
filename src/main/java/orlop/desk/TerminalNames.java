package orlop.desk;

import java.util.List;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Message;
import orlop.drawing.TerminalRef;

/** Terminals as a person reads them: by name, and what they are where that isn't plain, as in {@code TB1.3 (AC in)}. */
public final class TerminalNames {
    private TerminalNames() {}

    /** The words of a terminal; of one that the drawing hasn't, its name. */
    public static Message of(Drawing d, TerminalRef t) {
        Component c = d.components().get(t.component());
        String role = c == null ? "" : role(c, t.terminal());
        return role.isEmpty()
                ? Message.of("desk.number.plain", t.toString())
                : Message.of("editor.terminal", t.toString(), Message.of(role));
    }

    /** @param end as {@link CableEnds#choices} names it: a terminal, or the tag of a bar alone */
    static Message of(Drawing d, String end) {
        return d.components().contains(end) || end.indexOf('.') < 0
                ? Message.of("desk.number.plain", end)
                : of(d, TerminalRef.parse(end, "end"));
    }

    private static String role(Component c, String terminal) {
        List<String> all = c.particulars().terminals();
        int at = all.indexOf(terminal);
        if (at < 0) {
            return "";
        }
        boolean last = at == all.size() - 1;
        return switch (c.kind()) {
            case CHANGEOVER_SWITCH -> last ? "editor.terminal.common" : "";
            case BATTERY -> "editor.terminal." + (at == 0 ? "battery.1" : "battery.2");
            case SHORE_INLET -> "editor.terminal." + (at == 0 ? "shore-inlet.1" : "shore-inlet.2");
            case INVERTER_CHARGER -> "editor.terminal.inverter-charger." + (at + 1);
            default -> {
                boolean inOut = c.kind() == Kind.DIODE_ISOLATOR || (c.kind().spansSystems() && all.size() == 2);
                yield !inOut ? "" : at == 0 ? "editor.terminal.in" : "editor.terminal.out";
            }
        };
    }
}
