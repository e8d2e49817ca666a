package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.desk.OwnSymbols;
import orlop.drawing.Message;
import orlop.scene.Mark;
import orlop.scene.Role;

@Timeout(60)
class PreferencesTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // set by JUnit
    Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private HeadlessBench on;

    @BeforeEach
    void open() throws Exception {
        on = HeadlessBench.open(TestBoat.drawing(), settings());
    }

    @AfterEach
    void close() throws Exception {
        on.close();
        HeadlessBench.onUi(() -> new Preferences(new Settings(null)).install());
    }

    private Settings settings() {
        return new Settings(folder.resolve("settings.properties"));
    }

    private static void set(java.awt.Container form, String name, int index) {
        FormParts.named(form, JComboBox.class, "form." + name).setSelectedIndex(index);
    }

    private void choose(int areas, int look, int rules) throws Exception {
        on.answers().agree = true;
        on.answers().filling = form -> {
            set(form, "areas", areas);
            set(form, "look", look);
            set(form, "rules", rules);
        };
        on.run(CommandId.PREFERENCES);
    }

    @Test
    void what_is_chosen_holds_at_once_and_is_kept() throws Exception {
        assertThat(Preferences.beside(5.26)).isEqualTo("AWG 10");

        choose(2, 1, 3);

        assertThat(Look.dark()).isTrue();
        assertThat(Preferences.beside(5.26)).isEmpty();
        assertThat(on.bench().commands().get(CommandId.DARK).getValue(javax.swing.Action.SELECTED_KEY))
                .isEqualTo(true);
        Preferences kept = new Preferences(settings());
        assertThat(kept.look()).isEqualTo("dark");
        assertThat(kept.areas()).isEqualTo("mm2");
        assertThat(kept.ruleSet()).isEqualTo(NewDrawingForm.RULE_SETS.get(3));
        assertThat(kept.language()).isEqualTo("system");
    }

    @Test
    void what_holds_and_could_not_be_kept_is_told() throws Exception {
        on.close();
        Path inTheWay = Files.writeString(folder.resolve("home"), "in the way");
        on = HeadlessBench.open(TestBoat.drawing(), new Settings(inTheWay.resolve("settings.properties")));

        choose(0, 1, 3);

        assertThat(Look.dark()).isTrue();
        assertThat(on.answers().told).singleElement().asString().contains("could not be kept", "settings.properties");
    }

    @Test
    void a_window_that_comes_to_the_front_shows_what_was_chosen_in_another() throws Exception {
        HeadlessBench other = HeadlessBench.open(TestBoat.drawing(), settings());
        HeadlessBench.onUi(() -> other.session().select(Set.of("W3")));
        assertThat(texts(other)).anyMatch(t -> t.contains("AWG"));

        choose(2, 1, 3);
        HeadlessBench.onUi(() -> other.bench().catchUp());

        assertThat(other.bench().commands().get(CommandId.DARK).getValue(javax.swing.Action.SELECTED_KEY))
                .isEqualTo(true);
        assertThat(texts(other)).isNotEmpty().noneMatch(t -> t.contains("AWG"));
        assertThat(other.session().state().selection()).containsExactly("W3");
        other.close();
    }

    private static List<String> texts(HeadlessBench of) throws Exception {
        List<String> all = new ArrayList<>();
        HeadlessBench.onUi(() -> collect(of.bench().panel(), all));
        return all;
    }

    private static void collect(java.awt.Container in, List<String> all) {
        for (java.awt.Component c : in.getComponents()) {
            if (c instanceof javax.swing.JLabel l && l.getText() != null) {
                all.add(l.getText());
            }
            if (c instanceof java.awt.Container inner) {
                collect(inner, all);
            }
        }
    }

    @Test
    void gauges_stand_on_the_sheet_at_once_where_they_are_wished() throws Exception {
        assertThat(labels()).isNotEmpty().noneMatch(t -> t.contains("AWG"));

        choose(1, 0, 0);

        assertThat(labels()).anyMatch(t -> t.contains("mm² (") && t.contains("AWG"));
        assertThat(Preferences.beside(5.26)).isEqualTo("AWG 10");
        choose(0, 0, 0);
        assertThat(labels()).noneMatch(t -> t.contains("AWG"));
    }

    private List<String> labels() throws Exception {
        List<String> texts = new ArrayList<>();
        HeadlessBench.onUi(() -> on.bench().canvas().scene().orElseThrow().items().stream()
                .filter(i -> i.role() == Role.LABEL)
                .flatMap(i -> i.marks().stream())
                .filter(Mark.Text.class::isInstance)
                .forEach(m -> texts.add(((Mark.Text) m).text())));
        return texts;
    }

    @Test
    void the_size_is_kept_for_the_next_start_and_goes_after_that_of_the_command() throws Exception {
        assertThat(new Preferences(settings()).scale()).isEqualTo("100");
        on.answers().agree = true;
        on.answers().filling = form -> set(form, "scale", Preferences.SCALES.indexOf("200"));
        on.run(CommandId.PREFERENCES);

        assertThat(new Preferences(settings()).scale()).isEqualTo("200");
        assertThat(status()).isEqualTo(Texts.title(Message.of("editor.say.scale")));
        String before = System.getProperty("flatlaf.uiScale");
        try {
            System.clearProperty("flatlaf.uiScale");
            new Preferences(settings()).scaleFromTheStart();
            assertThat(System.getProperty("flatlaf.uiScale")).isEqualTo("200%");
            System.setProperty("flatlaf.uiScale", "1.5");
            new Preferences(settings()).scaleFromTheStart();
            assertThat(System.getProperty("flatlaf.uiScale")).isEqualTo("1.5");
        } finally {
            System.clearProperty("flatlaf.uiScale");
            if (before != null) {
                System.setProperty("flatlaf.uiScale", before);
            }
        }
    }

    @Test
    void boxes_of_swing_speak_the_language_of_the_texts_and_not_that_of_the_machine() throws Exception {
        Locale machine = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            JComponent.setDefaultLocale(Locale.GERMANY); // as a start on such a machine has it
            HeadlessBench.onUi(() -> {
                new Preferences(settings()).install();

                assertThat(UIManager.getString("OptionPane.cancelButtonText", new JPanel().getLocale()))
                        .isEqualTo("Cancel");
                assertThat(new JFileChooser().getUI().getApproveButtonText(new JFileChooser()))
                        .isEqualTo("Open");
            });
        } finally {
            Locale.setDefault(machine);
            JComponent.setDefaultLocale(machine);
        }
    }

    @Test
    void a_new_drawing_begins_with_the_rule_set_that_is_preferred() throws Exception {
        choose(0, 0, 1);

        assertThat(new NewDrawingForm(new Preferences(settings()).ruleSet())
                        .drawing()
                        .vessel()
                        .ruleSet())
                .isEqualTo("iso13297");
    }

    private Path symbols(String element) throws Exception {
        Path own = java.nio.file.Files.createDirectories(folder.resolve("own"));
        java.nio.file.Files.writeString(own.resolve("manifest.json"), """
                {"symbols": [{"name": "hooked", "file": "hooked.svg", "kind": "fuse",
                 "terminals": {"1": [0, -5, "up"], "2": [0, 5, "down"]}, "texts": [{"side": "right", "at": [2, 0]}]}]}""");
        java.nio.file.Files.writeString(own.resolve("hooked.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="-2 -6 4 12" fill="none" stroke="currentColor"
                stroke-width=".25">%s</svg>""".formatted(element));
        return own;
    }

    private void chooseSymbols(Path own) throws Exception {
        on.answers().agree = true;
        on.answers().filling = form -> FormParts.named(form, javax.swing.JTextField.class, "form.symbols")
                .setText(own.toString());
        on.run(CommandId.PREFERENCES);
    }

    private String status() {
        return ((javax.swing.JLabel) on.named("status").orElseThrow()).getText();
    }

    @Test
    void own_symbols_are_drawn_with_at_once_and_of_what_is_refused_it_is_said_why() throws Exception {
        chooseSymbols(symbols("<path d=\"M0 -5 V5\"/>"));

        assertThat(OwnSymbols.now().refused()).isNull();
        assertThat(OwnSymbols.library().find("fuse").orElseThrow().name()).isEqualTo("hooked");
        assertThat(status()).containsIgnoringCase("symbols of your own that are used: 1");
        assertThat(new Preferences(settings()).symbols()).endsWith("own");

        chooseSymbols(symbols("<script/>"));

        assertThat(OwnSymbols.library().find("fuse").orElseThrow().name()).isEqualTo("fuse");
        assertThat(status()).contains("own").contains("hooked.svg").contains("script");
        assertThat(on.answers().told).hasSize(1).allMatch(t -> t.contains("hooked.svg") && t.contains("script"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"EXPORT_SVG", "EXPORT_PNG"})
    void a_sheet_is_exported_with_own_symbols_too(String command) throws Exception {
        chooseSymbols(symbols("<path d=\"M0 -5 V5\"/>"));
        CommandId id = CommandId.valueOf(command);
        Path file = folder.resolve("sheet" + (id == CommandId.EXPORT_SVG ? ".svg" : ".png"));
        on.answers().file = file;

        on.run(id);

        assertThat(file).exists();
        if (id == CommandId.EXPORT_SVG) {
            assertThat(file).content().contains("hooked");
        }
        assertThat(status()).contains(String.valueOf(file.getFileName()));
    }

    @Test
    void a_folder_that_cannot_be_taken_leaves_the_form_open_and_what_holds_as_it_is() throws Exception {
        on.answers().agree = true;
        String before = new Preferences(settings()).symbols();
        Path refused = symbols("<script/>");
        for (String typed : List.of("/no/such/folder", refused.toString(), "a\0b")) {
            on.answers().told.clear();
            on.answers().filling = form -> FormParts.named(form, javax.swing.JTextField.class, "form.symbols")
                    .setText(typed);
            on.run(CommandId.PREFERENCES);

            assertThat(on.answers().told).as(typed).hasSize(1);
            assertThat(new Preferences(settings()).symbols()).isEqualTo(before);
        }
        on.answers().filling = form -> FormParts.named(form, javax.swing.JTextField.class, "form.symbols")
                .setText(" ");
        on.run(CommandId.PREFERENCES);
        assertThat(new Preferences(settings()).symbols()).isEqualTo(before);
    }

    @Test
    void a_start_tells_of_the_same_refusal_once_and_then_in_the_line_at_the_foot() throws Exception {
        List<String> told = on.answers().told;
        List<Message> line = new ArrayList<>();
        OwnSymbols.read(symbols("<script/>"));

        new Preferences(settings()).tellOfSymbolsAtStart(on.answers(), line::add);
        assertThat(told).hasSize(1);
        assertThat(line).isEmpty();

        new Preferences(settings()).tellOfSymbolsAtStart(on.answers(), line::add);
        assertThat(told).hasSize(1);
        assertThat(line).singleElement().isEqualTo(OwnSymbols.said());

        OwnSymbols.read(symbols("<image/>"));
        new Preferences(settings()).tellOfSymbolsAtStart(on.answers(), line::add);
        assertThat(told).hasSize(2);

        OwnSymbols.read(symbols("<path d=\"M0 -5 V5\"/>"));
        new Preferences(settings()).tellOfSymbolsAtStart(on.answers(), line::add);
        OwnSymbols.read(symbols("<image/>"));
        new Preferences(settings()).tellOfSymbolsAtStart(on.answers(), line::add);
        assertThat(told).hasSize(3);
        assertThat(line).hasSize(1);
    }

    @Test
    void who_backs_out_changes_nothing() throws Exception {
        on.run(CommandId.PREFERENCES);

        assertThat(settings().fresh()).isTrue();
        assertThat(Look.dark()).isFalse();
    }

    @Test
    void a_word_that_nobody_knows_is_as_none() {
        Settings s = settings();
        s.rememberWord("look", "pink");

        assertThat(new Preferences(s).look()).isEqualTo("light");
    }

    @Test
    void panes_are_found_as_they_were_left() throws Exception {
        on.run(CommandId.SHOW_LOCKER);
        on.run(CommandId.SHOW_MARGIN);
        on.run(CommandId.SHOW_STRIP);
        on.run(CommandId.SHOW_REGISTER);

        HeadlessBench again = HeadlessBench.open(TestBoat.drawing(), settings());

        assertThat(again.named("locker").orElseThrow().isVisible()).isFalse();
        assertThat(again.named("margin").orElseThrow().isVisible()).isFalse();
        assertThat(again.named("conditions").orElseThrow().isVisible()).isFalse();
        assertThat(again.named("fold-out").orElseThrow().isVisible()).isTrue();
        assertThat(again.bench().commands().get(CommandId.SHOW_LOCKER).getValue(javax.swing.Action.SELECTED_KEY))
                .isEqualTo(false);
        again.close();
    }

    @ParameterizedTest
    @CsvSource({
        "'''prefer-dark''', true",
        "'''default''', false",
        "Dark, true",
        "'', false",
        "'    AppsUseLightTheme    REG_DWORD    0x0', true",
        "'    AppsUseLightTheme    REG_DWORD    0x1', false",
        "Adwaita:dark, true"
    })
    void the_desktops_answer_is_read(String answer, boolean dark) {
        assertThat(SystemLook.dark(answer)).isEqualTo(dark);
    }
}
