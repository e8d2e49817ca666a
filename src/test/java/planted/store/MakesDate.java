package planted.store;

import java.util.Date;
import java.util.function.Supplier;

/** A planted violation. */
public final class MakesDate {
    static Supplier<Date> today() {
        return Date::new;
    }
}
