package planted.study;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.time.Duration;
import java.util.Date;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.function.Supplier;

/** What no rule may take for a violation. */
public final class Innocent {
    static String format(double v) {
        return String.format(Locale.ROOT, "%f", v).toLowerCase(Locale.ROOT);
    }

    static String message(double v) {
        return new MessageFormat("{0}", Locale.ROOT).format(new Object[] {v});
    }

    static String decimal(double v) {
        return new DecimalFormat("0.0", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(v);
    }

    static Supplier<Date> epoch() {
        Function<Long, Date> dates = Date::new;
        return () -> dates.apply(0L);
    }

    static Duration hour() {
        return Duration.ofHours(1);
    }

    static void stopIfAsked() {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException();
        }
    }
}
