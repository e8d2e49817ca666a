package orlop.editor;

import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusListener;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleComponent;
import org.jspecify.annotations.Nullable;

/** What a painted thing answers that can't be moved, coloured or focused by a screen reader. */
interface AccessibleComponentDefaults extends AccessibleComponent {
    @Override
    default @Nullable Color getBackground() {
        return null;
    }

    @Override
    default void setBackground(Color c) {}

    @Override
    default @Nullable Color getForeground() {
        return null;
    }

    @Override
    default void setForeground(Color c) {}

    @Override
    default @Nullable Cursor getCursor() {
        return null;
    }

    @Override
    default void setCursor(Cursor cursor) {}

    @Override
    default @Nullable Font getFont() {
        return null;
    }

    @Override
    default void setFont(Font f) {}

    @Override
    default @Nullable FontMetrics getFontMetrics(Font f) {
        return null;
    }

    @Override
    default boolean isEnabled() {
        return true;
    }

    @Override
    default void setEnabled(boolean b) {}

    @Override
    default boolean isVisible() {
        return true;
    }

    @Override
    default void setVisible(boolean b) {}

    @Override
    default boolean isShowing() {
        return true;
    }

    @Override
    default void setLocation(Point p) {}

    @Override
    default void setBounds(Rectangle r) {}

    @Override
    default void setSize(Dimension d) {}

    @Override
    default @Nullable Accessible getAccessibleAt(Point p) {
        return null;
    }

    @Override
    default boolean isFocusTraversable() {
        return false;
    }

    @Override
    default void requestFocus() {}

    @Override
    default void addFocusListener(FocusListener l) {}

    @Override
    default void removeFocusListener(FocusListener l) {}
}
