package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import orlop.desk.NoteEdits;
import orlop.desk.Same;
import orlop.desk.SessionState;
import orlop.drawing.Drawing;
import orlop.drawing.Link;
import orlop.drawing.Point;
import orlop.drawing.Soundness;
import orlop.drawing.TerminalRef;

/** Every command, whatever is selected and whatever is answered: nothing breaks, and undo gives the drawing back. */
@Timeout(120)
class EveryCommandTest {
    /** These put another drawing on the desk, with a history of its own. */
    private static final Set<CommandId> REPLACING = EnumSet.of(CommandId.NEW, CommandId.OPEN, CommandId.REVERT);

    private static final List<Boolean> ANSWERS = List.of(true, false);

    /** The test boat with a note, a link and something locked. */
    private static Drawing drawing() {
        Drawing d = TestBoat.drawing();
        d = NoteEdits.place(NoteEdits.fresh(d, "1", new Point(330, 60), "see FC3\nand MA2", 2.5))
                .applyTo(d);
        d = d.with(d.components().require("GA1").withLocked(true));
        return d.with(Link.of(TerminalRef.parse("24MAIN.x", "from"), TerminalRef.parse("GB1.2", "to")));
    }

    @ParameterizedTest
    @CsvSource({
        "''",
        "FC3",
        "24MAIN",
        "QB1",
        "GA1",
        "W10",
        "N1",
        "24MAIN.x~GB1.2",
        "FC3 EA1",
        "FC3 EA1 W7 MA2",
        "FC4 FC5 FC6 GA1 N1",
        "W6 W7 W9",
        "GB1 24MAIN N1 W10 24MAIN.x~GB1.2"
    })
    void no_command_breaks_and_undo_gives_the_very_same_drawing_back(String selection) throws Exception {
        Drawing start = drawing();
        Set<String> ids = selection.isEmpty() ? Set.of() : new LinkedHashSet<>(List.of(selection.split(" ")));
        HeadlessBench on = HeadlessBench.open(start);
        HeadlessBench.onUi(() -> {
            for (boolean agree : ANSWERS) {
                for (CommandId id : CommandId.values()) {
                    run(on, start, ids, id, agree);
                }
            }
        });
        on.close();
    }

    private static void run(HeadlessBench on, Drawing start, Set<String> ids, CommandId id, boolean agree) {
        on.session().select(ids);
        assertThat(on.session().state().selection()).isEqualTo(ids);
        on.answers().agree = agree;
        on.answers().line = agree ? "X9" : null;

        on.bench().commands().get(id).run();
        on.bench().canvas().backOut();

        SessionState s = on.session().state();
        assertThat(Soundness.flaws(s.drawing())).as(id.word()).isEmpty();
        if (REPLACING.contains(id) && !Same.object(s.drawing(), start) && s.undo() == null) {
            on.session().open(start, null);
        }
        while (on.session().state().undo() != null) {
            on.session().undo();
        }
        assertThat(Same.object(on.session().state().drawing(), start))
                .as("%s with %s, then undone", id.word(), ids)
                .isTrue();
    }
}
