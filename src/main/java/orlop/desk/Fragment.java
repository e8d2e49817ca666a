package orlop.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Link;
import orlop.drawing.Message;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.drawing.Tags;
import orlop.drawing.TerminalRef;

/**
 * A part of a drawing, cut or copied: components and what joins them among themselves.
 *
 * @param components in the order of the drawing
 * @param cables those with both ends among the components
 * @param links those with both ends among the components
 */
public record Fragment(List<Component> components, List<Cable> cables, List<Link> links) {
    public Fragment {
        components = List.copyOf(components);
        cables = List.copyOf(cables);
        links = List.copyOf(links);
    }

    /**
     * A fragment ready to be put in.
     *
     * @param edit puts it in, under fresh tags
     * @param ids what will have been put in
     */
    public record Pasted(Edit edit, Set<String> ids) {}

    /** What of these ids can be copied. */
    public static Fragment of(Drawing d, Set<String> ids) {
        List<Component> components =
                d.components().stream().filter(c -> ids.contains(c.id())).toList();
        Set<String> in = new LinkedHashSet<>();
        components.forEach(c -> in.add(c.id()));
        return new Fragment(
                components,
                d.cables().stream()
                        .filter(w -> in.contains(w.from().component()) && in.contains(w.to().component()))
                        .toList(),
                d.links().stream()
                        .filter(l -> in.contains(l.from().component()) && in.contains(l.to().component()))
                        .toList());
    }

    public boolean isEmpty() {
        return components.isEmpty();
    }

    /**
     * This fragment, to be put on a sheet of a drawing, moved by so much.
     *
     * @param d the drawing it goes into; systems and locations that it hasn't make the edit refuse
     */
    public Pasted onto(Drawing d, String sheet, double dxMm, double dyMm) {
        Map<String, String> tags = new LinkedHashMap<>();
        Drawing after = d;
        for (Component c : components) {
            String tag = d.hasItem(c.id()) || after.hasItem(c.id()) ? Tags.next(after, c.kind()) : c.id();
            tags.put(c.id(), tag);
            after = after.with(moved(c, tag, sheet, dxMm, dyMm));
        }
        Set<String> ids = new LinkedHashSet<>(tags.values());
        List<Cable> newCables = new ArrayList<>();
        for (Cable w : cables) {
            String tag = after.hasItem(w.id()) ? Tags.nextCable(after) : w.id();
            Cable copy = w.withId(tag)
                    .withEnds(end(w.from(), tags), end(w.to(), tags))
                    .withBends(w.bends().stream().map(p -> p.plus(dxMm, dyMm)).toList());
            after = after.with(copy);
            newCables.add(copy);
            ids.add(tag);
        }
        for (Link l : links) {
            after = after.with(l.withEnds(end(l.from(), tags), end(l.to(), tags)));
        }
        Drawing result = after;
        Message label = Message.of("desk.paste", components.size());
        return new Pasted(Edit.of(label, before -> merged(before, result, tags, newCables)), ids);
    }

    /** Puts what is new into the drawing that the edit meets, which is that for which the tags were made. */
    private Drawing merged(Drawing before, Drawing result, Map<String, String> tags, List<Cable> newCables) {
        Drawing after = before;
        for (String tag : tags.values()) {
            Component c = result.components().require(tag);
            for (String s : c.systems()) {
                if (!before.systems().contains(s)) {
                    throw new Edit.Refusal(Message.of("drawing.flaw.no-system", s));
                }
            }
            after = after.with(c);
        }
        for (Cable w : newCables) {
            after = after.with(w);
        }
        for (Link l : links) {
            after = after.with(l.withEnds(end(l.from(), tags), end(l.to(), tags)));
        }
        return after;
    }

    private static TerminalRef end(TerminalRef t, Map<String, String> tags) {
        return new TerminalRef(tags.getOrDefault(t.component(), t.component()), t.terminal());
    }

    private static Component moved(Component c, String tag, String sheet, double dxMm, double dyMm) {
        Place p = c.place();
        Point at = p.at().plus(dxMm, dyMm);
        return c.withId(tag).withPlace(new Place(sheet, at, p.rotationDegree(), p.mirrored(), p.labelAt()));
    }
}
