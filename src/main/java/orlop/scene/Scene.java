package orlop.scene;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import orlop.layout.Rect;

/**
 * A sheet ready to be painted, in millimetres from its upper left corner, y downwards.
 *
 * @param sheet id of the sheet
 * @param title words for the whole sheet
 * @param widthMm of the paper
 * @param heightMm of the paper
 * @param drawable the part of the paper in which things may be placed: within the frame, beside margin and title block
 * @param items in the order of painting
 * @param terminals all terminals that have a fixed spot
 * @param bars bars, along which a cable can begin anywhere
 * @param routes by tag of the cable or id of the link
 */
public record Scene(
        String sheet,
        String title,
        double widthMm,
        double heightMm,
        Rect drawable,
        List<SceneItem> items,
        List<TerminalSpot> terminals,
        List<BarSpan> bars,
        Map<String, Route> routes) {
    public Scene {
        items = List.copyOf(items);
        terminals = List.copyOf(terminals);
        bars = List.copyOf(bars);
        routes = Collections.unmodifiableMap(new LinkedHashMap<>(routes));
    }

    /**
     * What lies at a point and can be selected: the smallest component, label, marker, cable, link or note, with what lies
     * over others first. Frame, title block, legend and caution are nothing to select.
     *
     * @param toleranceMm how near a line must be, 0 or more
     */
    public Optional<SceneItem> itemAt(double x, double y, double toleranceMm) {
        return Hits.itemAt(this, x, y, toleranceMm);
    }

    /** The components, bars, cables, links and notes that lie wholly in a rectangle, in the order of painting. */
    public List<SceneItem> itemsIn(Rect r) {
        return Hits.itemsIn(this, r);
    }

    /** The nearest terminal, or the nearest spot on a bar, if one lies within the tolerance. Terminals win over bars. */
    public Optional<TerminalSpot> terminalNear(double x, double y, double toleranceMm) {
        return Hits.terminalNear(this, x, y, toleranceMm);
    }

    /** The nearest cable (no link) within the tolerance, and where along it. */
    public Optional<Route.Spot> cableAt(double x, double y, double toleranceMm) {
        return Hits.cableAt(this, x, y, toleranceMm);
    }

    /**
     * The number that a finding bears on this sheet.
     *
     * @param index its place in the list that was asked for, from 1
     */
    public Optional<Integer> findingNumber(int index) {
        return item(Role.FINDING, Integer.toString(index))
                .map(i -> i.data().get("number"))
                .map(Integer::valueOf);
    }

    /** The first item of this role and subject. */
    public Optional<SceneItem> item(Role role, String subject) {
        return items.stream()
                .filter(i -> i.role() == role && i.subject().equals(subject))
                .findFirst();
    }
}
