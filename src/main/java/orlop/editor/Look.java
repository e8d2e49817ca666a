package orlop.editor;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.util.SystemInfo;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Font;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.UIManager;
import orlop.findings.Severity;
import orlop.scene.Ink;
import orlop.scene.Palette;

/** Light and dark: the colours of the window, in step with those of the sheet. */
final class Look {
    private Look() {}

    /** Sets the look of all windows to come. Those that are open change with {@link FlatLaf#updateUI()}. */
    static void install(boolean dark) {
        Map<String, String> defaults = new LinkedHashMap<>();
        defaults.put("@accentColor", dark ? "#9AA7B8" : "#3D4B5F");
        defaults.put("ScrollBar.width", "11");
        defaults.put(
                "Component.linkColor", "null"); // no text here is HTML, whose parser would be loaded for this colour
        // What has the keys is ringed, and nothing else looks so: the button that Enter presses is told by bold words.
        String ring = dark ? "#C4CCD8" : "#3D4B5F";
        defaults.put("Component.focusWidth", "2");
        defaults.put("Component.innerFocusWidth", "0");
        defaults.put("Component.focusColor", ring);
        defaults.put("Component.focusedBorderColor", ring);
        defaults.put("CheckBox.icon.focusWidth", "2");
        defaults.put("Button.default.borderWidth", "1");
        defaults.put("Button.default.borderColor", dark ? "#5C636C" : "#B9BFC8");
        defaults.put("Button.default.hoverBorderColor", ring);
        defaults.put("Button.default.boldText", "true");
        defaults.put("Button.toolbar.focusColor", ring);
        defaults.put("Table.focusCellHighlightBorder", "2,6,2,6," + ring + ",2");
        defaults.put("Table.focusSelectedCellHighlightBorder", "2,6,2,6," + ring + ",2");
        defaults.put("OptionPane.sameSizeButtons", "false"); // three answers in a row have room on a small screen
        defaults.put("Component.arc", "6");
        defaults.put("Button.arc", "6");
        defaults.put("TextComponent.arc", "6");
        if (dark) { // boxes and tables lie on the ground of a card
            defaults.put("@background", "#292D32");
            defaults.put("Button.default.foreground", "#15171A");
            defaults.put("Table.background", "#292D32");
            defaults.put("Table.selectionBackground", "#3D444D");
            defaults.put("Table.selectionForeground", "#E6E9ED");
            defaults.put("Table.selectionInactiveBackground", "#363C44");
            defaults.put("TableHeader.background", "#24272B");
            defaults.put("Tree.background", "#292D32");
            defaults.put("Tree.selectionBackground", "#3D444D");
            defaults.put("Tree.selectionForeground", "#E6E9ED");
            defaults.put("Tree.selectionInactiveBackground", "#363C44");
        }
        if (SystemInfo.isLinux) {
            defaults.put("defaultFont", "-2"); // its usual size there is made for roomier windows
        }
        FlatLaf.setGlobalExtraDefaults(defaults);
        if (dark) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
    }

    static boolean dark() {
        return FlatLaf.isLafDark();
    }

    /** The colours of the sheet. */
    static Palette palette() {
        return dark() ? Palette.DARK : Palette.LIGHT;
    }

    static Color ink(Ink ink) {
        return new Color(palette().rgb(ink));
    }

    static Color severity(Severity s) {
        return switch (s) {
            case DANGER -> ink(Ink.DANGER);
            case DEFECT -> ink(Ink.DEFECT);
            case ADVICE -> ink(Ink.ADVICE);
        };
    }

    /** Text. */
    static Color text() {
        return UIManager.getColor("Label.foreground");
    }

    /** Text of second rank: it keeps 4.5 : 1 on every ground of the window. */
    static Color quiet() {
        return dark() ? new Color(0xA9B1BB) : new Color(0x59616C);
    }

    /** Ground of strips, rail and status line. */
    static Color strip() {
        return dark() ? new Color(0x24272B) : Color.WHITE;
    }

    /** Ground of the margin: paper that isn't quite white. */
    static Color margin() {
        return dark() ? new Color(0x1F2226) : new Color(0xFBFBF8);
    }

    /** Ground of a card. */
    static Color card() {
        return dark() ? new Color(0x292D32) : Color.WHITE;
    }

    /** Behind the sheet. */
    static Color desk() {
        return dark() ? new Color(0x17191C) : new Color(0xDFE2E8);
    }

    /** Thin lines between the parts of the window. */
    static Color line() {
        return dark() ? new Color(0x43484F) : new Color(0xD3D7DD);
    }

    /** Ground of what is chosen. */
    static Color chosen() {
        return dark() ? new Color(0x30343A) : new Color(0xE9ECF1);
    }

    /** Edge of what is chosen or focused. */
    static Color accent() {
        return dark() ? new Color(0xC4CCD8) : new Color(0x3D4B5F);
    }

    static Font font() {
        return UIManager.getFont("Label.font");
    }

    static Font small() {
        Font f = font();
        return f.deriveFont(Math.max(11f, f.getSize2D() * 0.88f));
    }

    static Font bold() {
        return font().deriveFont(Font.BOLD);
    }

    /** Pixels of this screen to one of the usual resolution. */
    static float scale() {
        return UIScale.getUserScaleFactor();
    }

    /** A size in pixels of a window of the usual resolution, on this screen. */
    static int px(int size) {
        return UIScale.scale(size);
    }
}
