package orlop.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * Components that stand together, around the point at which a line comes in: the origin. Millimetres, y away from where
 * the line comes from.
 */
final class Block {
    /**
     * A component in its place.
     *
     * @param x of its origin, of a bar of its middle
     * @param lengthMm of a bar, else 0
     */
    record Item(String id, double x, double y, int rotationDegree, double lengthMm) {}

    private final List<Item> items = new ArrayList<>();
    private Rect box;

    Block(Rect box) {
        this.box = box;
    }

    void put(Item item) {
        items.add(item);
    }

    /** What it covers, with the room for its texts. */
    Rect box() {
        return box;
    }

    List<Item> items() {
        return items;
    }

    void cover(Rect r) {
        box = box.union(r);
    }

    /** Takes another block in, so far from its own origin; turned upside down if {@code over}. */
    void take(Block other, double dx, double dy, boolean over) {
        int sign = over ? -1 : 1;
        for (Item i : other.items) {
            items.add(new Item(i.id(), i.x() + dx, sign * i.y() + dy, i.rotationDegree(), i.lengthMm()));
        }
        Rect b = other.box;
        Rect turned = over ? new Rect(b.minX(), -b.maxY(), b.maxX(), -b.minY()) : b;
        cover(turned.moved(dx, dy));
    }
}
