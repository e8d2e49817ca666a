package orlop.editor;

import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleAction;
import javax.accessibility.AccessibleComponent;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;
import org.jspecify.annotations.Nullable;
import orlop.layout.Rect;
import orlop.scene.Role;
import orlop.scene.SceneItem;

/** What is drawn on the sheet, components, cables, links and notes, as children for a screen reader, made from the scene when they are asked for. */
final class SheetChildren {
    private static final Set<Role> MET = Set.of(Role.COMPONENT, Role.BAR, Role.CABLE, Role.LINK, Role.NOTE);

    private final SheetCanvas canvas;

    SheetChildren(SheetCanvas canvas) {
        this.canvas = canvas;
    }

    private List<SceneItem> items() {
        return canvas.scene()
                .map(s -> s.items().stream().filter(i -> MET.contains(i.role())).toList())
                .orElse(List.of());
    }

    int count() {
        return items().size();
    }

    @Nullable
    Accessible child(int i) {
        List<SceneItem> all = items();
        return i < 0 || i >= all.size() ? null : new Child(all.get(i), i);
    }

    /** The child that stands for this component, cable, link or note. */
    @Nullable
    Accessible of(String id) {
        List<SceneItem> all = items();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).subject().equals(id)) {
                return new Child(all.get(i), i);
            }
        }
        return null;
    }

    @Nullable
    Accessible at(Point p) {
        Point2D mm = canvas.viewport().toSheet(p.x, p.y);
        List<SceneItem> all = items();
        for (int i = all.size() - 1; i >= 0; i--) {
            if (all.get(i).bounds().contains(mm.getX(), mm.getY())) {
                return new Child(all.get(i), i);
            }
        }
        return null;
    }

    /** One component or cable. */
    private final class Child extends AccessibleContext
            implements Accessible, AccessibleComponentDefaults, AccessibleAction {
        private final SceneItem item;
        private final int index;

        Child(SceneItem item, int index) {
            this.item = item;
            this.index = index;
        }

        @Override
        public AccessibleContext getAccessibleContext() {
            return this;
        }

        @Override
        public String getAccessibleName() {
            return item.title();
        }

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.ICON;
        }

        @Override
        public AccessibleStateSet getAccessibleStateSet() {
            AccessibleStateSet s = new AccessibleStateSet();
            s.add(AccessibleState.ENABLED);
            s.add(AccessibleState.VISIBLE);
            s.add(AccessibleState.SHOWING);
            s.add(AccessibleState.SELECTABLE);
            if (canvas.session().state().selection().contains(item.subject())) {
                s.add(AccessibleState.SELECTED);
            }
            return s;
        }

        @Override
        public Accessible getAccessibleParent() {
            return canvas;
        }

        @Override
        public int getAccessibleIndexInParent() {
            return index;
        }

        @Override
        public int getAccessibleChildrenCount() {
            return 0;
        }

        @Override
        public @Nullable Accessible getAccessibleChild(int i) {
            return null;
        }

        @Override
        public Locale getLocale() {
            return Locale.ENGLISH;
        }

        @Override
        public AccessibleComponent getAccessibleComponent() {
            return this;
        }

        @Override
        public AccessibleAction getAccessibleAction() {
            return this;
        }

        @Override
        public int getAccessibleActionCount() {
            return 1;
        }

        @Override
        public String getAccessibleActionDescription(int i) {
            return Texts.of("editor.access.select");
        }

        @Override
        public boolean doAccessibleAction(int i) {
            canvas.session().select(Set.of(item.subject()));
            return true;
        }

        @Override
        public Rectangle getBounds() {
            Rect r = item.bounds();
            Point2D a = canvas.viewport().toView(r.minX(), r.minY());
            double k = canvas.viewport().pxPerMm();
            return new Rectangle(
                    (int) a.getX(), (int) a.getY(), (int) Math.ceil(r.width() * k), (int) Math.ceil(r.height() * k));
        }

        @Override
        public Point getLocation() {
            return getBounds().getLocation();
        }

        @Override
        public @Nullable Point getLocationOnScreen() {
            if (!canvas.isShowing()) {
                return null;
            }
            Point p = canvas.getLocationOnScreen();
            Rectangle b = getBounds();
            return new Point(p.x + b.x, p.y + b.y);
        }

        @Override
        public Dimension getSize() {
            return getBounds().getSize();
        }

        @Override
        public boolean contains(Point p) {
            return new Rectangle(getSize()).contains(p);
        }
    }
}
