package orlop.editor;

import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import javax.swing.RepaintManager;
import org.jspecify.annotations.Nullable;
import orlop.desk.PathProfile;
import orlop.desk.Same;
import orlop.desk.Session;
import orlop.desk.SessionListener;
import orlop.desk.SessionState;
import orlop.drawing.Sheet;
import orlop.drawing.SheetSize;
import orlop.scene.Scene;

/**
 * The sheet on the screen. It shows what the session holds; what the mouse does is up to its {@link Tool}.
 *
 * <p>Painting: the sheet as a finished image, and over it halos and what is being done.
 */
final class SheetCanvas extends JComponent implements SessionListener, Accessible {
    private static final long serialVersionUID = 1L;
    private final transient Session session;
    private final transient ShownScene shown;
    private final transient Pointing pointing;
    private final transient StaticLayer layer = new StaticLayer();
    private final transient SelectedLayer halos = new SelectedLayer();
    private final transient HandTool hand;
    private final transient Blink blink;
    private transient Tool tool;
    private final transient SheetView view = new SheetView(this);
    private transient Consumer<String> hints = text -> {};
    private transient Consumer<Spot> menu = at -> {};
    private transient Runnable onFresh = () -> {};
    private transient Consumer<Tool> onTool = t -> {};
    private transient @Nullable String hovered;
    private transient BooleanSupplier behind = () -> false;
    private boolean byKeys;
    private transient List<String> fedPath = List.of();

    SheetCanvas(Session session, ShownScene shown, Pointing pointing) {
        this.session = session;
        this.shown = shown;
        this.pointing = pointing;
        this.hand = new HandTool(this, session, pointing);
        this.tool = hand;
        this.blink = new Blink(session);
        setName("sheet");
        setFocusable(true);
        setOpaque(true);
        setPreferredSize(new Dimension(900, 600));
        setMinimumSize(new Dimension(200, 150));
        CanvasMouse.install(this);
        Ring.follow(this);
        session.listen(this);
        session.asking(shown::want);
        session.ahead(shown::ahead);
        blink.listen(this::repaint);
        blink.coming(shown::coming);
        pointing.listen(this::repaint);
    }

    /** Tells when fresh figures are about to come. */
    Blink blink() {
        return blink;
    }

    /** @param listener told what the mouse can do where it is */
    void onHint(Consumer<String> listener) {
        hints = listener;
    }

    /** @param listener told when something else is to be done on the sheet */
    void onTool(Consumer<Tool> listener) {
        onTool = listener;
    }

    /** Whether the sheet was last worked by keys, and not by the mouse. */
    boolean byKeys() {
        return byKeys;
    }

    void byKeys(boolean on) {
        if (byKeys != on) {
            byKeys = on;
            if (!busy()) {
                hint("");
            }
        }
    }

    /** Which part of the sheet is seen. */
    SheetView view() {
        return view;
    }

    /** @param listener told when fresh figures stand painted on the sheet, before the rest of the window shows them */
    void onFresh(Runnable listener) {
        onFresh = listener;
    }

    /** @param opener opens the menu for what is selected */
    void onMenu(Consumer<Spot> opener) {
        menu = opener;
    }

    /** Whether something is being done that a person may want to back out of. */
    boolean busy() {
        return tool != hand || hand.busy();
    }

    /** Opens the menu for what lies at this place; it is selected, unless it is already among what is. */
    void menuAt(Spot at) {
        hand.meant(at);
        menu.accept(at);
    }

    /** @param text what can be done now; "" for what can be done at rest */
    void hint(String text) {
        hints.accept(text);
    }

    Session session() {
        return session;
    }

    Viewport viewport() {
        return view.viewport();
    }

    /** The scene of the sheet that is shown. */
    Optional<Scene> scene() {
        return shown.of(session.state());
    }

    /** The scene of what is seen: for the blink of an eye after an edit that of the drawing before. */
    Optional<Scene> seen() {
        return blink.waits() ? layer.last().or(this::scene) : scene();
    }

    ShownScene shown() {
        return shown;
    }

    Tool tool() {
        return tool;
    }

    HandTool hand() {
        return hand;
    }

    /** From now on the mouse does this. */
    void use(Tool next) {
        if (tool != next) {
            tool.backOut();
            tool = next;
            toolCursor();
            repaint();
            onTool.accept(next);
        }
    }

    /** The pointer of what the mouse does now. */
    void toolCursor() {
        cursor(tool == hand ? Cursor.DEFAULT_CURSOR : Cursor.CROSSHAIR_CURSOR);
    }

    /** @param type one of those of {@link Cursor} */
    void cursor(int type) {
        if (getCursor().getType() != type) {
            setCursor(Cursor.getPredefinedCursor(type));
        }
    }

    /** @param giveUp gives up what is being done behind the window; whether anything was */
    void onBackOut(BooleanSupplier giveUp) {
        behind = giveUp;
    }

    /**
     * Takes back what is being done, at last what is being written behind the window; with nothing being done, comes back to the sheet from elsewhere in the window; else
     * selects nothing.
     */
    void backOut() {
        boolean elsewhere = isShowing() && !isFocusOwner() && !busy();
        if (elsewhere) {
            hint("");
        } else if (tool != hand) {
            use(hand);
            hint("");
        } else if (hand.busy()) {
            hand.backOut();
        } else if (!behind.getAsBoolean()) {
            session.select(java.util.Set.of());
        }
        requestFocusInWindow();
        repaint();
    }

