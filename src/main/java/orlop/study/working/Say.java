package orlop.study.working;

import orlop.drawing.Message;
import orlop.standards.RuleLimit;

/** The words of workings. */
final class Say {
    private Say() {}

    /** What a quantity is. */
    static Message what(String word, Object... arguments) {
        return Message.of("study.working.what." + word, arguments);
    }

    /** Where it is from. */
    static Message from(String word, Object... arguments) {
        return Message.of("study.working.from." + word, arguments);
    }

    static Message from(RuleLimit limit) {
        return from("rule", limit.clause(), limit.limit().source());
    }
}
