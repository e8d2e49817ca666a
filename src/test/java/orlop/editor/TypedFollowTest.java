package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.ActionEvent;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JTextField;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import orlop.desk.Same;

/** The drawing follows a number while it is typed: one step of the history when it is taken, none when it is put back. */
class TypedFollowTest extends OnBench {
    private static final String LENGTH = "field.lengthM";

    TypedFollowTest() {
        super(TestBoat.drawing());
    }

    private JTextField field() {
        return (JTextField) on.named(LENGTH).orElseThrow();
    }

    private @Nullable Double length() {
        return on.session().state().drawing().cables().require("W10").lengthM();
    }

    private void type(String text) throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of("W10"));
            field().setText(text);
        });
    }

    /** Without a limit of its own: the drawing follows after a pause, however long the machine makes it. */
    private void untilLength(double lengthM) throws Exception {
        AtomicReference<@Nullable Double> now = new AtomicReference<>();
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
        do {
            Thread.sleep(5);
            HeadlessBench.onUi(() -> now.set(length()));
        } while (!Double.valueOf(lengthM).equals(now.get()) && System.nanoTime() < end);
        assertThat(now.get()).isEqualTo(lengthM);
    }

    private void press(String key) {
        JTextField f = field();
        f.getActionMap().get(key).actionPerformed(new ActionEvent(f, ActionEvent.ACTION_PERFORMED, key));
    }

    @Test
    void the_drawing_has_the_number_before_it_is_taken_and_one_undo_takes_it_back() throws Exception {
        type("1");
        untilLength(1);
        type("12");
        untilLength(12);
        HeadlessBench.onUi(() -> {
            assertThat(field().getText()).isEqualTo("12");
            field().setText("12,5");
            field().postActionEvent();

            assertThat(length()).isEqualTo(12.5);
            assertThat(field().getText()).isEqualTo("12.5 m");
            on.session().undo();
            assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
        });
    }

    @Test
    void what_is_typed_next_is_a_step_of_its_own() throws Exception {
        type("7");
        untilLength(7);
        HeadlessBench.onUi(() -> field().postActionEvent());
        type("9");
        untilLength(9);
        HeadlessBench.onUi(() -> {
            field().postActionEvent();
            on.session().undo();
            assertThat(length()).isEqualTo(7);
        });
    }

    @Test
    void escape_puts_the_value_back_and_leaves_nothing_to_undo() throws Exception {
        type("12 m"); // just as the drawing says it
        untilLength(12);
        HeadlessBench.onUi(() -> {
            assertThat(field().getActionMap().get("ESCAPE").isEnabled()).isTrue();
            press("ESCAPE");

            assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
            assertThat(on.session().state().undo()).isNull();
            assertThat(on.session().state().redo()).isNull();
            assertThat(field().getText()).startsWith(String.valueOf(length()).replaceAll("\\.0$", ""));
        });
    }

    @Test
    void what_cannot_be_taken_in_the_end_leaves_the_drawing_as_it_was_and_stays_in_the_field() throws Exception {
        type("12");
        untilLength(12);
        HeadlessBench.onUi(() -> {
            field().setText("12 miles");
            field().postActionEvent();

            assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
            assertThat(on.session().state().undo()).isNull();
            assertThat(field().getText()).isEqualTo("12 miles");
            assertThat(on.named("error.lengthM").orElseThrow().isVisible()).isTrue();
        });
    }
}
