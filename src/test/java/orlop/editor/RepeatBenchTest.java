package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.desk.Same;
import orlop.drawing.Drawing;
import orlop.drawing.Point;

/** Repeating circuits in the window: with made-up answers, without a screen. */
@Timeout(60)
class RepeatBenchTest extends OnBench {
    RepeatBenchTest() {
        super(TestBoat.drawing());
    }

    private Drawing drawing() {
        return on.session().state().drawing();
    }

    private void run(CommandId id) {
        on.bench().commands().get(id).run();
    }

    private void select(String... ids) {
        on.session().select(new LinkedHashSet<>(List.of(ids)));
    }

    private Point at(String id) {
        return drawing().components().require(id).place().at();
    }

    @Test
    void circuits_are_repeated_with_their_taps() throws Exception {
        HeadlessBench.onUi(() -> {
            select("FC8", "EA2", "W17", "W18");
            on.answers().agree = true;
            on.answers().filling = f -> {
                FormParts.named(f, JTextField.class, "form.copies").setText("2");
                FormParts.named(f, JTextField.class, "form.across").setText("2,5 cm");
            };
            run(CommandId.REPEAT);

            assertThat(on.session().state().selection())
                    .containsExactlyInAnyOrder("FC9", "FC10", "EA3", "EA4", "W19", "W20", "W21", "W22");
            assertThat(at("FC10").xMm()).isEqualTo(350);
            assertThat(drawing().cables().require("W19").from().component()).isEqualTo("24MAIN");
            on.session().undo();
            assertThat(Same.object(drawing(), start)).isTrue();
            on.answers().filling =
                    f -> FormParts.named(f, JTextField.class, "form.copies").setText("0");
            select("FC8");
            run(CommandId.REPEAT);
            assertThat(on.answers().told)
                    .singleElement()
                    .asString()
                    .contains("whole number from 1 to " + orlop.desk.Repeats.MOST);
            assertThat(Same.object(drawing(), start)).isTrue();
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void the_step_that_is_offered_lands_nothing_on_anything(int copies) throws Exception {
        HeadlessBench.onUi(() -> {
            on.answers().agree = true;
            on.answers().filling =
                    f -> FormParts.named(f, JTextField.class, "form.copies").setText(String.valueOf(copies));
            select("FC3", "EA1");
            int before = drawing().components().size();
            run(CommandId.REPEAT);

            assertThat(drawing().components().size()).isEqualTo(before + 2 * copies);
            var things = on.bench().canvas().scene().orElseThrow().items().stream()
                    .filter(i -> i.role() == orlop.scene.Role.COMPONENT)
                    .toList();
            for (var a : things) {
                for (var b : things) {
                    assertThat(Same.object(a, b) || !a.bounds().overlaps(b.bounds()))
                            .as("%s on %s", a.subject(), b.subject())
                            .isTrue();
                }
            }
        });
    }
}
