package orlop.drawing;

/**
 * A sheet of the drawing.
 *
 * @param id used by components to say where they stand
 * @param number document number behind the vessel's prefix
 * @param title of the sheet
 * @param size of the paper
 * @param revision letter or number
 * @param status for check, for installation, as installed …
 * @param drawnBy who drew it
 * @param approvedBy who approved it, "" while nobody has
 * @param date as it is to stand in the title block
 * @param extras keys that this version does not know
 */
public record Sheet(
        String id,
        String number,
        String title,
        SheetSize size,
        String revision,
        String status,
        String drawnBy,
        String approvedBy,
        String date,
        Extras extras) {
    public Sheet {
        Checks.id(id, "id");
        Checks.text(number, "number");
        Checks.text(title, "title");
        Checks.text(revision, "revision");
        Checks.text(status, "status");
        Checks.text(drawnBy, "drawnBy");
        Checks.text(approvedBy, "approvedBy");
        Checks.text(date, "date");
    }

    /** A sheet that nobody has approved. */
    public Sheet(
            String id,
            String number,
            String title,
            SheetSize size,
            String revision,
            String status,
            String drawnBy,
            String date,
            Extras extras) {
        this(id, number, title, size, revision, status, drawnBy, "", date, extras);
    }

    /** An A3 sheet with nothing but an id and a title. */
    public static Sheet of(String id, String title) {
        return new Sheet(id, id, title, SheetSize.A3, "", "", "", "", Extras.NONE);
    }
}
