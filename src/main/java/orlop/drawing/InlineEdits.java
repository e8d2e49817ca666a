package orlop.drawing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Insertion of an in-line device into a cable and its reverse.
 *
 * <p>Insertion parts the cable in two: the first part keeps the tag, the second gets the next free one, and the length
 * is shared out: both then are estimates. A part of no length at a terminal becomes a link, so that a fuse can sit right
 * on a bar. Deletion of an in-line device joins what it parted.
 */
final class InlineEdits {
    private InlineEdits() {}

    /**
     * Parts a cable and puts the device's terminals 1 and 2 between the parts.
     *
     * @param cable tag of the cable
     * @param device a new component with terminals 1 and 2
     * @param share how far along the cable, 0 at {@code from} to 1 at {@code to}; exactly 0 or 1 makes a link
     */
    static Edit insert(String cable, Component device, double share) {
        return Edit.of(Message.of("drawing.edit.insert", device.kind().term(), device.id(), cable), d -> {
            Cable w = d.cables().get(cable);
            if (w == null) {
                throw Edits.refusal("drawing.refuse.gone", cable);
            }
            Locked.refuse(d, cable);
            if (!inline(device)) {
                throw Edits.refusal("drawing.refuse.not-inline", device.kind().term());
            }
            Drawing placed = Edits.place(device).applyTo(d);
            return Edits.sound(d, part(placed, w, device.id(), Checks.between(share, 0, 1, "share")));
        });
    }

    private static Drawing part(Drawing d, Cable w, String device, double share) {
        TerminalRef one = new TerminalRef(device, "1");
        TerminalRef two = new TerminalRef(device, "2");
        Double whole = w.lengthM();
        if (share == 0) {
            return d.with(w.withEnds(two, w.to())).with(Link.of(w.from(), one));
        }
        if (share == 1) {
            return d.with(w.withEnds(w.from(), one)).with(Link.of(two, w.to()));
        }
        Cable first = w.withEnds(w.from(), one)
                .withBends(List.of())
                .withLengthM(whole == null ? null : whole * share)
                .withLengthEstimated(whole != null);
        Cable second = w.withId(Tags.nextCable(d))
                .withEnds(two, w.to())
                .withBends(List.of())
                .withLengthM(whole == null ? null : whole * (1 - share))
                .withLengthEstimated(whole != null);
        return d.with(first).with(second);
    }

    static boolean inline(Component c) {
        return c.particulars().terminals().equals(List.of("1", "2"))
                && !c.kind().spansSystems()
                && c.kind().group() != Group.SOURCES
                && c.kind().group() != Group.LOADS;
    }

    /** Deletes items by id. Cables and links at a deleted component go too, unless they can be healed. */
    static Edit delete(Set<String> ids) {
        Set<String> all = new LinkedHashSet<>(ids);
        Message label = all.size() == 1
                ? Message.of("drawing.edit.delete-one", all.iterator().next())
                : Message.of("drawing.edit.delete", all.size());
        return Edit.of(label, d -> {
            Drawing after = d;
            for (String id : all) {
                after = deleteOne(after, id, all);
            }
            return Forgetting.recordsOfGone(d, after);
        });
    }

    private static Drawing deleteOne(Drawing d, String id, Set<String> all) {
        Locked.refuse(d, id);
        Component c = d.components().get(id);
        if (c == null) {
            return d.withCables(d.cables().without(id))
                    .withLinks(d.links().without(id))
                    .withNotes(d.notes().without(id));
        }
        Drawing healed = inline(c) ? heal(d, c, all) : d;
        Drawing bare = withoutEndsAt(healed, id);
        return Forgetting.forget(bare.withComponents(bare.components().without(id)), id);
    }

