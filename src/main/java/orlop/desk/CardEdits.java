package orlop.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Link;
import orlop.drawing.Message;
import orlop.drawing.Note;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Particulars;

/** The edits behind the lines of a card. */
public final class CardEdits {
    private CardEdits() {}

    /**
     * Gives a particular another value. A value that its record refuses makes the edit refuse.
     *
     * @param path of a {@link CardField}
     * @param value null for not known
     * @param condition id of the condition that is shown, for lines that belong to one
     */
    public static Edit set(String item, String path, @Nullable Object value, String condition) {
        return Edit.of(
                Message.of("drawing.edit.change", item),
                d -> changed(d, item, path, value, condition).applyTo(d));
    }

    /**
     * Gives a particular of several items the same value, as one step. Whether the drawing holds together is asked at the
     * end only, so that two components that are joined can change their system together. One refusal refuses all.
     *
     * @param value null for not known
     */
    public static Edit setAll(Set<String> items, String path, @Nullable Object value, String condition) {
        Set<String> all = new LinkedHashSet<>(items);
        return Edit.of(Message.of("desk.change-several", all.size()), d -> {
            Drawing after = d;
            for (String item : all) {
                after = raw(after, item, path, value, condition);
            }
            return Edits.sound(d, after);
        });
    }

    private static Drawing raw(Drawing d, String item, String path, @Nullable Object value, String condition) {
        Component c = d.components().get(item);
        Cable w = d.cables().get(item);
        if (c != null && !path.startsWith("condition.")) {
            return d.with(component(d, c, path, value));
        }
        return w != null
                ? d.with(cable(w, path, value))
                : changed(d, item, path, value, condition).applyTo(d);
    }

    private static Edit changed(Drawing d, String item, String path, @Nullable Object value, String condition) {
        Component c = d.components().get(item);
        if (c != null && path.startsWith("condition.")) {
            return inCondition(d, c, path.substring("condition.".length()), value, condition);
        }
        if (c != null && path.equals("particulars.mate")) {
            return SheetLinkPairs.pair(item, String.valueOf(value));
        }
        if (c != null) {
            return Edits.change(component(d, c, path, value));
        }
        Cable w = d.cables().get(item);
        if (w != null) {
            return path.equals("from") || path.equals("to")
                    ? CableEnds.move(d, item, path.equals("from"), String.valueOf(value))
                    : Edits.change(cable(w, path, value));
        }
        Link l = d.links().get(item);
        if (l != null) {
            return Edit.of(Message.of("drawing.edit.change", item), b -> b.with(deep(l, path, value)));
        }
        Note n = d.notes().get(item);
        if (n != null) {
            return Edit.of(
                    Message.of("drawing.edit.change", item),
                    b -> b.withNotes(b.notes().with(item, deep(n, path, value))));
        }
        throw new Edit.Refusal(Message.of("drawing.refuse.gone", item));
    }

    private static Component component(Drawing d, Component c, String path, @Nullable Object value) {
        if (path.startsWith("systems.")) {
            int i = Integer.parseInt(path.substring("systems.".length()));
            List<String> systems = new ArrayList<>(c.systems());
            while (systems.size() <= i) {
                systems.add(systems.get(systems.size() - 1));
            }
            systems.set(i, String.valueOf(value));
            return PolesFit.fitted(d, c.withSystems(systems));
        }
        if (path.startsWith("particulars.")) {
            Record p = (Record) c.particulars();
            return c.withParticulars((Particulars) RecordParts.with(p, path.substring("particulars.".length()), value));
        }
        return RecordParts.with(c, path, value);
    }

    /** A length that somebody enters is no estimate any longer, until that is said too. */
    private static Cable cable(Cable w, String path, @Nullable Object value) {
        Cable changed = deep(w, path, value);
        return path.equals("lengthM") ? changed.withLengthEstimated(false) : changed;
    }

    private static Edit inCondition(Drawing d, Component c, String part, @Nullable Object value, String condition) {
        OperatingCondition oc = d.conditions().get(condition);
        if (oc == null) {
            throw new Edit.Refusal(Message.of("drawing.flaw.no-condition", condition));
        }
        return Edits.change(
                switch (part) {
                    case "source" -> oc.withSource(c.id(), Boolean.TRUE.equals(value));
                    case "position" -> oc.withSwitch(c.id(), String.valueOf(value));
                    default -> oc.withLoad(c.id(), RecordParts.with(oc.load(c.id()), part, value));
                });
    }

    /** {@code construction.laying} is a part of a part. */
    private static <R extends Record> R deep(R record, String path, @Nullable Object value) {
        int dot = path.indexOf('.');
        if (dot < 0) {
            return RecordParts.with(record, path, value);
        }
        String first = path.substring(0, dot);
        Record inner = (Record) RecordParts.get(record, first);
        if (inner == null) {
            throw new IllegalArgumentException(path);
        }
        return RecordParts.with(record, first, deep(inner, path.substring(dot + 1), value));
    }
}
