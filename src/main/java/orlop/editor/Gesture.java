package orlop.editor;

import java.awt.Graphics2D;

/** One drag with the left button, from press to release. */
interface Gesture {
    void dragged(Spot at);

    void released(Spot at);

    /** Everything is to be as it was. */
    void backOut();

    /** One unit is one millimetre. */
    void paint(Graphics2D g);
}
