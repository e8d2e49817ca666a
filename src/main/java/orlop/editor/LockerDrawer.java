package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.AbstractButton;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import orlop.desk.OwnSymbols;
import orlop.drawing.Group;
import orlop.drawing.Kind;
import orlop.symbols.Symbol;

/** An open drawer of the locker: a row for each kind, with its symbol, its trade term, its standard and its key. */
final class LockerDrawer {
    private final SheetCanvas canvas;
    private final Locker locker;
    private final JPanel panel = Flat.clear(new BorderLayout());
    private final List<KindRow> rows = new ArrayList<>();
    private int marked;
    private boolean dragged;

    LockerDrawer(SheetCanvas canvas, Locker locker, Group group) {
        this.canvas = canvas;
        this.locker = locker;
        JPanel head = Flat.clear(new BorderLayout(Look.px(12), 0));
        JPanel name = Flat.clear(new FlowLayout(FlowLayout.LEFT, 0, 0));
        name.add(Flat.bold(Texts.of("editor.group." + group.word()), Look::text));
        head.add(name, BorderLayout.CENTER);
        head.add(Flat.quiet(Texts.of("editor.locker.how")), BorderLayout.EAST);
        head.setBorder(Flat.rim(6, 14, 6, 14));
        JPanel all = Flat.clear(new FlowLayout());
        all.setLayout(new BoxLayout(all, BoxLayout.Y_AXIS));
        for (LockerKeys.Row r : LockerKeys.rows(group)) {
            all.add(row(r));
        }
        panel.add(head, BorderLayout.NORTH);
        JScrollPane scroll =
                new JScrollPane(all, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        scroll.getVerticalScrollBar().setUnitIncrement(Look.px(21));
        int most = Screens.height() - Look.px(70);
        if (all.getPreferredSize().height > most) {
            int bar = scroll.getVerticalScrollBar().getPreferredSize().width;
            scroll.setPreferredSize(new Dimension(all.getPreferredSize().width + bar, Math.max(Look.px(84), most)));
        }
        panel.add(scroll, BorderLayout.CENTER);
        step(0);
    }

    /** Marks the row that lies so many farther down, which Enter takes; at the ends it stays. */
    void step(int by) {
        marked = Math.max(0, Math.min(rows.size() - 1, marked + by));
        rows.forEach(r -> r.mark(rows.indexOf(r) == marked));
        KindRow now = rows.get(marked);
        now.scrollRectToVisible(new Rectangle(now.getSize()));
    }

    /** What Enter takes. */
    Kind marked() {
        return rows.get(marked).kind;
    }

    /** The drawer was closed by a key: what was being dragged out of it is put back. */
    void cancel() {
        if (dragged) {
            dragged = false;
            canvas.use(canvas.hand());
            canvas.hint("");
        }
    }

    JPanel panel() {
        return panel;
    }

    private JButton row(LockerKeys.Row r) {
        KindRow b = new KindRow(r);
        rows.add(b);
        b.addActionListener(e -> locker.take(r.kind()));
        MouseAdapter drag = new Drag(r);
        b.addMouseListener(drag);
        b.addMouseMotionListener(drag);
        b.addKeyListener(new KeyAdapter() {
            @Override
            public void keyTyped(KeyEvent e) {
                locker.letter(e.getKeyChar());
            }
        });
        return b;
    }

    /**
     * Drags a row out of the drawer on the sheet. The drawer goes out of the way at once: it lies over a good part of the
     * sheet.
     */
    private final class Drag extends MouseAdapter {
        private static final int BEGINS_PX = 10;
        private final LockerKeys.Row row;
        private @Nullable Point pressed;

        Drag(LockerKeys.Row row) {
            this.row = row;
        }

        @Override
        public void mousePressed(MouseEvent e) {
            pressed = e.getPoint();
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            Point from = pressed;
            if (!dragged && from != null && from.distance(e.getPoint()) >= Look.px(BEGINS_PX)) {
                dragged = true;
                pressed = null;
                if (e.getComponent() instanceof AbstractButton b) {
                    b.getModel().setArmed(false); // no click is meant any more
                }
                canvas.use(new PlaceTool(canvas, row.kind()));
                locker.stow();
            }
            if (dragged) {
                canvas.tool().dragged(spot(e));
            }
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            if (dragged) {
                dragged = false;
                Spot there = spot(e);
                if (canvas.contains(there.xPx(), there.yPx())) {
                    canvas.tool().released(there);
                } else {
                    canvas.use(canvas.hand());
                    canvas.hint("");
                }
                locker.close();
                locker.keysToSheet();
            }
        }

        /** Where the mouse is on the sheet; by the screen, since the drawer may have moved meanwhile. */
        private Spot spot(MouseEvent e) {
            Point p;
            if (canvas.isShowing()) {
                Point origin = canvas.getLocationOnScreen();
                p = new Point(e.getXOnScreen() - origin.x, e.getYOnScreen() - origin.y);
            } else {
                p = SwingUtilities.convertPoint(e.getComponent(), e.getPoint(), canvas);
            }
            MouseEvent there = new MouseEvent(
                    canvas, e.getID(), e.getWhen(), e.getModifiersEx(), p.x, p.y, 1, false, MouseEvent.BUTTON1);
            return Spot.of(there, canvas.viewport());
        }
    }

    /** One kind. */
    private static final class KindRow extends JButton {
        private static final long serialVersionUID = 1L;
        private final transient SymbolIcon symbol;
        private final transient String standard;
        private final transient String key;
        private final transient Kind kind;
        private boolean marked;

        KindRow(LockerKeys.Row r) {
            super(Texts.of(r.kind().term()));
            kind = r.kind();
            symbol = new SymbolIcon(r.kind());
            standard = OwnSymbols.library()
                    .find(r.kind().word())
                    .map(Symbol::standard)
                    .orElse("");
            key = String.valueOf(r.letter()).toUpperCase(Locale.ROOT);
            setName("kind." + r.kind().word());
            setContentAreaFilled(false);
            setBorderPainted(false);
            setRolloverEnabled(true);
            getAccessibleContext().setAccessibleDescription(Texts.of("editor.access.key", r.keys()));
        }

        void mark(boolean on) {
            marked = on;
            repaint();
        }

        @Override
        public Dimension getPreferredSize() {
            int text = Math.max(
                    getFontMetrics(Look.font()).stringWidth(getText()),
                    getFontMetrics(Look.small()).stringWidth(standard));
            return new Dimension(Math.max(Look.px(300), text + Look.px(110)), Look.px(42));
        }

        @Override
        public Dimension getMaximumSize() {
            return new Dimension(Integer.MAX_VALUE, getPreferredSize().height);
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            if (getModel().isRollover() || marked) {
                graphics.setColor(Look.chosen());
                graphics.fillRect(0, 0, getWidth(), getHeight());
            }
            if (marked) {
                graphics.setColor(Look.accent());
                graphics.fillRect(0, 0, Look.px(3), getHeight());
            }
            Graphics2D g = (Graphics2D) graphics.create();
            StaticLayer.hints(g);
            symbol.paintIcon(this, g, Look.px(12), (getHeight() - symbol.getIconHeight()) / 2);
            int x = Look.px(60);
            g.setColor(Look.text());
            g.setFont(Look.font());
            g.drawString(getText(), x, Look.px(standard.isEmpty() ? 26 : 19));
            g.setColor(Look.quiet());
            g.setFont(Look.small());
            g.drawString(standard, x, Look.px(34));
            g.setFont(Look.bold());
            FontMetrics m = g.getFontMetrics();
            g.drawString(key, getWidth() - Look.px(16) - m.stringWidth(key), Look.px(26));
            g.dispose();
        }
    }
}