    /** @param id of the component or cable under the mouse, null for none */
    void hover(@Nullable String id) {
        if (!java.util.Objects.equals(hovered, id)) {
            hovered = id;
            fedPath = fed(id).map(p ->
                            p.stations().stream().map(PathProfile.Station::item).toList())
                    .orElse(List.of());
            repaint();
        }
    }

    /** The path that feeds a component in the condition that is shown, while the figures are fresh. */
    Optional<PathProfile> fed(@Nullable String id) {
        SessionState s = session.state();
        return id != null && s.drawing().components().contains(id) && s.fresh() && s.review() != null
                ? PathProfile.of(s.review().study(), s.condition(), id)
                : Optional.empty();
    }

    void view(Viewport v) {
        view.view(v);
    }

    /** Shows the whole sheet, and goes on doing so when the window changes, until somebody zooms or pans. */
    void fit() {
        view.fit();
    }

    @Override
    @SuppressWarnings("deprecation") // the one hook that hears of every change of size before painting
    public void reshape(int x, int y, int w, int h) {
        boolean other = w != getWidth() || h != getHeight();
        super.reshape(x, y, w, h);
        if (other) {
            view.refit();
        }
    }

    @Override
    public void changed(SessionState before, SessionState after) {
        if (!before.sheet().equals(after.sheet())) {
            fit();
        } else if (!paper(before).equals(paper(after))) {
            view.refit();
        }
        boolean said = after.notice() != null && !Same.object(after.notice(), before.notice());
        boolean others = !before.selection().equals(after.selection());
        if (others && tool == hand && !said && KeyHints.follow(after, byKeys)) {
            hint("");
        }
        if (others && accessibleContext instanceof CanvasAccess a) {
            a.tell(after);
        }
        if (!after.fresh()) {
            shown.want(after);
        }
        if (blink.waits()) { // the picture is that of the drawing before, with its figures
            if (Same.object(after.drawing(), before.drawing())) {
                return;
            }
            shown.prepare(after); // at once: the thread that studies will soon ask for it
            return;
        }
        if (after.fresh() && !before.fresh()) {
            paintNow();
        } else {
            repaint();
        }
    }

    private static Optional<SheetSize> paper(SessionState s) {
        return s.shownSheet().map(Sheet::size);
    }

    /** The annotations first: whatever else the window shows is painted after them. */
    private void paintNow() {
        if (isShowing() && isValid()) {
            RepaintManager.currentManager(this).markCompletelyClean(this);
            paintImmediately(0, 0, getWidth(), getHeight());
            onFresh.run();
        } else {
            repaint();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            Optional<Scene> last =
                    blink.waits() ? layer.again(g, viewport(), getWidth(), getHeight()) : Optional.empty();
            Optional<Scene> scene = last.isPresent() ? last : scene();
            if (scene.isEmpty()) {
                boolean before = shown.awaited()
                        && layer.again(g, viewport(), getWidth(), getHeight()).isPresent();
                Overlay.none(g, this, before);
                return;
            }
            if (last.isEmpty()) {
                boolean stale =
                        session.state().review() != null && !session.state().fresh();
                layer.paint(g, scene.get(), viewport(), stale, getWidth(), getHeight());
            }
            StaticLayer.hints(g);
            halos.paint(g, session.state(), scene.get(), viewport(), getWidth(), getHeight());
            g.transform(viewport().toView()); // not setTransform: the scale of the screen stays
            Overlay.pointed(g, this, scene.get(), pointing.finding(), fedPath, hovered);
            tool.paint(g);
        } finally {
            g.dispose();
        }
    }

    /** A sheet that was awaited is there. */
    void ready() {
        if (!session.state().fresh()) {
            shown.want(session.state());
        }
        view.refit();
        repaint();
    }

    @Override
    protected void paintBorder(Graphics g) {
        Ring.paint(this, g);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new CanvasAccess();
        }
        return accessibleContext;
    }

    /** The sheet as a screen reader meets it: its children are the components and cables that are drawn. */
    private final class CanvasAccess extends AccessibleJComponent {
        private static final long serialVersionUID = 1L;
        private final transient SheetChildren children = new SheetChildren(SheetCanvas.this);

        @Override
        public javax.accessibility.AccessibleRole getAccessibleRole() {
            return javax.accessibility.AccessibleRole.CANVAS;
        }

        @Override
        public String getAccessibleName() {
            return scene().map(Scene::title)
                    .orElse(Texts.of(shown.awaited() ? "editor.laying-out" : "editor.no-sheet"));
        }

        /** Says which item the keys have come to. */
        void tell(SessionState s) {
            Accessible now = s.soleSelection().map(children::of).orElse(null);
            firePropertyChange(ACCESSIBLE_ACTIVE_DESCENDANT_PROPERTY, null, now);
        }

        @Override
        public int getAccessibleChildrenCount() {
            return children.count();
        }

        @Override
        public @Nullable Accessible getAccessibleChild(int i) {
            return children.child(i);
        }

        @Override
        public @Nullable Accessible getAccessibleAt(java.awt.Point p) {
            return children.at(p);
        }
    }
}
