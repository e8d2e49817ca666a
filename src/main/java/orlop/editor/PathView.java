package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.swing.AbstractAction;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import orlop.desk.PathProfile;
import orlop.desk.Same;
import orlop.desk.Session;
import orlop.desk.SessionListener;
import orlop.desk.SessionState;
import orlop.scene.Ink;

/** The voltage along the feeding path of the selected load: source at the left, load at the right, and the limit. */
final class PathView extends JPanel implements SessionListener {
    private static final long serialVersionUID = 1L;
    private static final double LEAST_SPAN = 0.06; // of the nominal voltage: a small drop looks small

    private transient @Nullable PathProfile profile;
    private transient PathProfile.@Nullable Station station;

    PathView(Session session) {
        setName("path");
        setPreferredSize(new Dimension(600, Look.px(190)));
        session.listen(this);
        read(session.state());
        MouseAdapter mouse = new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                stationAt(e.getX()).ifPresent(s -> session.select(Set.of(s.item())));
            }

            @Override
            public void mouseMoved(MouseEvent e) {
                Optional<PathProfile.Station> at = stationAt(e.getX());
                setToolTipText(at.map(PathView::words).orElse(null));
                setCursor(Cursor.getPredefinedCursor(at.isPresent() ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
            }
        };
        setFocusable(true);
        Ring.follow(this);
        key("RIGHT", session, 1);
        key("LEFT", session, -1);
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
    }

