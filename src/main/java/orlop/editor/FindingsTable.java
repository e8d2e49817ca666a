package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.FlowLayout;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.RowFilter;
import javax.swing.SwingUtilities;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;
import javax.swing.table.TableRowSorter;
import org.jspecify.annotations.Nullable;
import orlop.desk.Same;
import orlop.desk.Session;
import orlop.desk.SessionListener;
import orlop.desk.SessionState;
import orlop.drawing.Drawing;
import orlop.drawing.Sheet;
import orlop.findings.Finding;
import orlop.scene.Scene;

/** The findings of all sheets as a table that can be sorted and searched; the accepted ones too. */
final class FindingsTable implements SessionListener {
    private static final String[] COLUMNS = {"number", "kind", "sheet", "place", "what", "state"};
    private static final int SHORT = 4;
    private static final int[] WIDTHS = {36, 88, 48, 80, 560, 90};

    /**
     * One line of the table.
     *
     * @param number the one that stands on the sheet that is shown; null for a finding on another, or one that is accepted
     */
    private record Row(@Nullable Integer number, Finding finding, String sheet) {}

    private final Session session;
    private final Consumer<Finding> onPick;
    private final Function<SessionState, Optional<Scene>> scenes;
    private final JPanel panel = Flat.panel(new BorderLayout(), Look::card);
    private final Model model = new Model();
    private final JTable table = new JTable(model);
    private final TableRowSorter<Model> sorter = new TableRowSorter<>(model);
    private final JTextField filter = new JTextField(24);
    private final JLabel count = Flat.quiet("");

