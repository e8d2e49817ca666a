package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Point2D;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import javax.swing.AbstractButton;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import orlop.desk.Same;
import orlop.desk.Sample;
import orlop.drawing.Drawing;
import orlop.findings.Cure;
import orlop.findings.Finding;
import orlop.scene.Role;
import orlop.scene.Scene;
import orlop.scene.SceneItem;
import orlop.testing.WindowTest;

/** Cures pressed by mouse: what stands under it stays there until it leaves. */
@WindowTest
class CuresByMouseWindowTest extends InWindow {
    CuresByMouseWindowTest() {
        super(Sample.of("pilot-cutter-first-sketch"));
    }

    private JPanel notes() {
        return on.frame().panel("notes").target();
    }

    /** Where the notes stand on the screen, by what they are about. */
    private Map<String, Integer> heights() {
        return GuiActionRunner.execute(() -> {
            Map<String, Integer> all = new LinkedHashMap<>();
            for (Component c : notes().getComponents()) {
                if (c instanceof NoteView v) {
                    Finding f = v.numbered().finding();
                    all.put(f.rule() + " " + f.place().item(), c.getLocationOnScreen().y);
                }
            }
            return all;
        });
    }

    private AbstractButton firstCure() {
        return cure(f -> f.proposed() != null);
    }

    /** The button of a cure, once its note stands still: a window that has just opened makes its notes more than once. */
    private AbstractButton cure(Predicate<Finding> wanted) {
        AbstractButton[] last = {find(wanted)};
        on.until("its note stands still", () -> {
            AbstractButton now = find(wanted);
            boolean same = now.equals(last[0]) && now.isShowing();
            last[0] = now;
            return same;
        });
        return last[0];
    }

    private AbstractButton find(Predicate<Finding> wanted) {
        return GuiActionRunner.execute(() -> {
            for (Component c : notes().getComponents()) {
                if (c instanceof NoteView v && wanted.test(v.numbered().finding())) {
                    Finding f = v.numbered().finding();
                    return (AbstractButton) on.frame()
                            .button("cure." + f.rule() + "." + f.place().item())
                            .target();
                }
            }
            throw new AssertionError("there is no such note");
        });
    }

    private void show(AbstractButton cure) {
        GuiActionRunner.execute(() -> notes().scrollRectToVisible(
                        SwingUtilities.convertRectangle(cure.getParent(), cure.getBounds(), notes())));
    }

    private void press(AbstractButton cure) {
        Drawing before = on.drawing();
        GuiActionRunner.execute(() -> notes().scrollRectToVisible(
                        javax.swing.SwingUtilities.convertRectangle(cure.getParent(), cure.getBounds(), notes())));
        on.robot().moveMouse(cure, new Point(20, 10));
        on.robot().pressMouse(MouseButton.LEFT_BUTTON);
        on.robot().releaseMouse(MouseButton.LEFT_BUTTON);
        on.until(
                "it is cured",
                () -> !Same.object(on.drawing(), before) && on.state().fresh());
    }

    @Test
    void notes_keep_their_places_while_the_mouse_is_among_them_and_close_up_when_it_leaves() {
        AbstractButton cure = firstCure();
        GuiActionRunner.execute(() -> notes().scrollRectToVisible(
                        javax.swing.SwingUtilities.convertRectangle(cure.getParent(), cure.getBounds(), notes())));
        Map<String, Integer> before = heights();
        press(cure);

        Map<String, Integer> after = heights();
        assertThat(after).hasSizeLessThan(before.size());
        after.forEach((note, y) -> assertThat(y).as(note).isEqualTo(before.getOrDefault(note, y)));

        on.robot().moveMouse(on.canvas(), new Point(300, 300));
        on.until("no place is empty", () -> gaps() == 0);
    }

    /** How many places among the notes hold no note and no words of their own. */
    private int gaps() {
        int gaps = 0;
        for (Component c : notes().getComponents()) {
            gaps += c instanceof NoteView || c instanceof WrapText ? 0 : 1;
        }
        return gaps;
    }

    @Test
    void a_second_click_at_the_same_place_does_nothing_more() {
        AbstractButton cure = firstCure();
        press(cure);
        Drawing cured = on.drawing();

        on.robot().pressMouse(MouseButton.LEFT_BUTTON);
        on.robot().releaseMouse(MouseButton.LEFT_BUTTON);
        on.robot().waitForIdle();

        assertThat(Same.object(on.drawing(), cured)).isTrue();
    }

    @Test
    void the_sheet_has_the_keys_after_a_cure_by_mouse() {
        press(firstCure());

        on.untilFocused(on.canvas());
    }

    /** Presses the cure of something that isn't known. */
    private void ask() {
        AbstractButton asks =
                cure(f -> f.cure() instanceof Cure.EnterValue v && !v.item().isEmpty());
        show(asks);
        on.robot().moveMouse(asks, new Point(20, 10));
        on.robot().pressMouse(MouseButton.LEFT_BUTTON);
        on.robot().releaseMouse(MouseButton.LEFT_BUTTON);
        on.until("a field of the card", this::typing);
    }

    @Test
    void who_double_clicks_a_cure_that_asks_has_the_card_and_no_other_cure() {
        ask();
        String asked = on.state().soleSelection().orElseThrow();

        on.robot().pressMouse(MouseButton.LEFT_BUTTON);
        on.robot().releaseMouse(MouseButton.LEFT_BUTTON);
        on.robot().waitForIdle();

        assertThat(Same.object(on.drawing(), start)).isTrue();
        assertThat(on.state().soleSelection()).contains(asked);
        assertThat(typing()).isTrue();
    }

    private boolean typing() {
        Component c = on.focused();
        return c != null && c.getName() != null && c.getName().startsWith("field.");
    }

    @Test
    void the_keys_go_back_to_the_sheet_when_the_card_goes_in_which_they_were() {
        ask();
        GuiActionRunner.execute(() -> on.canvas().session().select(Set.of()));

        on.untilFocused(on.canvas());
    }

    /** The last note in the margin that has a place on the sheet. */
    private NoteView last() {
        return GuiActionRunner.execute(() -> {
            NoteView found = null;
            for (Component c : notes().getComponents()) {
                boolean placed = c instanceof NoteView v
                        && !v.numbered().finding().place().item().isEmpty();
                found = placed ? (NoteView) c : found;
            }
            return Objects.requireNonNull(found);
        });
    }

    @Test
    void a_click_on_a_mark_brings_its_note_into_sight_though_a_card_comes_above_it() {
        NoteView note = last();
        Finding f = note.numbered().finding();
        Point mark = GuiActionRunner.execute(() -> {
            Scene scene = on.canvas().scene().orElseThrow();
            SceneItem item = scene.items().stream()
                    .filter(i -> i.role() == Role.FINDING
                            && i.subject()
                                    .equals(Integer.toString(note.numbered().number())))
                    .findFirst()
                    .orElseThrow();
            Point2D p = on.canvas()
                    .viewport()
                    .toView(item.bounds().centreX(), item.bounds().centreY());
            return new Point((int) Math.round(p.getX()), (int) Math.round(p.getY()));
        });

        on.robot().click(on.canvas(), mark, MouseButton.LEFT_BUTTON, 1);

        on.until(
                "its thing is selected",
                () -> on.state().selection().equals(Set.of(f.place().item())));
        on.until("its note is in sight", () -> {
            NoteView now = last();
            return now.numbered().finding().equals(f) && now.getVisibleRect().equals(new Rectangle(now.getSize()));
        });
    }
}
