package orlop.editor;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.desk.DrawnBar;
import orlop.desk.Insertions;
import orlop.desk.OwnSymbols;
import orlop.desk.Placings;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.drawing.Component;
import orlop.drawing.Edits;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.scene.Ink;
import orlop.scene.Route;
import orlop.symbols.Symbol;

/**
 * Places a component where the mouse is let go: on the paper, or in the cable under it; a bar also from where the mouse is
 * pressed to where it is let go. With Shift, one after another.
 */
final class PlaceTool implements Tool {
    private static final double BAR_MM = 1.4;

    private final SheetCanvas canvas;
    private final Session session;
    private final Kind kind;
    private final @Nullable Symbol symbol;
    private @Nullable Spot at;
    private @Nullable Spot pressedAt;

    PlaceTool(SheetCanvas canvas, Kind kind) {
        this.canvas = canvas;
        this.session = canvas.session();
        this.kind = kind;
        this.symbol = OwnSymbols.library().find(kind.word()).orElse(null);
        canvas.hint(placeHint());
    }

    private String word(String what) {
        return "editor.hint." + what + (canvas.byKeys() ? "-keys" : "");
    }

    Kind kind() {
        return kind;
    }

    /** How long a bar of this kind is drawn, in millimetres; 0 for what is no bar. */
    double barMm() {
        return DrawnBar.usualMm(kind);
    }

    @Override
    public boolean placing() {
        return true;
    }

    @Override
    public void pressed(Spot spot) {
        pressedAt = spot;
        moved(spot);
    }

    @Override
    public void dragged(Spot spot) {
        moved(spot);
    }

    @Override
    public void moved(Spot spot) {
        at = spot;
        Optional<Route.Spot> cable = cable(spot);
        canvas.hover(cable.map(Route.Spot::id).orElse(null));
        canvas.hint(
                cable.isPresent()
                        ? Texts.of(word("insert"), kind.term(), cable.get().id())
                        : drawn(spot)
                                .map(b -> Texts.of(
                                        "editor.hint.drawing-bar",
                                        kind.term(),
                                        Long.toString(Math.round(b.lengthMm()))))
                                .orElseGet(this::placeHint));
        canvas.repaint();
    }

    private String placeHint() {
        return Texts.of(word(barMm() > 0 ? "place-bar" : "place"), kind.term());
    }

    /** The bar that is being drawn with the mouse held down. */
    private Optional<DrawnBar> drawn(Spot spot) {
        Spot from = pressedAt;
        return from == null || barMm() == 0
                ? Optional.empty()
                : DrawnBar.pulled(onGrid(from), new Point(spot.xMm(), spot.yMm()));
    }

    private static Point onGrid(Spot spot) {
        return new Point(MoveGesture.onGrid(spot.xMm()), MoveGesture.onGrid(spot.yMm()));
    }

    private Optional<Route.Spot> cable(Spot spot) {
        return Insertions.inline(kind)
                ? canvas.scene().flatMap(s -> s.cableAt(spot.xMm(), spot.yMm(), 1.3 * spot.nearMm()))
                : Optional.empty();
    }

    @Override
    public void released(Spot spot) {
        SessionState s = session.state();
        if (!spot.shift()) {
            canvas.hint(""); // before it is done: what is said of it must stay readable
        }
        if (s.shownSheet().isEmpty() || s.drawing().systems().isEmpty()) {
            session.say(orlop.drawing.Message.of("editor.say.no-system"));
        } else if (!inserted(s, spot)) {
            place(s, spot);
        }
        if (!spot.shift()) {
            canvas.use(canvas.hand());
        }
        pressedAt = null;
        canvas.hover(null);
    }

    private boolean inserted(SessionState s, Spot spot) {
        Optional<Insertions.Inserted> in =
                canvas.scene().flatMap(scene -> cable(spot).flatMap(c -> Insertions.of(s.drawing(), scene, c, kind)));
        in.ifPresent(i -> insert(session, i));
        return in.isPresent();
    }

    /** Puts a device into a cable and says what has become of the cable. */
    static void insert(Session session, Insertions.Inserted in) {
        if (session.apply(in.edit(), Set.of(in.id())).isEmpty()) {
            session.say(in.said());
        }
    }

    private void place(SessionState s, Spot spot) {
        Point p = onGrid(spot);
        String preferred = s.soleSelection()
                .map(id -> s.drawing().components().get(id))
                .map(c -> c.systems().get(0))
                .orElse("");
        Component c = Placings.fresh(s.drawing(), kind, Place.at(s.sheet(), p.xMm(), p.yMm()), preferred);
        Component placed = drawn(spot).map(b -> b.of(c)).orElse(c);
        session.apply(Edits.place(placed), Set.of(c.id()));
    }

    @Override
    public void backOut() {
        at = null;
        pressedAt = null;
        canvas.hover(null);
    }

    @Override
    public void paint(Graphics2D g) {
        Spot spot = at;
        Color ink = Look.ink(Ink.QUIET);
        if (spot != null && barMm() > 0) {
            DrawnBar b = drawn(spot).orElseGet(() -> new DrawnBar(onGrid(spot), barMm(), true));
            double w = b.lying() ? b.lengthMm() : BAR_MM;
            double h = b.lying() ? BAR_MM : b.lengthMm();
            g.setColor(ink);
            g.fill(new Rectangle2D.Double(b.middle().xMm() - w / 2, b.middle().yMm() - h / 2, w, h));
        } else if (spot != null && symbol != null) {
            Overlay.ghost(g, symbol, MoveGesture.onGrid(spot.xMm()), MoveGesture.onGrid(spot.yMm()), 0, ink);
        }
    }
}