    /**
     * @param scenes the scene of the sheet that is shown, whose numbers are shown here
     * @param onPick shows the place that a finding speaks of
     */
    FindingsTable(Session session, Function<SessionState, Optional<Scene>> scenes, Consumer<Finding> onPick) {
        this.session = session;
        this.scenes = scenes;
        this.onPick = onPick;
        Grid.look(table, "findings");
        sorter.setComparator(1, Comparator.comparing(Finding::severity)); // the gravest first
        table.setRowSorter(sorter);
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null); // nothing is typed in its cells
        table.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        table.setDefaultRenderer(Finding.class, new KindCell());
        for (int i = 0; i < WIDTHS.length; i++) {
            int width = Look.px(WIDTHS[i]);
            table.getColumnModel().getColumn(i).setPreferredWidth(width);
            if (i < SHORT) { // what has a sentence gets the room of a wide window
                table.getColumnModel().getColumn(i).setMaxWidth(width * 3 / 2);
            }
        }
        Widths.headings(table);
        TableColumn kind = table.getColumnModel().getColumn(1); // a word of which half says nothing
        kind.setMinWidth(kind.getPreferredWidth());
        table.getAccessibleContext().setAccessibleName(Texts.of("editor.fold.findings"));
        filter.setName("filter");
        filter.putClientProperty("JTextField.placeholderText", Texts.of("editor.findings.filter"));
        filter.getAccessibleContext().setAccessibleName(Texts.of("editor.findings.filter"));
        filter.getDocument().addDocumentListener(new Typed());
        picks();
        sorts();
        JPanel top = Flat.clear(new FlowLayout(FlowLayout.LEFT, Look.px(8), Look.px(4)));
        top.add(filter);
        top.add(count);
        JScrollPane scroll = new JScrollPane(table);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        panel.add(top, BorderLayout.NORTH);
        panel.add(scroll, BorderLayout.CENTER);
        session.listen(this);
        read(session.state());
    }

    JPanel panel() {
        return panel;
    }

    /** Brings the line of a finding into sight, and marks it. */
    @SuppressWarnings("ReferenceEquality") // two findings may say the same of two places
    void show(Finding f) {
        for (int i = 0; i < model.rows.size(); i++) {
            if (model.rows.get(i).finding() == f) {
                if (table.convertRowIndexToView(i) < 0) {
                    filter.setText(""); // it was sought for something else
                }
                int row = table.convertRowIndexToView(i);
                table.setRowSelectionInterval(row, row);
                SwingUtilities.invokeLater(() -> table.scrollRectToVisible(table.getCellRect(row, 0, true)));
            }
        }
    }

    private void picks() {
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                pick();
            }
        });
        table.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "pick");
        table.getActionMap().put("pick", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(java.awt.event.ActionEvent e) {
                pick();
            }
        });
    }

    /** The number of a column sorts by it, and again the other way round. */
    private void sorts() {
        for (int i = 0; i < COLUMNS.length; i++) {
            int column = i;
            Grid.key(table, String.valueOf(i + 1), () -> sorter.toggleSortOrder(column));
            Grid.key(table, "NUMPAD" + (i + 1), () -> sorter.toggleSortOrder(column));
        }
    }

    private void pick() {
        int row = table.getSelectedRow();
        if (row >= 0) {
            onPick.accept(model.rows.get(table.convertRowIndexToModel(row)).finding());
        }
    }

    @Override
    public void changed(SessionState before, SessionState after) {
        if (!Same.object(before.review(), after.review())
                || !before.sheet().equals(after.sheet())
                || !before.condition().equals(after.condition())) {
            read(after);
        }
    }

    /** Reads the numbers anew: those of a large sheet are known only when it has been laid out. */
    void refresh() {
        read(session.state());
    }

    private void read(SessionState s) {
        List<Row> rows = new ArrayList<>();
        if (s.review() != null) {
            Drawing d = s.review().drawing();
            List<Finding> all = s.review().findings();
            Optional<Scene> scene = scenes.apply(s);
            for (int i = 0; i < all.size(); i++) {
                String sheet = d.sheets()
                        .find(FindingPlaces.sheet(d, all.get(i)))
                        .map(Sheet::number)
                        .orElse("");
                int index = i + 1;
                Integer number =
                        scene.flatMap(here -> here.findingNumber(index)).orElse(null);
                rows.add(new Row(number, all.get(i), sheet));
            }
        }
        if (!rows.equals(model.rows)) {
            model.rows = rows;
            model.fireTableDataChanged();
        }
        told();
    }

    private void told() {
        count.setText(Texts.of("editor.findings.count", table.getRowCount(), model.rows.size()));
    }

    private void search() {
        String words = filter.getText().strip().toLowerCase(Locale.ROOT);
        sorter.setRowFilter(
                words.isEmpty()
                        ? null
                        : new RowFilter<>() {
                            @Override
                            public boolean include(Entry<? extends Model, ? extends Integer> e) {
                                return text(model.rows.get(e.getIdentifier())).contains(words);
                            }
                        });
        told();
    }

    /** That somebody lives with it, and why; "" if nobody does. */
    private static String state(Finding f) {
        return f.acceptedReason() == null ? "" : Texts.of("editor.findings.accepted", f.acceptedReason());
    }

    private static String text(Row r) {
        Finding f = r.finding();
        return String.join(
                        " ",
                        Texts.of("editor.severity." + f.severity().word()),
                        f.place().item(),
                        Texts.of(f.title()),
                        Texts.of(f.message()),
                        f.clause(),
                        state(f))
                .toLowerCase(Locale.ROOT);
    }

    private final class Typed implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent e) {
            search();
        }

        @Override
        public void removeUpdate(DocumentEvent e) {
            search();
        }

        @Override
        public void changedUpdate(DocumentEvent e) {
            search();
        }
    }

    private static final class Model extends AbstractTableModel {
        private static final long serialVersionUID = 1L;
        private transient List<Row> rows = List.of();

        @Override
        public int getRowCount() {
            return rows.size();
        }

        @Override
        public int getColumnCount() {
            return COLUMNS.length;
        }

        @Override
        public String getColumnName(int column) {
            return Texts.of("editor.findings.column." + COLUMNS[column]);
        }

        @Override
        public Class<?> getColumnClass(int column) {
            return column == 0 ? Integer.class : column == 1 ? Finding.class : String.class;
        }

        @Override
        public @Nullable Object getValueAt(int row, int column) {
            Row r = rows.get(row);
            Finding f = r.finding();
            return switch (column) {
                case 0 -> r.number();
                case 1 -> f;
                case 2 -> r.sheet();
                case 3 -> f.place().item();
                case 4 -> Texts.title(f.title()) + ". " + Texts.title(f.message());
                default -> state(f);
            };
        }
    }

    /** The kind of a finding by shape, colour and word. */
    private static final class KindCell extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focus, int row, int column) {
            Finding f = (Finding) value;
            String word = Texts.of("editor.severity." + f.severity().word());
            super.getTableCellRendererComponent(table, word, selected, focus, row, column);
            setIcon(new SeverityIcon(f.severity(), "", Look.px(14)));
            return this;
        }
    }
}
