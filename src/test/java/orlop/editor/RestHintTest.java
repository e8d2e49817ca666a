package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.MouseEvent;
import java.util.Set;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.drawing.TerminalRef;

/** What the status line says to whoever works with the mouse and isn't doing anything. */
class RestHintTest extends OnBench {
    RestHintTest() {
        super(withARun());
    }

    private static Drawing withARun() {
        return TestBoat.drawing()
                .with(Cable.of("W99", TerminalRef.parse("24MAIN.z", "from"), TerminalRef.parse("EA1.1", "to")));
    }

    private String said() {
        return ((JLabel) on.named("status").orElseThrow()).getText();
    }

    @Test
    void a_cable_that_has_just_been_run_wants_its_length_next() throws Exception {
        HeadlessBench.onUi(() -> {
            SheetCanvas canvas = on.bench().canvas();
            on.session().select(Set.of("W99"));
            assertThat(said()).isEqualTo(Texts.of("editor.hint.rest-length", "W99"));

            canvas.dispatchEvent(new MouseEvent(canvas, MouseEvent.MOUSE_MOVED, 0, 0, 3, 3, 0, false));
            assertThat(said()).isEqualTo(Texts.of("editor.hint.rest-length", "W99"));

            on.session().select(Set.of());
            assertThat(said()).isEqualTo(Texts.of("editor.hint.rest"));
        });
    }

    @Test
    void a_cable_that_is_let_go_beside_everything_is_said_to_be_none() throws Exception {
        HeadlessBench.onUi(() -> {
            SheetCanvas canvas = on.bench().canvas();
            var terminal = canvas.scene().orElseThrow().terminals().stream()
                    .filter(t -> t.terminal().toString().equals("EA1.1"))
                    .findFirst()
                    .orElseThrow();
            Spot begin = Spot.at(terminal.xMm(), terminal.yMm(), canvas.viewport());
            CableGesture g = new CableGesture(canvas, terminal, begin);
            Spot nowhere = Spot.at(300, 240, canvas.viewport());
            g.dragged(nowhere);
            assertThat(said()).contains("EA1", "let go on another terminal");

            g.released(nowhere);

            assertThat(said()).startsWith("No cable").contains("EA1");
            assertThat(on.session().state().drawing()).isSameAs(start);
        });
    }
}
