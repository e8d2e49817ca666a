package orlop.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import javax.swing.JComponent;
import orlop.desk.Session;
import orlop.scene.Annotations;
import orlop.study.Results;

/** The commands of the menu View, and those that go from sheet to sheet and from condition to condition. */
final class ViewCommands {
    private final Session session;
    private final SheetCanvas canvas;
    private final JComponent locker;
    private final JComponent margin;
    private final JComponent strip;
    private final GivingWay room;
    private final Settings settings;

    /** @param strip of the operating conditions */
    ViewCommands(
            Session session,
            SheetCanvas canvas,
            JComponent locker,
            JComponent margin,
            JComponent strip,
            GivingWay room,
            Settings settings) {
        this.room = room;
        this.session = session;
        this.canvas = canvas;
        this.locker = locker;
        this.margin = margin;
        this.strip = strip;
        this.settings = settings;
    }

    void addTo(Commands c) {
        c.add(CommandId.ZOOM_IN, () -> canvas.view().zoom(1.25));
        c.add(CommandId.ZOOM_OUT, () -> canvas.view().zoom(1 / 1.25));
        c.add(CommandId.FIT, canvas.view()::fitWhole);
        c.add(CommandId.FIT_DRAWN, canvas.view()::fitDrawn);
        c.add(CommandId.FULL_SIZE, canvas.view()::fullSize);
        annotation(c, CommandId.SHOW_SIZE, Annotations::size, a -> with(a, 0));
        annotation(c, CommandId.SHOW_LENGTH, Annotations::length, a -> with(a, 1));
        annotation(c, CommandId.SHOW_CURRENT, Annotations::current, a -> with(a, 2));
        annotation(c, CommandId.SHOW_DROP, Annotations::drop, a -> with(a, 3));
        annotation(c, CommandId.SHOW_FAULT, Annotations::fault, a -> with(a, 4));
        pane(c, CommandId.SHOW_LOCKER, locker, room::locker);
        pane(c, CommandId.SHOW_MARGIN, margin, room::card);
        pane(c, CommandId.SHOW_STRIP, strip, room::strip);
        c.toggle(CommandId.ALONE, room::isAlone, room::alone);
        c.add(CommandId.NEXT_SHEET, () -> sheet(1));
        c.add(CommandId.PREVIOUS_SHEET, () -> sheet(-1));
        c.add(CommandId.NEXT_CONDITION, () -> condition(1));
        c.add(CommandId.PREVIOUS_CONDITION, () -> condition(-1));
    }

    private void annotation(
            Commands c, CommandId id, java.util.function.Predicate<Annotations> on, UnaryOperator<Annotations> flip) {
        c.toggle(id, () -> on.test(canvas.shown().annotations()), () -> {
            canvas.shown().annotations(flip.apply(canvas.shown().annotations()));
            canvas.repaint();
        });
    }

    /** The annotations with the part of this place turned over. */
    private static Annotations with(Annotations a, int part) {
        return new Annotations(
                a.size() ^ part == 0,
                a.length() ^ part == 1,
                a.current() ^ part == 2,
                a.drop() ^ part == 3,
                a.fault() ^ part == 4,
                a.gauge());
    }

    /**
     * A part of the window that folds away, and is found as it was left. One that stands aside, for want of room, comes
     * when it is asked for.
     */
    private void pane(Commands c, CommandId id, JComponent pane, Runnable wanted) {
        pane.setVisible(settings.flag(id.word(), true));
        c.toggle(id, pane::isVisible, () -> {
            boolean aside = room.aside(pane);
            if (!aside) {
                fold(pane);
                settings.rememberFlag(id.word(), pane.isVisible());
            }
            if (pane.isVisible()) {
                wanted.run();
            }
        });
    }

    private static void fold(JComponent c) {
        c.setVisible(!c.isVisible());
        if (c.getParent() != null) {
            c.getParent().revalidate();
        }
    }

    private void sheet(int step) {
        List<String> ids = new ArrayList<>();
        session.state().drawing().sheets().forEach(e -> ids.add(e.getKey()));
        int at = ids.indexOf(session.state().sheet()) + step;
        if (at >= 0 && at < ids.size()) {
            session.showSheet(ids.get(at));
        }
    }

    private void condition(int step) {
        List<String> ids = new ArrayList<>();
        session.state().drawing().conditions().forEach(e -> ids.add(e.getKey()));
        ids.add(Results.GOVERNING);
        int at = Math.floorMod(ids.indexOf(session.state().condition()) + step, ids.size());
        session.showCondition(ids.get(at));
    }
}
