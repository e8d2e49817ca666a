package orlop.editor;

import java.awt.Color;
import java.awt.Font;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;

/** Text that wraps at words and can't be edited. */
final class WrapText extends JTextArea {
    private static final long serialVersionUID = 1L;
    /** The space between a figure and what it is a figure of. */
    private static final Pattern UNIT =
            Pattern.compile("(?<=\\d) (?=(?:[mkM]?(?:A|V|W|Ω|Ah|VA|Hz|m|g)|mm²|%|°C|h|s)\\b|mm²|%|[mk]?Ω)");

    private final transient Supplier<Color> color;
    private final transient Supplier<Font> face;

    WrapText(String text, Supplier<Color> color, Supplier<Font> face) {
        still();
        setText(text);
        this.color = color;
        this.face = face;
        setLineWrap(true);
        setWrapStyleWord(true);
        setEditable(false);
        setFocusable(false);
        setOpaque(false);
        setBorder(null);
        setFont(face.get());
    }

    /** A number and its unit stay on one line. */
    @Override
    public void setText(String text) {
        super.setText(UNIT.matcher(text).replaceAll("\u00A0"));
    }

    /** Text that is set moves the caret, and that would scroll whatever we lie in. */
    private void still() {
        if (getCaret() instanceof DefaultCaret c) {
            c.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        still();
        setOpaque(false);
        setBorder(null);
        if (face != null) { // the first call comes from the constructor above ours
            setFont(face.get());
        }
    }

    @Override
    public Color getForeground() {
        return color == null ? Look.text() : color.get();
    }
}
