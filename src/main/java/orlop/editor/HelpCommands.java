package orlop.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.table.DefaultTableModel;

/** The commands of the menu Help. */
final class HelpCommands {
    private final Prompts prompts;

    private final CommandList all;

    /** @param all from which the list of keys is made */
    HelpCommands(Prompts prompts, CommandList all) {
        this.prompts = prompts;
        this.all = all;
    }

    void addTo(Commands c) {
        c.add(CommandId.KEYS, this::keys);
        c.add(CommandId.ABOUT, this::about);
    }

    private void about() {
        String version = HelpCommands.class.getPackage().getImplementationVersion();
        prompts.tell(
                Texts.of("editor.about.title"),
                Texts.of("editor.about", version == null ? Texts.of("editor.about.unbuilt") : version));
    }

    private void keys() {
        List<Object[]> rows = new ArrayList<>();
        for (String habit : List.of(
                "wheel", "pan", "rubber", "cable", "link", "arrows", "items", "that", "card", "locker", "put", "run",
                "label", "shape", "switch", "menu", "back")) {
            rows.add(new Object[] {Texts.of("editor.habit." + habit), Texts.of("editor.habit." + habit + ".how")});
        }
        for (CommandList.Line l : all.lines()) {
            if (!l.keys().isEmpty()) {
                rows.add(new Object[] {l.text(), l.keys()});
            }
        }
        DefaultTableModel model =
                new DefaultTableModel(
                        rows.toArray(new Object[0][]),
                        new Object[] {Texts.of("editor.keys.what"), Texts.of("editor.keys.key")}) {
                    private static final long serialVersionUID = 1L;

                    @Override
                    public boolean isCellEditable(int row, int column) {
                        return false;
                    }
                };
        JTable table = new JTable(model);
        Grid.look(table, "keys");
        int wide = widen(table, 0) + widen(table, 1);
        table.getAccessibleContext().setAccessibleName(Texts.of("editor.keys.title"));
        Forms.beginAt(table); // so that arrow keys go through it at once
        JScrollPane scroll = new JScrollPane(table);
        scroll.setPreferredSize(new java.awt.Dimension(
                Math.min(wide + scroll.getVerticalScrollBar().getPreferredSize().width, Screens.width() - Look.px(60)),
                Math.min(Look.px(440), Screens.height() - Look.px(110))));
        prompts.tell(Texts.of("editor.keys.title"), scroll);
    }

    /** Makes a column as wide as what stands in it; how wide that is. */
    private static int widen(JTable table, int column) {
        int wide = 0;
        for (int row = 0; row < table.getRowCount(); row++) {
            java.awt.Component cell = table.prepareRenderer(table.getCellRenderer(row, column), row, column);
            wide = Math.max(wide, cell.getPreferredSize().width);
        }
        wide += Look.px(16);
        table.getColumnModel().getColumn(column).setPreferredWidth(wide);
        return wide;
    }

    static String spoken(KeyStroke k) {
        String modifiers = java.awt.event.InputEvent.getModifiersExText(k.getModifiers());
        String key = java.awt.event.KeyEvent.getKeyText(k.getKeyCode());
        return (modifiers.isEmpty() ? "" : modifiers + "+")
                + key.substring(0, 1).toUpperCase(Locale.ROOT)
                + key.substring(1);
    }
}
