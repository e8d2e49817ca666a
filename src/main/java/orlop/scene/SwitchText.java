package orlop.scene;

import org.jspecify.annotations.Nullable;
import orlop.drawing.Message;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Particulars;
import orlop.drawing.SwitchPositions;
import orlop.drawing.Words;

/**
 * The position of a switching device: the normal one is that of the drawing, the actual one that of the condition shown.
 *
 * @param normal {@code open}, {@code closed}, {@code 0} or the number of a way; "" for what does not switch
 * @param actual in the same words
 */
record SwitchText(String normal, String actual) {

    static SwitchText of(String component, Particulars p, @Nullable OperatingCondition condition) {
        String normal = normal(p);
        String set = condition == null || normal.isEmpty()
                ? null
                : condition.switches().get(component);
        return new SwitchText(normal, set == null ? normal : set);
    }

    static boolean isSwitch(Particulars p) {
        return !normal(p).isEmpty();
    }

    private static String normal(Particulars p) {
        return SwitchPositions.of(p).isEmpty() ? "" : SwitchPositions.drawn(p);
    }

    /** What stands beside the symbol: nothing where the device is closed, as it normally is. */
    String label(Words words) {
        return normal.equals("closed") && actual.equals("closed") ? "" : full(words);
    }

    /** Both positions in words; "" for what does not switch. */
    String full(Words words) {
        if (normal.isEmpty()) {
            return "";
        }
        return actual.equals(normal)
                ? words.text(Message.of("scene.switch.as-normal", word(words, normal)))
                : words.text(Message.of("scene.switch.now", word(words, actual), word(words, normal)));
    }

    private static String word(Words words, String position) {
        return switch (position) {
            case "open" -> words.text("scene.switch.open");
            case "closed" -> words.text("scene.switch.closed");
            case "0" -> words.text("scene.switch.off");
            default -> words.text(Message.of("scene.switch.way", position));
        };
    }
}
