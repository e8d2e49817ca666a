package orlop.study.working;

import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Message;
import orlop.drawing.Quantity;
import orlop.drawing.Unit;
import orlop.standards.Provenance;

/**
 * How one figure came about.
 *
 * @param what what it is, in words
 * @param symbol its symbol, unlike those of its siblings: {@code ΔU}
 * @param formula in the symbols of the inputs, which it gives in their units; "" where nothing is calculated here
 * @param value the figure
 * @param because where it is from or what was asked of it; null where the formula says it all
 * @param provenance how firm it is; null for what was drawn or calculated
 * @param inputs what went in, in the order of the formula; more may stand behind them, for comparison
 */
public record Working(
        Message what,
        String symbol,
        String formula,
        Quantity value,
        @Nullable Message because,
        @Nullable Provenance provenance,
        List<Working> inputs) {
    public Working {
        inputs = List.copyOf(inputs);
    }

    /** A figure that was drawn, measured or read. */
    static Working given(Message what, String symbol, double value, Unit unit, @Nullable Message because) {
        return new Working(what, symbol, "", new Quantity(value, unit), because, null, List.of());
    }

    /** A figure that was calculated. */
    static Working found(Message what, String symbol, String formula, double value, Unit unit, List<Working> inputs) {
        return new Working(what, symbol, formula, new Quantity(value, unit), null, null, inputs);
    }

    Working because(Message why) {
        return new Working(what, symbol, formula, value, why, provenance, inputs);
    }

    Working firm(Provenance how) {
        return new Working(what, symbol, formula, value, because, how, inputs);
    }

    /** As it is called in another formula. */
    Working as(Message otherwise, String otherSymbol) {
        return new Working(otherwise, otherSymbol, formula, value, because, provenance, inputs);
    }
}
