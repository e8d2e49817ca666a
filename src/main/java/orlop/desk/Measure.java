package orlop.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The unit of a particular, found from the end of its name, with the unit signs that a person may type for it.
 *
 * <p>Factors are exact by the definition of the units (the inch is 25.4 mm, the foot 0.3048 m).
 */
public enum Measure {
    AMPERE_HOUR("Ah", "Ah", sign("Ah", 1), sign("mAh", 1e-3)),
    KILOAMPERE("Ka", "kA", sign("kA", 1), sign("A", 1e-3)),
    MILLIAMPERE("MilliA", "mA", sign("mA", 1), sign("A", 1e3)),
    KILOVOLT_AMPERE("Kva", "kVA", sign("kVA", 1), sign("VA", 1e-3)),
    VOLT_AMPERE("Va", "VA", sign("VA", 1), sign("kVA", 1e3)),
    VAR("Var", "var", sign("var", 1), sign("kvar", 1e3)),
    MILLIVOLT("MilliV", "mV", sign("mV", 1), sign("V", 1e3)),
    KILOOHM("KiloOhm", "kΩ", sign("kΩ", 1), sign("kohm", 1), sign("Ω", 1e-3), sign("ohm", 1e-3), sign("Mohm", 1e3)),
    OHM("Ohm", "Ω", sign("Ω", 1), sign("ohm", 1), sign("mΩ", 1e-3), sign("mohm", 1e-3)),
    SQUARE_MILLIMETRE("Mm2", "mm²", sign("mm²", 1), sign("mm2", 1), sign("mm^2", 1), sign("sqmm", 1)),
    MILLIMETRE("Mm", "mm", sign("mm", 1), sign("cm", 10), sign("m", 1000)),
    LITRE_PER_HOUR("LitrePerHour", "l/h", sign("l/h", 1), sign("L/h", 1)),
    PERCENT_PER_KELVIN("PercentPerK", "%/K", sign("%/K", 1)),
    PERCENT("Percent", "%", sign("%", 1)),
    MINUTE("Minutes", "min", sign("min", 1), sign("h", 60), sign("s", 1.0 / 60)),
    DEGREE("Degree", "°", sign("°", 1), sign("deg", 1)),
    PHASE_ANGLE("Deg", "°", sign("°", 1), sign("deg", 1)),
    HERTZ("Hz", "Hz", sign("Hz", 1)),
    AMPERE_SQUARED_SECOND("A2s", "A²s", sign("A²s", 1), sign("A2s", 1), sign("kA²s", 1e3), sign("kA2s", 1e3)),
    AMPERE("A", "A", sign("A", 1), sign("mA", 1e-3), sign("kA", 1e3)),
    VOLT("V", "V", sign("V", 1), sign("mV", 1e-3), sign("kV", 1e3)),
    WATT("W", "W", sign("W", 1), sign("kW", 1e3)),
    METRE("M", "m", sign("m", 1), sign("cm", 0.01), sign("mm", 0.001), sign("ft", 0.3048), sign("in", 0.0254)),
    CELSIUS("C", "°C", sign("°C", 1), sign("C", 1)),
    SECOND("S", "s", sign("s", 1), sign("ms", 1e-3), sign("min", 60)),
    /** Efficiency, power factor, share: a plain number, or percent of one. */
    RATIO("", "", sign("%", 0.01));

    private record Sign(String text, double factor) {}

    private final String suffix;
    private final String shown;

    @SuppressWarnings("ImmutableEnumChecker") // the map is a copy that nobody can change
    private final Map<String, Double> factors;

    Measure(String suffix, String shown, Sign... signs) {
        this.suffix = suffix;
        this.shown = shown;
        Map<String, Double> map = new LinkedHashMap<>();
        for (Sign s : signs) {
            map.put(s.text(), s.factor());
        }
        this.factors = java.util.Collections.unmodifiableMap(map);
    }

    private static Sign sign(String text, double factor) {
        return new Sign(text, factor);
    }

    /** The measure of a particular: {@code lengthM} is in metres. A name with no known ending is a plain number. */
    public static Measure ofField(String field) {
        for (Measure m : values()) {
            boolean ends = !m.suffix.isEmpty() && field.endsWith(m.suffix) && field.length() > m.suffix.length();
            if (ends && Character.isLowerCase(field.charAt(field.length() - m.suffix.length() - 1))) {
                return m;
            }
        }
        return RATIO;
    }

    /** The sign that stands behind a value of this measure, "" for none. */
    public String shown() {
        return shown;
    }

    /** The signs that may be typed. */
    public List<String> signs() {
        return new ArrayList<>(factors.keySet());
    }

    /** What a number with this sign is to be multiplied with: first by exact spelling, then by capitals alike. */
    Optional<Double> factor(String sign) {
        if (sign.isEmpty()) {
            return Optional.of(1.0);
        }
        Double exact = factors.get(sign);
        if (exact != null) {
            return Optional.of(exact);
        }
        return factors.entrySet().stream()
                .filter(e -> e.getKey().toLowerCase(Locale.ROOT).equals(sign.toLowerCase(Locale.ROOT)))
                .map(Map.Entry::getValue)
                .findFirst();
    }
}
