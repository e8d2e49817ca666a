package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.FlowLayout;
import java.awt.Insets;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.BoxLayout;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import orlop.desk.Balance;
import orlop.desk.Review;
import orlop.desk.Same;
import orlop.desk.Session;
import orlop.desk.SessionListener;
import orlop.desk.SessionState;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Quantity;
import orlop.drawing.Unit;
import orlop.findings.Severity;
import orlop.study.Results;

/** The operating conditions along the top: a card for each, and one for the governing figures. */
final class ConditionsStrip implements SessionListener {
    /** A current below this is what the sums leave over. */
    private static final double LEAST_A = 0.005;

    private final Session session;
    private final Blink blink;
    private final Runnable onPressed;
    private final JPanel panel = Flat.panel(new BorderLayout(), Look::strip);
    private final JPanel row = Flat.clear(new FlowLayout());
    private final Map<String, ConditionCard> cards = new LinkedHashMap<>();
    private boolean slim;

    /** @param onPressed told when the mouse is pressed on a card: the keys go to the sheet */
    ConditionsStrip(Session session, Blink blink, Runnable onPressed) {
        this.session = session;
        this.blink = blink;
        this.onPressed = onPressed;
        row.setLayout(new BoxLayout(row, BoxLayout.X_AXIS));
        panel.setBorder(Flat.lines(0, 0, 1, 0, new Insets(Look.px(5), Look.px(10), Look.px(6), Look.px(10))));
        panel.add(new SlidingRow(row).panel(), BorderLayout.CENTER);
        panel.setName("conditions");
        panel.getAccessibleContext().setAccessibleName(Texts.of("editor.access.conditions"));
        rebuild(session.state());
        session.listen(this);
        blink.listen(() -> fill(session.state()));
    }

    JPanel panel() {
        return panel;
    }

    /** The card of the condition that is shown. */
    Optional<Component> focus() {
        return Optional.ofNullable(cards.get(session.state().condition()));
    }

    /** In a low window a card is a line. */
    void slim(boolean on) {
        if (slim != on) {
            slim = on;
            cards.values().forEach(c -> c.low(on));
            row.revalidate();
            row.repaint();
        }
    }

    @Override
    public void changed(SessionState before, SessionState after) {
        if (!Same.object(before.drawing().conditions(), after.drawing().conditions())) {
            KeptFocus.through(row, () -> rebuild(after), () -> Optional.ofNullable(cards.get(after.condition())));
        } else if (blink.waits()) {
            return; // they are those of the drawing as it stands
        } else if (!Same.object(before.review(), after.review())
                || !Same.object(before.drawing(), after.drawing())
                || !before.condition().equals(after.condition())) {
            fill(after);
        }
    }

    private void rebuild(SessionState s) {
        row.removeAll();
        cards.clear();
        ButtonGroup group = new ButtonGroup();
        for (OperatingCondition c : s.drawing().conditions().values()) {
            add(group, c.id(), c.title());
        }
        add(group, Results.GOVERNING, Texts.of("editor.governing"));
        fill(s);
        row.revalidate();
        row.repaint();
    }

    private void add(ButtonGroup group, String id, String title) {
        ConditionCard card = new ConditionCard(id, title);
        card.addActionListener(e -> session.showCondition(id));
        card.setRequestFocusEnabled(false); // who works with the mouse has the keys on the sheet
        card.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                onPressed.run();
            }
        });
        card.low(slim);
        group.add(card);
        cards.put(id, card);
        if (row.getComponentCount() > 0) {
            row.add(javax.swing.Box.createHorizontalStrut(Look.px(6)));
        }
        row.add(card);
    }

    private void fill(SessionState s) {
        cards.forEach((id, card) -> {
            card.setSelected(id.equals(s.condition()));
            card.show(figures(s, id), count(s, id, Severity.DANGER), count(s, id, Severity.DEFECT), !s.fresh());
        });
    }

    private static int count(SessionState s, String condition, Severity severity) {
        Review r = s.review();
        return r == null
                ? 0
                : (int) r.findings().stream()
                        .filter(f -> !f.accepted() && f.severity() == severity)
                        .filter(f -> condition.equals(Results.GOVERNING)
                                || f.conditions().isEmpty()
                                || f.conditions().contains(condition))
                        .count();
    }

    private static List<String> figures(SessionState s, String condition) {
        Review r = s.review();
        if (r == null || condition.equals(Results.GOVERNING)) {
            return List.of();
        }
        Results results = r.study().byCondition().get(condition);
        List<String> figures = new ArrayList<>();
        if (results != null) {
            for (Balance b : Balance.of(s.drawing(), results)) {
                figures.add(figure(s.drawing(), b));
            }
        }
        return figures;
    }

    /**
     * {@code 24 V −37 A} where batteries take or give, {@code 230 V 0.4 kW} elsewhere; of two systems of one voltage by the
     * short name that stands in the lines.
     */
    static String figure(Drawing d, Balance b) {
        ElectricalSystem system = d.systems().require(b.system());
        boolean alike =
                d.systems().stream().anyMatch(s -> !s.id().equals(system.id()) && s.nominalV() == system.nominalV());
        String volts = alike ? system.id() : new Quantity(system.nominalV(), Unit.VOLT).text();
        Double battery = b.batteryA();
        if (battery != null) {
            double shown = Math.abs(battery) < LEAST_A ? 0 : battery;
            String sign = shown > 0 ? "+" : "";
            return volts + " " + sign + new Quantity(shown, Unit.AMPERE).text();
        }
        double load = b.loadW() == null ? 0 : b.loadW();
        Quantity q = Math.abs(load) >= 1000 ? new Quantity(load / 1000, Unit.KILOWATT) : new Quantity(load, Unit.WATT);
        return volts + " " + q.text();
    }
}
