package orlop.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import orlop.desk.CardField;
import orlop.desk.Session;
import orlop.drawing.Edit;
import orlop.drawing.Message;

/** The lines of a card, each with its editor. */
final class CardRows {
    private final int width;
    private final String item;
    private final Drafts drafts;
    private final Writer writer;
    private final List<FieldRow> rows = new ArrayList<>();
    private List<CardField> fields;

    /** Gives the drawing new values. */
    static final class Writer {
        private final Session session;
        private final BiFunction<String, @Nullable Object, Edit> edit;

        /** @param edit of a path and its value */
        Writer(Session session, BiFunction<String, @Nullable Object, Edit> edit) {
            this.session = session;
            this.edit = edit;
        }

        /** Says why it was refused. */
        Optional<Message> write(String path, @Nullable Object value) {
            return session.apply(edit.apply(path, value));
        }

        /** What is typed at a path. */
        TypedStep typed(String path) {
            return new TypedStep(session, v -> edit.apply(path, v));
        }
    }

    /** @param item under which drafts are kept: the id of an item, or a name for several */
    CardRows(List<CardField> fields, int width, String item, Drafts drafts, Writer writer) {
        this.fields = List.copyOf(fields);
        this.width = width;
        this.item = item;
        this.drafts = drafts;
        this.writer = writer;
    }

    boolean isEmpty() {
        return fields.isEmpty();
    }

    boolean has(CardField.Section section) {
        return fields.stream().anyMatch(f -> f.section() == section);
    }

    boolean has(CardField.Section section, String name) {
        return fields.stream().anyMatch(f -> f.section() == section && f.name().equals(name));
    }

    void fill(CardField.Section section, JPanel into) {
        for (CardField f : fields) {
            if (f.section() == section) {
                FieldRow r = row(f);
                rows.add(r);
                into.add(r.panel());
            }
        }
    }

    private FieldRow row(CardField f) {
        Function<@Nullable Object, Optional<Message>> own = v -> writer.write(f.path(), v);
        return switch (f.type()) {
            case NUMBER, WHOLE, TEXT -> new TextRow(f, width, own, writer.typed(f.path()), drafts, item);
            case LINES -> new AreaRow(f, width, own);
            case CHOICE -> new ChoiceRow(f, width, own);
            case FLAG -> new FlagRow(f, width, own);
        };
    }

    /**
     * Shows other values in the same lines.
     *
     * @return false if the lines are others now, and a new card is needed
     */
    boolean refresh(List<CardField> now) {
        if (now.size() != fields.size()) {
            return false;
        }
        for (int i = 0; i < now.size(); i++) {
            if (!now.get(i).sameLine(fields.get(i))) {
                return false;
            }
        }
        fields = List.copyOf(now);
        for (FieldRow r : rows) {
            now.stream()
                    .filter(f -> f.path().equals(r.field().path()))
                    .findFirst()
                    .ifPresent(r::refresh);
        }
        return true;
    }

    Optional<FieldRow> row(String name) {
        return rows.stream().filter(r -> r.field().name().equals(name)).findFirst();
    }
}
