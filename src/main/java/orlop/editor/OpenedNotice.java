package orlop.editor;

import java.util.Optional;
import orlop.desk.SessionState;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.drawing.SheetSize;

/** What a person is told of a drawing that was just opened, and may not see. */
final class OpenedNotice {
    private OpenedNotice() {}

    /** How much of the sheet that is shown lies beyond its paper; empty if nothing does. */
    static Optional<Message> of(SessionState s) {
        return s.shownSheet().flatMap(sheet -> {
            SheetSize paper = sheet.size();
            int beyond = 0;
            for (var c : s.drawing().components().values()) {
                Point at = c.place().at();
                boolean on =
                        at.xMm() >= 0 && at.yMm() >= 0 && at.xMm() <= paper.widthMm() && at.yMm() <= paper.heightMm();
                beyond += c.place().sheet().equals(sheet.id()) && !on ? 1 : 0;
            }
            String key = beyond == 1 ? "editor.say.lies-beyond-one" : "editor.say.lies-beyond";
            return beyond == 0 ? Optional.empty() : Optional.of(Message.of(key, beyond, paper.designation()));
        });
    }
}
