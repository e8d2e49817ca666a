package orlop.drawing;

/** The units in which the program speaks, with the sign that stands behind a number and the digits it is shown with. */
public enum Unit {
    NONE("", 6),
    AMPERE("A", 3),
    KILOAMPERE("kA", 2),
    VOLT("V", 4),
    OHM("Ω", 3),
    MILLIOHM("mΩ", 3),
    OHM_PER_KILOMETRE("Ω/km", 4),
    PER_KELVIN("1/K", 3),
    WATT("W", 3),
    VOLT_AMPERE("VA", 3),
    KILOWATT("kW", 3),
    WATT_HOUR("Wh", 3),
    AMPERE_HOUR("Ah", 3),
    METRE("m", 4),
    MILLIMETRE("mm", 4),
    SQUARE_MILLIMETRE("mm²", 4),
    PERCENT("%", 2),
    DEGREE_CELSIUS("°C", 3),
    KILOGRAM("kg", 2),
    SECOND("s", 3),
    HERTZ("Hz", 4),
    DEGREE("°", 3);

    private final String sign;
    private final int digits;

    Unit(String sign, int digits) {
        this.sign = sign;
        this.digits = digits;
    }

    /** What stands behind the number, "" for a plain number. */
    public String sign() {
        return sign;
    }

    /** Significant digits at which a value is shown. */
    public int digits() {
        return digits;
    }
}
