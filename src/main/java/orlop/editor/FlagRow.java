package orlop.editor;

import java.util.Optional;
import java.util.function.Function;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import orlop.desk.CardField;
import orlop.drawing.Message;

/** A particular that is so or not so. */
final class FlagRow extends FieldRow {
    private final JCheckBox box = new JCheckBox();

    FlagRow(CardField field, int width, Function<@Nullable Object, Optional<Message>> writer) {
        super(field, width, writer);
        box.setOpaque(false);
        box.addActionListener(e -> {
            if (!write(box.isSelected())) {
                show(field());
            }
        });
        build(box);
        show(field);
    }

    @Override
    JComponent editor() {
        return box;
    }

    @Override
    void show(CardField now) {
        boolean on = Boolean.TRUE.equals(now.value());
        box.setSelected(on);
        box.setText(now.mixed() ? Texts.of("editor.several") : ""); // "no" beside it could be what a tick means
    }
}
