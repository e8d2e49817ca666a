package orlop.editor;

import com.formdev.flatlaf.FlatLaf;
import java.awt.Window;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import orlop.desk.OwnSymbols;
import orlop.desk.Session;
import orlop.drawing.Message;

/** The form of the preferences, and the switch between light and dark. What is chosen holds at once, in all windows. */
final class PreferenceCommands {
    private final Session session;
    private final Prompts prompts;
    private final Preferences preferences;
    private final JPanel content;
    private final Runnable onLook;
    private int shown = Preferences.times();

    /**
     * @param content of the window
     * @param onLook told when the look has changed
     */
    PreferenceCommands(Session session, Prompts prompts, Preferences preferences, JPanel content, Runnable onLook) {
        this.session = session;
        this.prompts = prompts;
        this.preferences = preferences;
        this.content = content;
        this.onLook = onLook;
    }

    void addTo(Commands c) {
        c.add(CommandId.PREFERENCES, this::ask);
        c.toggle(CommandId.DARK, Look::dark, this::turn);
    }

    private void ask() {
        Preferences p = preferences;
        String scaled = p.scale();
        JPanel page = Forms.page();
        JComboBox<String> language = box(page, "language", Preferences.LANGUAGES, p.language());
        JComboBox<String> areas = box(page, "areas", Preferences.AREAS, p.areas());
        JComboBox<String> look = box(page, "look", Preferences.LOOKS, p.look());
        JComboBox<String> scale = box(page, "scale", Preferences.SCALES, p.scale());
        JComboBox<String> wheel = box(page, "wheel", Preferences.WHEELS, p.wheel());
        JComboBox<String> rules = Forms.line(page, "editor.form.rules", NewDrawingForm.ruleBox(p.ruleSet()));
        page.add(new WrapText(Texts.of("editor.preferences.rules"), Look::quiet, Look::small));
        JTextField symbols = Forms.line(page, "editor.form.symbols", new JTextField(p.symbols()));
        page.add(new WrapText(Texts.of("editor.preferences.symbols"), Look::quiet, Look::small));
        page.add(new WrapText(Texts.title(OwnSymbols.said()), Look::quiet, Look::small));
        if (prompts.form(
                Texts.of("editor.preferences.title"),
                page,
                () -> p.refusal(symbols.getText().strip()))) {
            p.remember(Map.of(
                    "language", Preferences.LANGUAGES.get(language.getSelectedIndex()),
                    "areas", Preferences.AREAS.get(areas.getSelectedIndex()),
                    "look", Preferences.LOOKS.get(look.getSelectedIndex()),
                    "scale", Preferences.SCALES.get(scale.getSelectedIndex()),
                    "wheel", Preferences.WHEELS.get(wheel.getSelectedIndex()),
                    "rule-set", NewDrawingForm.RULE_SETS.get(rules.getSelectedIndex()),
                    "symbols", symbols.getText().strip()));
            boolean larger = !scaled.equals(p.scale());
            hold();
            session.say(larger ? Message.of("editor.say.scale") : OwnSymbols.said());
            p.tellOfKeeping(prompts);
            p.tellOfSymbols(prompts);
        }
    }

    private static JComboBox<String> box(JPanel page, String word, List<String> choices, String chosen) {
        JComboBox<String> box = new JComboBox<>();
        choices.forEach(c -> box.addItem(Texts.of("editor." + word + "." + c)));
        box.setSelectedIndex(choices.indexOf(chosen));
        return Forms.line(page, "editor.form." + word, box);
    }

    private void turn() {
        preferences.rememberLook(!Look.dark());
        hold();
    }

    private void hold() {
        preferences.install();
        FlatLaf.updateUI();
        SwingUtilities.updateComponentTreeUI(content);
        for (Window w : Window.getWindows()) {
            w.repaint();
        }
        show();
    }

    /** When the window comes to the front: what was chosen in another one is shown here too. */
    void catchUp() {
        if (shown != Preferences.times()) {
            show();
        }
    }

    private void show() {
        shown = Preferences.times();
        Set<String> selection = session.state().selection();
        session.select(Set.of()); // the card is made anew, in the new units
        session.select(selection);
        onLook.run();
    }
}
