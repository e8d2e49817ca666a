package orlop.desk;

import org.jspecify.annotations.Nullable;

/** Whether two values are the very same object: drawings are big, and an edit makes another. */
public final class Same {
    private Same() {}

    @SuppressWarnings("ReferenceEquality") // that is the point
    public static boolean object(@Nullable Object a, @Nullable Object b) {
        return a == b;
    }
}
