package orlop.drawing;

/** What a person has locked: components, cables and notes that stay where they are and can't be deleted. */
public final class Locked {
    private Locked() {}

    /** Whether this item is locked; an id that is not on the drawing is not. */
    public static boolean is(Drawing d, String id) {
        Component c = d.components().get(id);
        if (c != null) {
            return c.locked();
        }
        Cable w = d.cables().get(id);
        if (w != null) {
            return w.locked();
        }
        Note n = d.notes().get(id);
        return n != null && n.locked();
    }

    /**
     * Lets only what is not locked pass.
     *
     * @throws Edit.Refusal that names the item, if it is locked
     */
    public static void refuse(Drawing d, String id) {
        if (is(d, id)) {
            throw new Edit.Refusal(Message.of("drawing.refuse.locked", id));
        }
    }
}
