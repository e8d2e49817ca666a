package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.NoteEdits;
import orlop.desk.Same;
import orlop.drawing.Drawing;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.drawing.RefitStatus;
import orlop.drawing.TerminalRef;

/** Arranging, locking, notes, several at once: with made-up mouse events and answers, without a screen. */
@Timeout(60)
class ArrangeBenchTest extends OnBench {

    ArrangeBenchTest() {
        super(TestBoat.drawing());
    }

    private SheetCanvas canvas() {
        return on.bench().canvas();
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

    private void mouse(int id, double xMm, double yMm, int clicks) {
        Point2D p = canvas().viewport().toView(xMm, yMm);
        boolean move = id == MouseEvent.MOUSE_MOVED;
        canvas().dispatchEvent(new MouseEvent(
                canvas(),
                id,
                0,
                move || id == MouseEvent.MOUSE_RELEASED ? 0 : InputEvent.BUTTON1_DOWN_MASK,
                (int) Math.round(p.getX()),
                (int) Math.round(p.getY()),
                clicks,
                false,
                move ? 0 : MouseEvent.BUTTON1));
    }

    private void click(double xMm, double yMm, int clicks) {
        mouse(MouseEvent.MOUSE_PRESSED, xMm, yMm, clicks);
        mouse(MouseEvent.MOUSE_RELEASED, xMm, yMm, clicks);
    }

    private Point at(String id) {
        return drawing().components().require(id).place().at();
    }

    private String notice() {
        Message m = on.session().state().notice();
        return m == null ? "" : m.key();
    }

    @Test
    void a_command_brings_what_is_selected_in_line_and_one_undo_takes_it_back() throws Exception {
        HeadlessBench.onUi(() -> {
            select("EA1", "P1", "GB1");
            run(CommandId.ALIGN_ROW);

            assertThat(at("EA1").yMm()).as("stands in line with P1 already").isEqualTo(190);
            assertThat(at("GB1").yMm()).isEqualTo(190);
            on.session().undo();
            assertThat(Same.object(drawing(), start)).isTrue();
            select("EA1");
            on.bench().commands().refresh();
            assertThat(on.bench().commands().get(CommandId.ALIGN_ROW).isEnabled())
                    .as("one thing is in line with itself")
                    .isFalse();
        });
    }

    @Test
    void thin_lines_show_while_something_moves_beside_its_like() throws Exception {
        HeadlessBench.onUi(() -> {
            Point p = at("EA1");
            MoveGesture g = new MoveGesture(canvas(), Set.of("EA1"), spot(p, 0, 0));

            assertThat(g.guides()).as("before anything has moved").isEmpty();
            g.dragged(spot(p, 11, 0));
            assertThat(g.guides()).as("beside the windlass at the same height").anySatisfy(l -> {
                assertThat(l.upright()).isFalse();
                assertThat(l.toMm()).isEqualTo(150);
                assertThat(l.fromMm()).isEqualTo(130);
            });
            assertThat(painted(g)).isGreaterThan(30);
            g.dragged(spot(p, 11, 31.3));
            assertThat(g.guides()).as("below everything").isEmpty();
            assertThat(painted(g)).isZero();
            g.backOut();
            assertThat(Same.object(on.session().state().shown(), start)).isTrue();
        });
    }

    private Spot spot(Point p, double dx, double dy) {
        return Spot.at(p.xMm() + dx, p.yMm() + dy, canvas().viewport());
    }

    /** How many dots the lines of a gesture take on an empty sheet. */
    private int painted(MoveGesture gesture) {
        var image = new java.awt.image.BufferedImage(1366, 740, java.awt.image.BufferedImage.TYPE_INT_ARGB);
        java.awt.Graphics2D g = image.createGraphics();
        g.transform(canvas().viewport().toView());
        GuideLines.paint(g, gesture.guides(), canvas().viewport().mm(1));
        g.dispose();
        int n = 0;
        for (int i = 0; i < 1366 * 740; i++) {
            n += image.getRGB(i % 1366, i / 1366) == 0 ? 0 : 1;
        }
        return n;
    }

    @Test
    void what_is_locked_stays_where_it_is_and_the_person_is_told() throws Exception {
        HeadlessBench.onUi(() -> {
            select("P1");
            run(CommandId.LOCK);
            Drawing locked = drawing();
            Point p = at("P1");

            mouse(MouseEvent.MOUSE_PRESSED, p.xMm(), p.yMm() + 1, 1);
            mouse(MouseEvent.MOUSE_DRAGGED, p.xMm() + 10, p.yMm() + 11, 1);
            mouse(MouseEvent.MOUSE_DRAGGED, p.xMm() + 20, p.yMm() + 21, 1);
            mouse(MouseEvent.MOUSE_RELEASED, p.xMm() + 20, p.yMm() + 21, 1);
            assertThat(notice()).isEqualTo("drawing.refuse.locked");
            for (CommandId id : List.of(CommandId.DELETE, CommandId.CUT, CommandId.TURN, CommandId.MIRROR)) {
                on.session().say(null);
                run(id);
                assertThat(notice()).as(id.word()).isEqualTo("drawing.refuse.locked");
            }
            on.bench().panel();
            assertThat(Same.object(drawing(), locked)).isTrue();
            assertThat(((javax.swing.JLabel) on.named("status").orElseThrow()).getText())
                    .contains("P1 is locked");
            run(CommandId.UNLOCK);
            run(CommandId.DELETE);
            assertThat(drawing().components().contains("P1")).isFalse();
        });
    }

    private List<Point> ends(String id) {
        Point middle = at(id);
        return NaturalEnds.spots(canvas().scene().orElseThrow(), id).stream()
                .map(t -> new Point(t.xMm() - middle.xMm(), t.yMm() - middle.yMm()))
                .toList();
    }

    /** A mirror image in an upright line changes the sign of x alone, however the thing is turned. */
    @Test
    void what_is_turned_is_mirrored_as_it_is_seen() throws Exception {
        HeadlessBench.onUi(() -> {
            select("QB1");
            for (int quarter = 0; quarter < 4; quarter++) {
                on.paint();
                List<Point> before = ends("QB1");
                run(CommandId.MIRROR);
                on.paint();
                List<Point> after = ends("QB1");
                assertThat(before).hasSize(2);
                for (int i = 0; i < before.size(); i++) {
                    assertThat(after.get(i).xMm())
                            .as("quarter %d", quarter)
                            .isCloseTo(-before.get(i).xMm(), Offset.offset(1e-9));
                    assertThat(after.get(i).yMm())
                            .as("quarter %d", quarter)
                            .isCloseTo(before.get(i).yMm(), Offset.offset(1e-9));
                }
                run(CommandId.TURN);
            }
        });
    }

    @Test
    void a_note_is_written_moved_and_written_anew() throws Exception {
        HeadlessBench.onUi(() -> {
            on.answers().agree = true;
            on.answers().filling = f -> words(f, "spare way\nfor a fridge");
            run(CommandId.NOTE);
            mouse(MouseEvent.MOUSE_MOVED, 321, 61, 0);
            click(321, 61, 1);
            assertThat(drawing().notes().require("N1").at()).isEqualTo(new Point(320, 60));
            assertThat(on.session().state().selection()).containsExactly("N1");

            mouse(MouseEvent.MOUSE_PRESSED, 325, 62, 1);
            mouse(MouseEvent.MOUSE_DRAGGED, 330, 66, 1);
            mouse(MouseEvent.MOUSE_DRAGGED, 335, 67, 1);
            mouse(MouseEvent.MOUSE_RELEASED, 335, 67, 1);
            assertThat(drawing().notes().require("N1").at()).isEqualTo(new Point(330, 65));

            on.answers().filling = f -> words(f, "spare way");
            click(335, 67, 2);
            assertThat(drawing().notes().require("N1").text()).isEqualTo("spare way");
            on.session().undo();
            assertThat(drawing().notes().require("N1").text()).isEqualTo("spare way\nfor a fridge");
        });
    }

    private static void words(JComponent form, String text) {
        within(form, "form.words").setText(text);
    }

    private static JTextComponent within(JComponent form, String name) {
        List<Component> open = new ArrayList<>(List.of(form));
        for (int i = 0; i < open.size(); i++) {
            if (open.get(i) instanceof JTextComponent t && name.equals(t.getName())) {
                return t;
            }
            if (open.get(i) instanceof java.awt.Container c) {
                open.addAll(List.of(c.getComponents()));
            }
        }
        throw new AssertionError("no " + name);
    }

    @Test
    void the_card_of_a_note_keeps_its_lines() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session()
                    .apply(
                            NoteEdits.place(NoteEdits.fresh(drawing(), "1", new Point(300, 50), "one\ntwo", 2.5)),
                            Set.of("N1"));
            Drawing noted = drawing();

            JTextComponent text = (JTextComponent) on.named("field.text").orElseThrow();
            assertThat(text.getText()).isEqualTo("one\ntwo");
            select("GB1");
            assertThat(Same.object(drawing(), noted)).isTrue();
        });
    }

    @Test
    void renumbering_follows_with_the_selection() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().apply(orlop.drawing.Edits.rename("FC5", "FC1205"), Set.of("FC1205"));

            run(CommandId.RENUMBER);

            assertThat(drawing().components().contains("FC1205")).isFalse();
            String now = on.session().state().soleSelection().orElseThrow();
            assertThat(at(now)).isEqualTo(new Point(210, 130));
            assertThat(drawing().cables().stream().filter(w -> w.to().equals(TerminalRef.parse(now + ".1", "to"))))
                    .hasSize(1);
        });
    }

    @Test
    void the_card_of_several_shows_what_they_share_and_sets_all_in_one_step() throws Exception {
        HeadlessBench.onUi(() -> {
            select("W10", "W12", "W14");
            JTextField length = (JTextField) on.named("field.lengthM").orElseThrow();
            assertThat(length.getText()).isEmpty();
            assertThat(length.getClientProperty("JTextField.placeholderText")).isEqualTo("several");

            type("field.areaMm2", "AWG 10");
            type("field.lengthM", "2,5");
            assertThat(drawing().cables().require("W10").areaMm2()).isBetween(5.2, 5.3);
            assertThat(drawing().cables().require("W14").lengthM()).isEqualTo(2.5);
            assertThat(((JTextField) on.named("field.lengthM").orElseThrow()).getText())
                    .isEqualTo("2.5 m");
            on.session().undo();
            on.session().undo();
            assertThat(Same.object(drawing(), start)).isTrue();
            type("field.lengthM", "not known");
            assertThat(drawing().cables().require("W12").lengthM()).isNull();
        });
    }

    @Test
    void loads_take_a_power_in_kilowatts_together() throws Exception {
        HeadlessBench.onUi(() -> {
            select("EA1", "EA2");
            type("field.particulars.powerW", "1.2 kW");
            assertThat(power("EA1")).isEqualTo(1200.0);
            type("field.particulars.powerW", "150W");
            assertThat(power("EA2")).isEqualTo(150.0);
        });
    }

    private @Nullable Double power(String id) {
        return ((orlop.drawing.Consumer.Lighting)
                        drawing().components().require(id).particulars())
                .powerW();
    }

    @Test
    void choices_and_flags_of_several_can_be_mixed() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().apply(orlop.desk.CardEdits.set("W10", "refit", RefitStatus.EXISTING, ""));
            select("W10", "EA1");
            JComboBox<?> refit = (JComboBox<?>) on.named("field.refit").orElseThrow();
            assertThat(refit.getSelectedIndex()).isEqualTo(-1);

            refit.setSelectedIndex(1);
            assertThat(drawing().cables().require("W10").refit())
                    .isEqualTo(drawing().components().require("EA1").refit());
            select("EA1", "EA2");
            javax.swing.JCheckBox vital =
                    (javax.swing.JCheckBox) on.named("field.particulars.vital").orElseThrow();
            assertThat(vital.getText()).isEqualTo("several");
            vital.doClick();
            assertThat(((orlop.drawing.Consumer)
                                    drawing().components().require("EA1").particulars())
                            .vital())
                    .isTrue();
        });
    }

    private void type(String name, String text) {
        JTextField f = (JTextField) on.named(name).orElseThrow();
        f.setText(text);
        f.postActionEvent();
    }

    private List<String> menuAt(String... selection) {
        select(selection);
        JPopupMenu menu = on.bench().menus().menu(Spot.of(300, 300, canvas().viewport()));
        List<String> names = new ArrayList<>();
        for (Component c : menu.getComponents()) {
            names.add(c instanceof JMenuItem i ? String.valueOf(i.getName()) : "-");
        }
        assertThat(names.get(0)).isNotEqualTo("-");
        assertThat(names.get(names.size() - 1)).isNotEqualTo("-");
        assertThat(String.join("", names)).doesNotContain("--");
        return names;
    }

    @Test
    void menus_offer_what_makes_sense_at_the_place() throws Exception {
        HeadlessBench.onUi(() -> {
            assertThat(menuAt()).contains("context.note-here", "context.select-all", "context.renumber");
            assertThat(menuAt("QB1")).contains("context.rename", "context.switch", "context.turn", "context.lock");
            assertThat(menuAt("24MAIN"))
                    .contains("context.rename", "context.lock", "context.select-connected")
                    .doesNotContain("context.switch", "context.put-in");
            assertThat(menuAt("W10"))
                    .contains("context.rename", "context.put-in", "context.delete", "context.select-kind")
                    .doesNotContain("context.turn", "context.copy", "context.unlock");
            assertThat(menuAt("QB1", "GB1")).contains("context.align", "context.join", "context.repeat");
            on.session().apply(orlop.desk.Locks.set(Set.of("QB1"), true));
            assertThat(menuAt("QB1")).contains("context.unlock").doesNotContain("context.lock");
        });
    }

    @Test
    void a_device_is_put_into_a_cable_by_its_menu() throws Exception {
        HeadlessBench.onUi(() -> {
            select("W8");
            orlop.scene.Route route = java.util.Objects.requireNonNull(
                    canvas().scene().orElseThrow().routes().get("W8"));
            Point p = route.at(0.4);
            JPopupMenu menu = on.bench().menus().menu(Spot.at(p.xMm(), p.yMm(), canvas().viewport()));
            JMenuItem fuse = item(menu, "context.put-in.fuse");

            fuse.doClick();

            assertThat(on.session().state().selection()).containsExactly("FC9");
            assertThat(drawing().cables().require("W8").to()).isEqualTo(TerminalRef.parse("FC9.1", "to"));
        });
    }

    private static JMenuItem item(JPopupMenu menu, String name) {
        List<Component> open = new ArrayList<>(List.of(menu.getComponents()));
        for (int i = 0; i < open.size(); i++) {
            if (name.equals(open.get(i).getName()) && open.get(i) instanceof JMenuItem found) {
                return found;
            }
            if (open.get(i) instanceof javax.swing.JMenu m) {
                open.addAll(List.of(m.getMenuComponents()));
            }
        }
        throw new AssertionError("no " + name);
    }
}
