package orlop.drawing;

/**
 * Free text on a sheet.
 *
 * @param id short name
 * @param sheet id of its sheet
 * @param at upper left corner
 * @param text of any number of lines
 * @param heightMm height of its letters, 1.8 to 20 mm
 * @param locked whether it can be neither moved nor deleted
 * @param extras keys that this version does not know
 */
public record Note(String id, String sheet, Point at, String text, double heightMm, boolean locked, Extras extras) {
    public Note {
        Checks.id(id, "id");
        Checks.id(sheet, "sheet");
        Checks.text(text, "text");
        Checks.between(heightMm, 1.8, 20, "heightMm");
    }

    /** A note that isn't locked. */
    public Note(String id, String sheet, Point at, String text, double heightMm, Extras extras) {
        this(id, sheet, at, text, heightMm, false, extras);
    }

    public Note withAt(Point v) {
        return new Note(id, sheet, v, text, heightMm, locked, extras);
    }

    public Note withText(String v) {
        return new Note(id, sheet, at, v, heightMm, locked, extras);
    }

    /** @param v height of its letters, 1.8 to 20 mm */
    public Note withHeightMm(double v) {
        return new Note(id, sheet, at, text, v, locked, extras);
    }

    public Note withLocked(boolean v) {
        return new Note(id, sheet, at, text, heightMm, v, extras);
    }
}