    private static Drawing heal(Drawing d, Component c, Set<String> all) {
        End a = onlyEnd(d, new TerminalRef(c.id(), "1"));
        End b = onlyEnd(d, new TerminalRef(c.id(), "2"));
        boolean goesAnyway = a == null
                || b == null
                || all.contains(a.id())
                || all.contains(b.id())
                || a.id().equals(b.id())
                || a.far().equals(b.far());
        if (goesAnyway || a == null || b == null) {
            return d;
        }
        Locked.refuse(d, a.id());
        Locked.refuse(d, b.id());
        Drawing bare = without(without(d, a), b);
        Cable keep = a.cable() != null ? a.cable() : b.cable();
        if (keep == null) {
            Link joined = new Link(
                    Link.idOf(a.far(), b.far()), a.far(), b.far(), a.lengthM() + b.lengthM(), null, Extras.NONE);
            return bare.hasItem(joined.id()) ? bare : bare.with(joined);
        }
        return bare.withCables(healedCables(d, keep, a, b));
    }

    private static Ledger<Cable> healedCables(Drawing d, Cable keep, End a, End b) {
        Ledger<Cable> cables = d.cables().with(keep.id(), healedCable(d, keep, a, b));
        Cable other = a.cable() != null && b.cable() != null ? b.cable() : null;
        return other == null ? cables : cables.without(other.id());
    }

    private static Cable healedCable(Drawing d, Cable keep, End a, End b) {
        boolean forward = a.cable() == null || a.cable().from().equals(a.far());
        if (a.cable() == null && b.cable() != null) {
            forward = b.cable().to().equals(b.far());
        }
        Cable joined = forward ? keep.withEnds(a.far(), b.far()) : keep.withEnds(b.far(), a.far());
        if (a.cable() == null || b.cable() == null) {
            return joined;
        }
        Double la = a.cable().lengthM();
        Double lb = b.cable().lengthM();
        if (la == null || lb == null) {
            return joined.withBends(List.of()).withLengthM(null).withLengthEstimated(false);
        }
        return joined.withBends(List.of())
                .withLengthM(la + lb)
                .withLengthEstimated(estimated(d, a, b, a.cable(), b.cable()));
    }

    /** Two shares of one length are as sure together as it was, unless there is a further share behind the next device. */
    private static boolean estimated(Drawing d, End a, End b, Cable one, Cable other) {
        return one.lengthEstimated() != other.lengthEstimated()
                || (one.lengthEstimated() && (shared(d, a.far()) || shared(d, b.far())));
    }

    private static boolean shared(Drawing d, TerminalRef at) {
        Component c = d.components().get(at.component());
        if (c == null || !inline(c)) {
            return false;
        }
        End behind = onlyEnd(d, new TerminalRef(c.id(), at.terminal().equals("1") ? "2" : "1"));
        return behind != null && behind.cable() != null && behind.cable().lengthEstimated();
    }

    /** What is connected to a terminal, and where it leads; the length is that of a link. */
    private record End(String id, @Nullable Cable cable, TerminalRef far, double lengthM) {}

    private static @Nullable End onlyEnd(Drawing d, TerminalRef t) {
        List<End> ends = new ArrayList<>();
        for (Cable w : d.cables().values()) {
            if (w.from().equals(t) || w.to().equals(t)) {
                ends.add(new End(w.id(), w, w.from().equals(t) ? w.to() : w.from(), 0));
            }
        }
        for (Link l : d.links().values()) {
            if (l.from().equals(t) || l.to().equals(t)) {
                ends.add(new End(l.id(), null, l.from().equals(t) ? l.to() : l.from(), l.lengthM()));
            }
        }
        return ends.size() == 1 ? ends.get(0) : null;
    }

    private static Drawing without(Drawing d, End e) {
        return e.cable() != null
                ? d.withCables(d.cables().without(e.id()))
                : d.withLinks(d.links().without(e.id()));
    }

    private static Drawing withoutEndsAt(Drawing d, String component) {
        Drawing after = d;
        for (Cable w : d.cables().values()) {
            if (w.from().component().equals(component) || w.to().component().equals(component)) {
                Locked.refuse(d, w.id());
                after = after.withCables(after.cables().without(w.id()));
            }
        }
        for (Link l : d.links().values()) {
            if (l.from().component().equals(component) || l.to().component().equals(component)) {
                after = after.withLinks(after.links().without(l.id()));
            }
        }
        return after;
    }
}
