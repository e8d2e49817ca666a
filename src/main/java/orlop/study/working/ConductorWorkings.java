package orlop.study.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Quantity;
import orlop.drawing.Unit;
import orlop.standards.AmpacityResult;
import orlop.standards.Conductors;
import orlop.standards.CorrectionFactor;
import orlop.standards.Provenance;
import orlop.standards.Sourced;
import orlop.study.model.CableModel;
import orlop.study.model.Rating;

/** Ampacity, temperature and resistance of a cable's conductors. */
final class ConductorWorkings {
    private final CableModel w;

    ConductorWorkings(CableModel w) {
        this.w = w;
    }

    /** What it may carry with an area; empty where the tables have no figure that may govern. */
    Optional<Working> ampacity(double areaMm2) {
        AmpacityResult.Carries found = w.tabulated(areaMm2)
                .carries()
                .filter(AmpacityResult.Carries::mayGovern)
                .orElse(null);
        return found == null ? Optional.empty() : w.rating(areaMm2).map(r -> ampacity(found, r));
    }

    private Working ampacity(AmpacityResult.Carries found, Rating rating) {
        List<Working> inputs = new ArrayList<>();
        StringBuilder formula = new StringBuilder();
        if (w.cable().parallel() > 1) {
            inputs.add(runs());
            formula.append("n · ");
        }
        formula.append("It");
        var cell = found.cell();
        inputs.add(Working.given(
                        Say.what("table-ampacity"),
                        "It",
                        cell.amps(),
                        Unit.AMPERE,
                        Say.from("cell", cell.table(), cell.row(), cell.column(), cell.source()))
                .firm(cell.provenance()));
        int k = 0;
        for (CorrectionFactor f : found.factors()) {
            k++;
            formula.append(" · k").append(k);
            inputs.add(Working.given(
                            Say.what(
                                    "factor."
                                            + f.kind()
                                                    .name()
                                                    .toLowerCase(java.util.Locale.ROOT)
                                                    .replace('_', '-'),
                                    basis(f)),
                            "k" + k,
                            f.factor().value(),
                            Unit.NONE,
                            Say.from("text", f.factor().source()))
                    .firm(f.factor().provenance()));
        }
        return Working.found(Say.what("ampacity"), "Iz", formula.toString(), rating.amps(), Unit.AMPERE, inputs);
    }

    private static Quantity basis(CorrectionFactor f) {
        return switch (f.kind()) {
            case AMBIENT, ENGINE_SPACE -> new Quantity(f.basis(), Unit.DEGREE_CELSIUS);
            case BUNDLE, GROUPING, LOADED_CORES, LOADED_NEUTRAL -> new Quantity(f.basis(), Unit.NONE);
        };
    }

    private Working runs() {
        return Working.given(Say.what("runs"), "n", w.cable().parallel(), Unit.NONE, Say.from("drawn"));
    }

    /**
     * The conductor temperature in service.
     *
     * @param amps magnitude of the current
     */
    Working temperature(double areaMm2, double conductorC, double amps) {
        if (w.cable().conductorC() != null) {
            return temperature(conductorC, Say.from("drawn"));
        }
        Optional<Working> carries = ampacity(areaMm2);
        double mostC = Math.max(w.ambientC(), w.cable().construction().insulationC());
        if (carries.isEmpty()) {
            return temperature(conductorC, Say.from("temperature-unknown"));
        }
        return Working.found(
                Say.what("conductor"),
                "θ",
                "θa + (θmax − θa) · (min(1; I / Iz))²",
                conductorC,
                Unit.DEGREE_CELSIUS,
                List.of(
                        Working.given(Say.what("ambient"), "θa", w.ambientC(), Unit.DEGREE_CELSIUS, Say.from("drawn")),
                        Working.given(Say.what("insulation"), "θmax", mostC, Unit.DEGREE_CELSIUS, Say.from("drawn")),
                        Working.given(Say.what("current"), "I", amps, Unit.AMPERE, null),
                        carries.get()));
    }

    private static Working temperature(double conductorC, orlop.drawing.Message why) {
        return Working.given(Say.what("conductor"), "θ", conductorC, Unit.DEGREE_CELSIUS, why);
    }

    /** At which a fault is calculated. */
    static Working faultTemperature(double conductorC, boolean highest) {
        return temperature(conductorC, Say.from(highest ? "cold" : "hot"));
    }

    /** Resistance of the loop, of three-phase cables of one conductor, at a temperature. */
    Working resistance(double areaMm2, double ohm, Working temperature) {
        if (w.stated()) {
            return Working.given(Say.what(loop()), "R", ohm, Unit.OHM, Say.from("stated"));
        }
        List<Working> inputs = new ArrayList<>();
        inputs.add(perKm(Say.what("per-km", area(areaMm2)), "r", areaMm2));
        inputs.add(length("length", "L", w.lengthM()));
        String way = "r · L";
        Double backArea = w.cable().returns().returnAreaMm2();
        Double backM = w.cable().returns().returnLengthM();
        if (!w.oneConductor() && backArea == null && backM == null) {
            way = "2 · r · L";
        } else if (!w.oneConductor()) {
            way = "(r · L + rb · Lb)";
            double area = backArea == null ? areaMm2 : backArea;
            inputs.add(perKm(Say.what("per-km-back", area(area)), "rb", area));
            inputs.add(length("length-back", "Lb", backM == null ? w.lengthM() : backM));
        }
        String runs = "";
        if (w.cable().parallel() > 1) {
            inputs.add(runs());
            runs = " / n";
        }
        inputs.add(Working.given(
                        Say.what("alpha"),
                        "α",
                        Conductors.ALPHA_20_PER_K,
                        Unit.PER_KELVIN,
                        Say.from("text", "IEC 60028"))
                .firm(Provenance.MEMORY));
        inputs.add(temperature);
        String formula = way + " / 1000" + runs + " · (1 + α · (θ − 20))";
        return Working.found(Say.what(loop()), "R", formula, ohm, Unit.OHM, inputs);
    }

    private String loop() {
        return w.oneConductor() ? "resistance" : "loop-resistance";
    }

    private static Quantity area(double areaMm2) {
        return new Quantity(areaMm2, Unit.SQUARE_MILLIMETRE);
    }

    private Working perKm(orlop.drawing.Message what, String symbol, double areaMm2) {
        Sourced r = w.tabulatedOhmPerKm(areaMm2);
        return Working.given(what, symbol, r.value(), Unit.OHM_PER_KILOMETRE, Say.from("text", r.source()))
                .firm(r.provenance());
    }

    private static Working length(String word, String symbol, double metres) {
        return Working.given(Say.what(word), symbol, metres, Unit.METRE, Say.from("drawn"));
    }

    /** The current that a cable is sized for. */
    static Working designCurrent(double amps, @Nullable String condition) {
        return Working.given(
                Say.what("design-current"),
                "Ib",
                amps,
                Unit.AMPERE,
                amps == 0
                        ? Say.from("no-current")
                        : condition == null ? Say.from("sole-load") : Say.from("condition", condition));
    }
}
