package orlop.editor;

import java.awt.Cursor;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** Wheel, panning and the way of the mouse to the tool. */
final class CanvasMouse extends MouseAdapter {
    private static final double STEP = 1.15;

    private final SheetCanvas canvas;
    private final Wheel wheel = new Wheel();
    private boolean space;
    private boolean backedOut;
    private @Nullable MouseEvent panFrom;

    private CanvasMouse(SheetCanvas canvas) {
        this.canvas = canvas;
    }

    static void install(SheetCanvas canvas) {
        CanvasMouse m = new CanvasMouse(canvas);
        canvas.addMouseListener(m);
        canvas.addMouseMotionListener(m);
        canvas.addMouseWheelListener(m);
        canvas.addKeyListener(m.keys());
        canvas.addFocusListener(m.gone());
    }

    /** A key that is let go elsewhere isn't held here any more. */
    private FocusAdapter gone() {
        return new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                if (space) {
                    space = false;
                    canvas.toolCursor();
                }
            }
        };
    }

    private KeyAdapter keys() {
        return new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent e) {
                if (e.getKeyCode() == KeyEvent.VK_SPACE && !space) {
                    space = true;
                    canvas.cursor(Cursor.MOVE_CURSOR);
                }
            }

            @Override
            public void keyReleased(KeyEvent e) {
                if (e.getKeyCode() == KeyEvent.VK_SPACE) {
                    space = false;
                    canvas.toolCursor();
                }
            }
        };
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent e) {
        Viewport now = canvas.viewport();
        canvas.view(wheel.pans(e)
                .map(by -> now.moved(by.getX(), by.getY()))
                .orElseGet(() -> now.zoomed(Math.pow(STEP, -e.getPreciseWheelRotation()), e.getX(), e.getY())));
    }

    @Override
    public void mousePressed(MouseEvent e) {
        canvas.byKeys(false);
        canvas.requestFocusInWindow();
        if (SwingUtilities.isMiddleMouseButton(e) || (space && SwingUtilities.isLeftMouseButton(e))) {
            panFrom = e;
        } else if (SwingUtilities.isLeftMouseButton(e)) {
            canvas.tool().pressed(Spot.of(e, canvas.viewport()));
        } else if (SwingUtilities.isRightMouseButton(e)) {
            backedOut = canvas.busy();
            if (backedOut) {
                canvas.backOut();
            }
        } else if (Wheel.aside(e.getButton()) != 0) {
            canvas.view(canvas.viewport().moved(Wheel.aside(e.getButton()), 0));
        }
        menu(e);
    }

    /** Some systems open menus when the button goes down, others when it comes up. */
    private void menu(MouseEvent e) {
        if (e.isPopupTrigger() && !backedOut) {
            canvas.menuAt(Spot.of(e, canvas.viewport()));
        }
    }

    @Override
    public void mouseDragged(MouseEvent e) {
        MouseEvent from = panFrom;
        if (from != null) {
            canvas.view(canvas.viewport().moved(e.getX() - from.getX(), e.getY() - from.getY()));
            panFrom = e;
        } else if (SwingUtilities.isLeftMouseButton(e)) {
            canvas.tool().dragged(Spot.of(e, canvas.viewport()));
        }
    }

    @Override
    public void mouseReleased(MouseEvent e) {
        if (panFrom != null) {
            panFrom = null;
        } else if (SwingUtilities.isLeftMouseButton(e)) {
            canvas.tool().released(Spot.of(e, canvas.viewport()));
        } else {
            menu(e);
        }
    }

    @Override
    public void mouseMoved(MouseEvent e) {
        canvas.byKeys(false);
        canvas.tool().moved(Spot.of(e, canvas.viewport()));
    }

    @Override
    public void mouseExited(MouseEvent e) {
        canvas.hover(null);
        canvas.hand().left();
    }
}
