package orlop.editor;

import java.awt.Component;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;
import org.jspecify.annotations.Nullable;
import orlop.desk.CardField;
import orlop.drawing.Message;

/** A particular that is chosen from a few. "Not known" is one of them where it may be. */
final class ChoiceRow extends FieldRow {
    private static final int MANY = 40;

    private final JComboBox<Item> box = new JComboBox<>();
    private boolean filling;
    private boolean open;

    private record Item(Object value, String label) {
        @Override
        public String toString() {
            return label;
        }
    }

    ChoiceRow(CardField field, int width, Function<@Nullable Object, Optional<Message>> writer) {
        super(field, width, writer);
        for (CardField.Choice c : field.choices()) {
            box.addItem(new Item(c.value(), Texts.of(c.label())));
        }
        if (field.choices().size() > MANY) { // it would ask each of them how wide it is
            field.choices().stream()
                    .map(c -> new Item(c.value(), Texts.of(c.label())))
                    .max(Comparator.comparingInt(i -> i.label().length()))
                    .ifPresent(box::setPrototypeDisplayValue);
        }
        box.setMaximumRowCount(16);
        box.setRenderer(new SeveralRenderer());
        box.addActionListener(e -> {
            if (!filling && !open) {
                take();
            }
        });
        box.addPopupMenuListener(new Opened());
        build(box);
        show(field);
    }

    private void take() {
        if (box.getSelectedItem() instanceof Item i && !stands(i) && !write(kept(i.value()))) {
            show(field());
        }
    }

    private boolean stands(Item i) {
        Object value = field().value();
        return !field().mixed() && i.value().equals(value == null ? "" : value);
    }

    /** While the list is open the arrow keys only go along it: what is there when it is shut is taken, unless by Escape. */
    private final class Opened implements PopupMenuListener {
        @Override
        public void popupMenuWillBecomeVisible(PopupMenuEvent e) {
            open = true;
        }

        @Override
        public void popupMenuWillBecomeInvisible(PopupMenuEvent e) {
            open = false;
            take();
        }

        @Override
        public void popupMenuCanceled(PopupMenuEvent e) {
            show(field());
        }
    }

    private @Nullable Object kept(Object value) {
        return field().optional() && value.equals("") ? null : value;
    }

    @Override
    JComponent editor() {
        return box;
    }

    @Override
    void show(CardField now) {
        filling = true;
        if (now.mixed()) {
            box.setSelectedIndex(-1);
            filling = false;
            return;
        }
        Object value = now.value() == null ? "" : now.value();
        for (int i = 0; i < box.getItemCount(); i++) {
            if (box.getItemAt(i).value().equals(value)) {
                box.setSelectedIndex(i);
            }
        }
        filling = false;
    }

    /** Where nothing is chosen, several items have different values. */
    private static final class SeveralRenderer extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, @Nullable Object value, int index, boolean selected, boolean focused) {
            Object shown = value == null ? Texts.of("editor.several") : value;
            return super.getListCellRendererComponent(list, shown, index, selected, focused);
        }
    }
}
