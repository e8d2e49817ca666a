package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.findings.Severity;

/**
 * Contrasts of the window in both looks, by WCAG 2.2 (W3C, 1.4.3 and 1.4.11): 4.5 : 1 for text, 3 : 1 for what is told by its
 * shape. What can't be used now is exempt there.
 */
class LookTest {
    private static final double TEXT = 4.5;
    private static final double SHAPE = 3;

    @AfterEach
    void light() throws Exception {
        HeadlessBench.onUi(() -> Look.install(false));
    }

    private static Color ui(String key) {
        return Objects.requireNonNull(UIManager.getColor(key), key);
    }

    private static Map<String, Color> grounds() {
        Map<String, Color> grounds = new LinkedHashMap<>();
        grounds.put("strip", Look.strip());
        grounds.put("margin", Look.margin());
        grounds.put("card", Look.card());
        grounds.put("chosen", Look.chosen());
        grounds.put("box", ui("Panel.background"));
        return grounds;
    }

    private static void least(List<String> found, double least, String what, Color a, Color b) {
        double is = contrast(a, b);
        if (is < least) {
            found.add(String.format(java.util.Locale.ROOT, "%s: %.2f of %.1f", what, is, least));
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void our_own_words_and_signs_can_be_read_on_every_ground(boolean dark) throws Exception {
        List<String> found = new ArrayList<>();
        HeadlessBench.onUi(() -> {
            Look.install(dark);
            grounds().forEach((name, ground) -> {
                least(found, TEXT, "text on " + name, Look.text(), ground);
                least(found, TEXT, "quiet on " + name, Look.quiet(), ground);
                least(found, SHAPE, "accent on " + name, Look.accent(), ground);
                for (Severity s : Severity.values()) {
                    least(found, TEXT, s + " on " + name, Look.severity(s), ground);
                }
            });
            least(found, TEXT, "quiet on desk", Look.quiet(), Look.desk());
            least(found, SHAPE, "ring on desk", Look.accent(), Look.desk());
        });
        assertThat(found).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void the_words_of_every_part_can_be_read_also_where_they_are_selected(boolean dark) throws Exception {
        Map<String, String> pairs = new LinkedHashMap<>();
        for (String part : List.of(
                "Label",
                "Button",
                "Button.default",
                "ToggleButton",
                "CheckBox",
                "ComboBox",
                "TextField",
                "TextArea",
                "Menu",
                "MenuItem",
                "MenuBar",
                "PopupMenu",
                "List",
                "Table",
                "TableHeader",
                "Tree",
                "ToolTip",
                "OptionPane",
                "Panel")) {
            pairs.put(part + ".foreground", part + ".background");
        }
        for (String part :
                List.of("Menu", "MenuItem", "CheckBoxMenuItem", "List", "Table", "Tree", "TextField", "ComboBox")) {
            pairs.put(part + ".selectionForeground", part + ".selectionBackground");
        }
        for (String part : List.of("List", "Table", "Tree")) {
            pairs.put(part + ".selectionInactiveForeground", part + ".selectionInactiveBackground");
        }
        pairs.put("MenuItem.acceleratorForeground", "PopupMenu.background");
        pairs.put("MenuItem.acceleratorSelectionForeground", "MenuItem.selectionBackground");
        List<String> found = new ArrayList<>();
        HeadlessBench.onUi(() -> {
            Look.install(dark);
            int met = 0;
            for (Map.Entry<String, String> p : pairs.entrySet()) {
                Color on = UIManager.getColor(p.getValue());
                Color words = UIManager.getColor(p.getKey());
                if (on != null && words != null) { // a look may leave one to the part that it lies in
                    met++;
                    least(found, TEXT, p.getKey(), words, on);
                }
            }
            assertThat(met).isGreaterThan(24);
        });
        assertThat(found).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void what_has_the_keys_is_ringed_so_that_it_shows_on_every_ground(boolean dark) throws Exception {
        List<String> found = new ArrayList<>();
        HeadlessBench.onUi(() -> {
            Look.install(dark);
            for (String key :
                    List.of("Component.focusColor", "Component.focusedBorderColor", "Button.toolbar.focusColor")) {
                grounds().forEach((name, ground) -> least(found, SHAPE, key + " on " + name, ui(key), ground));
            }
            for (String ground :
                    List.of("TextField.background", "ComboBox.background", "Table.background", "Tree.background")) {
                least(found, SHAPE, "ring on " + ground, ui("Component.focusColor"), ui(ground));
            }
            for (String ground : List.of("Table.selectionBackground", "Tree.selectionBackground")) {
                least(found, TEXT, "words on " + ground, ui(ground.replace("Back", "Fore")), ui(ground));
            }
            least(found, SHAPE, "ring on the chosen row", Look.accent(), Look.chosen());
            least(
                    found,
                    SHAPE,
                    "mark of a check box",
                    ui("CheckBox.icon.checkmarkColor"),
                    ui("CheckBox.icon.background"));
            least(found, SHAPE, "arrow of a choice", ui("ComboBox.buttonArrowColor"), ui("ComboBox.background"));
        });
        assertThat(found).isEmpty();
    }

    /** WCAG 2.2, relative luminance and contrast ratio. */
    private static double contrast(Color a, Color b) {
        double x = luminance(a);
        double y = luminance(b);
        return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
    }

    private static double luminance(Color c) {
        return 0.2126 * linear(c.getRed()) + 0.7152 * linear(c.getGreen()) + 0.0722 * linear(c.getBlue());
    }

    private static double linear(int channel) {
        double v = channel / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }
}
