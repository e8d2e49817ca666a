package orlop.layout;

/** The least rectangle around all places that were looked at for a decision: what changes elsewhere cannot change it. */
final class Seen {
    private double minX = Double.POSITIVE_INFINITY;
    private double minY = Double.POSITIVE_INFINITY;
    private double maxX = Double.NEGATIVE_INFINITY;
    private double maxY = Double.NEGATIVE_INFINITY;

    void add(Rect r) {
        minX = Math.min(minX, r.minX());
        minY = Math.min(minY, r.minY());
        maxX = Math.max(maxX, r.maxX());
        maxY = Math.max(maxY, r.maxY());
    }

    /** @throws IllegalStateException if nothing was looked at */
    Rect rect() {
        if (minX > maxX) {
            throw new IllegalStateException("nothing was looked at");
        }
        return new Rect(minX, minY, maxX, maxY);
    }
}
