package orlop.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.Action;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.table.DefaultTableModel;

/** The commands of the menu Help. */
final class HelpCommands {
    private final Prompts prompts;

    HelpCommands(Prompts prompts) {
        this.prompts = prompts;
    }

    void addTo(Commands c) {
        c.add(CommandId.KEYS, () -> keys(c));
        c.add(CommandId.ABOUT, this::about);
    }

    private void about() {
        String version = HelpCommands.class.getPackage().getImplementationVersion();
        prompts.tell(
                Texts.of("editor.about.title"),
                Texts.of("editor.about", version == null ? Texts.of("editor.about.unbuilt") : version));
    }

    private void keys(Commands commands) {
        List<Object[]> rows = new ArrayList<>();
        for (CommandId id : CommandId.values()) {
            Object key = commands.get(id).getValue(Action.ACCELERATOR_KEY);
            if (key instanceof KeyStroke k) {
                rows.add(new Object[] {id.text(), spoken(k)});
            }
        }
        for (String habit : List.of("wheel", "pan", "rubber", "cable", "link", "arrows", "locker", "switch", "menu")) {
            rows.add(new Object[] {Texts.of("editor.habit." + habit), Texts.of("editor.habit." + habit + ".how")});
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
        table.setName("keys");
        table.setRowHeight(Look.px(24));
        JScrollPane scroll = new JScrollPane(table);
        scroll.setPreferredSize(new java.awt.Dimension(Look.px(560), Look.px(440)));
        prompts.tell(Texts.of("editor.keys.title"), scroll);
    }

    static String spoken(KeyStroke k) {
        String modifiers = java.awt.event.InputEvent.getModifiersExText(k.getModifiers());
        String key = java.awt.event.KeyEvent.getKeyText(k.getKeyCode());
        return (modifiers.isEmpty() ? "" : modifiers + "+")
                + key.substring(0, 1).toUpperCase(Locale.ROOT)
                + key.substring(1);
    }
}