    /** Goes to the next station of the path, or the one before, and selects it: it stays in sight on the sheet. */
    private void key(String key, Session session, int by) {
        getInputMap(WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
        getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                PathProfile p = profile;
                if (p != null) {
                    int now = chosen(p, session.state());
                    int last = p.stations().size() - 1;
                    int to = now < 0 ? (by > 0 ? 0 : last) : Math.max(0, Math.min(last, now + by));
                    session.select(Set.of(p.stations().get(to).item()));
                }
            }
        });
    }

    private static int chosen(PathProfile p, SessionState s) {
        for (int i = 0; i < p.stations().size(); i++) {
            if (s.selection().contains(p.stations().get(i).item())) {
                return i;
            }
        }
        return -1;
    }

    static String words(PathProfile.Station s) {
        if (volts(s.fromV()).equals(volts(s.toV()))) { // a bar, a load: nothing is lost within it
            return Texts.of("editor.path.station-flat", s.item(), volts(s.toV()), metres(s.toM()));
        }
        return Texts.of("editor.path.station", s.item(), volts(s.fromV()), volts(s.toV()), metres(s.toM()));
    }

    private static String volts(double v) {
        return String.format(Locale.ROOT, v >= 100 ? "%.1f" : "%.2f", v);
    }

    private static String metres(double m) {
        return String.format(Locale.ROOT, "%.1f", m);
    }

    @Override
    public void changed(SessionState before, SessionState after) {
        if (!Same.object(before.review(), after.review())
                || !before.selection().equals(after.selection())
                || !before.condition().equals(after.condition())) {
            read(after);
        }
    }

    private void read(SessionState s) {
        Optional<PathProfile> next = PathProfile.of(s);
        if (next.isPresent() || s.selection().isEmpty() || profile == null) {
            profile = next.orElse(null);
        } else if (profile.stations().stream().noneMatch(t -> s.selection().contains(t.item()))) {
            profile = null; // a station that was clicked leaves the path in sight
        }
        PathProfile now = profile;
        int at = now == null ? -1 : chosen(now, s);
        station = now == null || at < 0 ? null : now.stations().get(at);
        getAccessibleContext().setAccessibleName(title());
        getAccessibleContext().setAccessibleDescription(station == null ? "" : words(station));
        repaint();
    }

    /** What the profile says, in one line. */
    String title() {
        PathProfile p = profile;
        if (p == null) {
            return Texts.of("editor.path.none");
        }
        String source = p.stations().get(0).item();
        Double drop = p.dropPercent();
        Double limit = p.limitPercent();
        String sum = drop == null
                ? Texts.of("editor.path.no-drop")
                : limit == null
                        ? Texts.of("editor.path.drop", volts(drop))
                        : Texts.of("editor.path.drop-of", volts(drop), volts(limit));
        return Texts.of("editor.path.title", source, p.load(), metres(p.lengthM()), sum, p.condition());
    }

    /** Where the profile lies within the component. */
    private record Frame(
            PathProfile p, double left, double right, double top, double bottom, double lowV, double highV) {
        double x(double m) {
            double length = p.lengthM();
            return length <= 0 ? left : left + (right - left) * m / length;
        }

        double y(double v) {
            return bottom - (bottom - top) * (v - lowV) / (highV - lowV);
        }
    }

    private Optional<Frame> frame() {
        PathProfile p = profile;
        if (p == null) {
            return Optional.empty();
        }
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (PathProfile.Station s : p.stations()) {
            low = Math.min(low, Math.min(s.fromV(), s.toV()));
            high = Math.max(high, Math.max(s.fromV(), s.toV()));
        }
        double limit = p.limitV();
        low = Double.isNaN(limit) ? low : Math.min(low, limit);
        double span = Math.max(high - low, LEAST_SPAN * Math.max(p.nominalV(), 1));
        return Optional.of(new Frame(
                p,
                Look.px(64),
                getWidth() - Look.px(64),
                Look.px(34),
                getHeight() - Look.px(38),
                high - span * 1.05,
                high + span * 0.05));
    }

    private Optional<PathProfile.Station> stationAt(int x) {
        Optional<Frame> frame = frame();
        PathProfile.Station best = null;
        if (frame.isPresent()) {
            double near = Look.px(7);
            for (PathProfile.Station s : frame.get().p().stations()) {
                double d = s.cable() ? Double.MAX_VALUE : Math.abs(frame.get().x(s.toM()) - x);
                if (d < near) {
                    near = d;
                    best = s;
                } else if (best == null
                        && s.cable()
                        && x > frame.get().x(s.fromM())
                        && x < frame.get().x(s.toM())) {
                    best = s;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        StaticLayer.hints(g);
        g.setColor(Look.card());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setFont(Look.bold());
        g.setColor(profile == null ? Look.quiet() : Look.text());
        g.drawString(title(), Look.px(14), Look.px(20));
        frame().ifPresent(f -> paint(g, f));
        g.dispose();
        Ring.paint(this, graphics);
    }

    private void paint(Graphics2D g, Frame f) {
        g.setFont(Look.small());
        limit(g, f);
        g.setStroke(new BasicStroke(Look.px(2), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        boolean over = f.p().dropPercent() != null
                && f.p().limitPercent() != null
                && f.p().dropPercent() > f.p().limitPercent();
        Color line = over ? Look.ink(Ink.DEFECT) : Look.accent();
        for (PathProfile.Station s : f.p().stations()) {
            g.setColor(line);
            g.draw(new Line2D.Double(f.x(s.fromM()), f.y(s.fromV()), f.x(s.toM()), f.y(s.toV())));
        }
        tags(g, f, line);
        ends(g, f);
        here(g, f);
    }

    /** The station that is selected, with its voltages. */
    private void here(Graphics2D g, Frame f) {
        PathProfile.Station s = station;
        if (s != null) {
            double r = Look.px(6);
            double x = f.x(s.cable() ? (s.fromM() + s.toM()) / 2 : s.toM());
            double y = f.y(s.cable() ? (s.fromV() + s.toV()) / 2 : s.toV());
            g.setColor(Look.accent());
            g.setStroke(new BasicStroke(Look.px(2)));
            g.draw(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
            String words = words(s);
            g.setColor(Look.text());
            int width = g.getFontMetrics().stringWidth(words);
            g.drawString(words, Math.max(Look.px(14), getWidth() - Look.px(14) - width), Look.px(34));
        }
    }

    private void limit(Graphics2D g, Frame f) {
        double limit = f.p().limitV();
        if (Double.isNaN(limit)) {
            return;
        }
        g.setColor(Look.ink(Ink.DEFECT));
        g.setStroke(new BasicStroke(
                1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {Look.px(6), Look.px(4)}, 0));
        g.draw(new Line2D.Double(f.left(), f.y(limit), f.right(), f.y(limit)));
        String words = Texts.of("editor.path.limit", volts(limit));
        g.drawString(words, (float) f.left() + Look.px(6), (float) f.y(limit) - Look.px(4));
    }

    /** A dot for each component; its tag below the line of the axis where there is room for it. */
    private void tags(Graphics2D g, Frame f, Color line) {
        FontMetrics fm = g.getFontMetrics();
        double axis = f.bottom() + Look.px(6);
        g.setColor(Look.line());
        g.setStroke(new BasicStroke(1));
        g.draw(new Line2D.Double(f.left(), axis, f.right(), axis));
        double[] free = {-1, -1};
        for (PathProfile.Station s : f.p().stations()) {
            if (s.cable()) {
                continue;
            }
            double r = Look.px(3);
            double x = f.x(s.toM());
            g.setColor(line);
            g.fill(new Ellipse2D.Double(x - r, f.y(s.toV()) - r, 2 * r, 2 * r));
            double width = fm.stringWidth(s.item());
            double start = Math.min(Math.max(x - width / 2, 2), getWidth() - width - 2);
            int row = start > free[0] ? 0 : start > free[1] ? 1 : -1;
            if (row >= 0) {
                free[row] = start + width + Look.px(5);
                g.setColor(Look.quiet());
                g.drawString(s.item(), (float) start, (float) axis + Look.px(3) + fm.getAscent() * (row + 1));
            }
        }
    }

    private void ends(Graphics2D g, Frame f) {
        PathProfile.Station first = f.p().stations().get(0);
        PathProfile.Station last = f.p().stations().get(f.p().stations().size() - 1);
        FontMetrics fm = g.getFontMetrics();
        g.setColor(Look.text());
        String a = volts(first.toV()) + " V";
        String b = volts(last.toV()) + " V";
        float lift = fm.getAscent() / 2f;
        g.drawString(a, (float) f.left() - Look.px(8) - fm.stringWidth(a), (float) f.y(first.toV()) + lift);
        g.drawString(b, (float) f.right() + Look.px(8), (float) f.y(last.toV()) + lift);
    }
}
