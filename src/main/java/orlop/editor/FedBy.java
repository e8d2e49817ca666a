package orlop.editor;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Group;

/** Whether a source can be reached from a component along cables, through switches, devices and bars, however they stand. */
final class FedBy {
    private final Drawing d;
    private final String not;

    /** @param not the component through which it isn't sought */
    FedBy(Drawing d, String not) {
        this.d = d;
        this.not = not;
    }

    boolean source(String from) {
        Set<String> met = new HashSet<>(List.of(not, from));
        Deque<String> open = new ArrayDeque<>(List.of(from));
        for (String id = open.poll(); id != null; id = open.poll()) {
            Component c = d.components().require(id);
            if (c.kind().group() == Group.SOURCES) {
                return true;
            }
            if (!c.kind().spansSystems()) {
                beside(id).filter(met::add).forEach(open::add);
            }
        }
        return false;
    }

    private Stream<String> beside(String id) {
        Stream<String> cables = d.cables().stream()
                .filter(w ->
                        w.from().component().equals(id) || w.to().component().equals(id))
                .flatMap(w -> Stream.of(w.from().component(), w.to().component()));
        Stream<String> links = d.links().stream()
                .filter(l ->
                        l.from().component().equals(id) || l.to().component().equals(id))
                .flatMap(l -> Stream.of(l.from().component(), l.to().component()));
        return Stream.concat(cables, links);
    }
}
