package orlop.scene;

import org.jspecify.annotations.Nullable;

/** All that a thing is made from. From equal ones come equal things; most are the very same, which is seen at once. */
final class From {
    private final @Nullable Object[] parts;

    private From(@Nullable Object[] parts) {
        this.parts = parts;
    }

    /** @param parts comparable, and not changed any more */
    static From of(@Nullable Object... parts) {
        return new From(parts);
    }

    @Override
    @SuppressWarnings("ReferenceEquality") // the very same ones need no comparison
    public boolean equals(@Nullable Object o) {
        if (!(o instanceof From f) || f.parts.length != parts.length) {
            return false;
        }
        for (int i = 0; i < parts.length; i++) {
            Object a = parts[i];
            Object b = f.parts[i];
            if (a != b && (a == null || !a.equals(b))) {
                return false;
            }
        }
        return true;
    }

    @Override
    public int hashCode() {
        return java.util.Arrays.hashCode(parts);
    }
}
