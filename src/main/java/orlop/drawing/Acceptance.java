package orlop.drawing;

import java.util.List;

/**
 * A finding that somebody has looked at and lives with.
 *
 * @param id short name
 * @param rule id of the rule
 * @param item id of the component or cable that the finding speaks of, "" for the whole drawing
 * @param reason why it is accepted; never empty
 * @param by who accepted it
 * @param date as written
 * @param messages keys of what the finding said when it was accepted: saying something else, it stands open again. Empty:
 *     whatever the rule says of the item
 * @param extras keys that this version does not know
 */
public record Acceptance(
        String id,
        String rule,
        String item,
        String reason,
        String by,
        String date,
        List<String> messages,
        Extras extras) {
    public Acceptance {
        messages = List.copyOf(messages);
        messages.forEach(m -> Checks.text(m, "messages"));
        Checks.id(id, "id");
        Checks.id(rule, "rule");
        if (!item.isEmpty()) {
            Checks.id(item, "item");
        }
        Checks.text(reason, "reason");
        Checks.text(by, "by");
        Checks.text(date, "date");
        if (reason.isBlank()) {
            throw new Checks.OutOfRange(
                    "reason", Message.of("drawing.range.reason", "reason"), "an accepted finding needs a reason");
        }
    }
}
