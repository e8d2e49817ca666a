package orlop.editor;

import java.awt.Graphics2D;

/** What the mouse does on the sheet at the moment. */
interface Tool {
    void pressed(Spot at);

    void dragged(Spot at);

    void released(Spot at);

    void moved(Spot at);

    /** Whether it sets something down at a place, which keys can choose as well as the mouse. */
    default boolean placing() {
        return false;
    }

    /** Whether letters are typed for the tool itself, and open no drawer of the locker. */
    default boolean letters() {
        return false;
    }

    /** Everything is to be as it was before the tool began. */
    void backOut();

    /** Paints what is being done over the sheet; one unit is one millimetre. */
    void paint(Graphics2D g);
}
