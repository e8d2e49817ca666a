package orlop.drawing;

/**
 * Something that was measured aboard.
 *
 * @param id short name
 * @param item id of the component or cable
 * @param quantity what was measured: insulation resistance, voltage, current …
 * @param value finite
 * @param unit as written
 * @param date as written
 * @param remark in words
 * @param extras keys that this version does not know
 */
public record Measurement(
        String id, String item, String quantity, double value, String unit, String date, String remark, Extras extras) {
    public Measurement {
        Checks.id(id, "id");
        Checks.id(item, "item");
        Checks.text(quantity, "quantity");
        Checks.finite(value, "value");
        Checks.text(unit, "unit");
        Checks.text(date, "date");
        Checks.text(remark, "remark");
    }
}
