package orlop.editor;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JPopupMenu;

/** Gives each entry of a menu, or each answer of a box, a letter of its own by which it is chosen: the first of its words, else a later one. */
final class MenuLetters {
    private MenuLetters() {}

    static void give(JMenuBar bar) {
        List<AbstractButton> menus = new ArrayList<>();
        for (int i = 0; i < bar.getMenuCount(); i++) {
            menus.add(bar.getMenu(i));
            inside(bar.getMenu(i).getPopupMenu());
        }
        give(menus);
    }

    /** The entries of a menu that opens on the sheet. */
    static void give(JPopupMenu menu) {
        inside(menu);
    }

    private static void inside(JPopupMenu menu) {
        List<AbstractButton> entries = new ArrayList<>();
        for (Component c : menu.getComponents()) {
            if (c instanceof AbstractButton b) {
                entries.add(b);
            }
            if (c instanceof JMenu m) {
                inside(m.getPopupMenu());
            }
        }
        give(entries);
    }

    /** Entries that stand together, or the answers of a box. */
    static void give(List<AbstractButton> entries) {
        Set<Character> taken = new HashSet<>();
        List<AbstractButton> later = new ArrayList<>();
        for (AbstractButton b : entries) {
            if (!one(b, b.getText().substring(0, 1), taken)) {
                later.add(b);
            }
        }
        for (AbstractButton b : later) {
            if (!one(b, beginnings(b.getText()), taken)) {
                one(b, b.getText(), taken);
            }
        }
    }

    /** The first letters of its words. */
    private static String beginnings(String text) {
        StringBuilder s = new StringBuilder();
        for (String word : text.split("\\s+", -1)) {
            s.append(word, 0, Math.min(1, word.length()));
        }
        return s.toString();
    }

    private static boolean one(AbstractButton b, String letters, Set<Character> taken) {
        for (char c : letters.toUpperCase(Locale.ROOT).toCharArray()) {
            if (c >= 'A' && c <= 'Z' && taken.add(c)) {
                b.setMnemonic(KeyEvent.getExtendedKeyCodeForChar(c));
                return true;
            }
        }
        return false;
    }
}
