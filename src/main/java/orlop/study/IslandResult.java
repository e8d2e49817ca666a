package orlop.study;

import java.util.List;

/**
 * Points that closed cables, links and devices join, with a source that feeds them.
 *
 * @param id id of its first point, in the order of the drawing
 * @param system id of that point's system
 * @param pointCount how many points it has
 * @param sources tags of the sources in it, and of the converters that feed it, in the order of the drawing
 * @param loopCount how many independent loops it has, 0 for a tree
 * @param loops each independent loop as the tags of the cables and components round it; those of a spanning tree, not the
 *     shortest. Cut off where they would grow with the square of the drawing's size
 */
public record IslandResult(
        String id, String system, int pointCount, List<String> sources, int loopCount, List<List<String>> loops) {
    public IslandResult {
        sources = List.copyOf(sources);
        loops = loops.stream().map(List::copyOf).toList();
    }
}
