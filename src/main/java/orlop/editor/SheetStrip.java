package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import orlop.desk.Same;
import orlop.desk.Session;
import orlop.desk.SessionListener;
import orlop.desk.SessionState;
import orlop.drawing.Drawing;
import orlop.drawing.Sheet;

/** The strip above the sheet: its number, title, revision and status; a button opens the list of all sheets. */
final class SheetStrip implements SessionListener {
    /** In a narrower strip the button says only which sheet of how many this is. */
    private static final int NARROW = 460;

    private final Session session;
    private final SheetCanvas canvas;
    private final Runnable onRegister;
    private final JPanel panel = Flat.panel(new BorderLayout(), Look::strip);
    private final JPanel left = Flat.clear(new BorderLayout());
    private final JLabel number = Flat.bold("", Look::text);
    private final JLabel title = Flat.label("", Look::text, false);
    private final JButton register = Ring.button("");
    private final JLabel zoom = Flat.quiet("");

    /** @param onRegister opens the register */
    SheetStrip(Session session, SheetCanvas canvas, Runnable onRegister) {
        this.onRegister = onRegister;
        this.session = session;
        this.canvas = canvas;
        left.setLayout(new BoxLayout(left, BoxLayout.X_AXIS));
        left.add(number);
        left.add(Box.createHorizontalStrut(Look.px(8)));
        left.add(title);
        title.setMinimumSize(new Dimension(0, 0)); // in a narrow window it is cut before the rest
        left.add(Box.createHorizontalStrut(Look.px(4)));
        left.add(register);
        register.setName("register");
        register.addActionListener(e -> open());
        panel.add(left, BorderLayout.CENTER);
        panel.add(zoom, BorderLayout.EAST);
        panel.setBorder(Flat.lines(0, 0, 1, 0, new Insets(Look.px(3), Look.px(6), Look.px(3), Look.px(12))));
        number.setName("sheet.number");
        title.setName("sheet.title");
        canvas.view().onView(this::showZoom);
        fill(session.state());
        session.listen(this);
        panel.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                fill(session.state());
            }
        });
    }

    JPanel panel() {
        return panel;
    }

    private void showZoom() {
        zoom.setText(canvas.viewport().percent() + " %");
    }

    @Override
    public void changed(SessionState before, SessionState after) {
        boolean same = Same.object(before.drawing().sheets(), after.drawing().sheets())
                && Same.object(before.drawing().vessel(), after.drawing().vessel())
                && before.sheet().equals(after.sheet());
        if (!same) {
            fill(after);
        }
    }

    private void fill(SessionState s) {
        showZoom();
        if (s.shownSheet().isEmpty()) {
            number.setText("");
            title.setText(Texts.of("editor.no-sheet"));
            register.setVisible(false);
            return;
        }
        Sheet sheet = s.shownSheet().get();
        number.setText(number(s.drawing(), sheet));
        title.setText(sheet.title());
        List<Sheet> all = s.drawing().sheets().stream().toList();
        String place = Texts.of("editor.sheet-of", all.indexOf(sheet) + 1, all.size());
        String revision = sheet.revision().isEmpty() ? "" : Texts.of("editor.revision", sheet.revision());
        String whole = Stream.of(revision, sheet.status(), place)
                .filter(t -> !t.isEmpty())
                .collect(Collectors.joining(" · "));
        boolean narrow = panel.getWidth() > 0 && panel.getWidth() < Look.px(NARROW);
        register.setVisible(true);
        register.setText((narrow ? place : whole) + " ▾");
        register.setToolTipText(whole);
        int least = narrow ? register.getPreferredSize().width : Look.px(60);
        register.setMinimumSize(new Dimension(least, 0)); // cut after the title
        register.getAccessibleContext().setAccessibleName(Texts.of("editor.access.register"));
        left.revalidate(); // by itself: the row forgets its old widths even where it wasn't laid out since
    }

    static String number(Drawing d, Sheet sheet) {
        String prefix = d.vessel().documentPrefix();
        return Stream.of(prefix, sheet.number()).filter(t -> !t.isEmpty()).collect(Collectors.joining("-"));
    }

    private void open() {
        JPopupMenu menu = new JPopupMenu();
        Drawing d = session.state().drawing();
        List<JMenuItem> items = new ArrayList<>();
        for (Sheet sheet : d.sheets().values()) {
            String revision = sheet.revision().isEmpty() ? "" : "   " + Texts.of("editor.revision", sheet.revision());
            JMenuItem item = new JMenuItem(number(d, sheet) + "   " + sheet.title() + revision);
            item.setName("register." + sheet.id());
            item.addActionListener(e -> session.showSheet(sheet.id()));
            items.add(item);
        }
        items.forEach(menu::add);
        menu.addSeparator();
        JMenuItem all = new JMenuItem(Texts.of("editor.register.open"));
        all.setName("register.open");
        all.addActionListener(e -> onRegister.run());
        menu.add(all);
        menu.show(register, 0, register.getHeight());
    }
}
