package orlop.scene;

import orlop.drawing.Drawing;
import orlop.drawing.Sheet;

/**
 * Which sheet of the drawing one is, and which of its sheets of findings.
 *
 * @param position from 1, in the order of the register
 * @param of how many there are
 * @param findings 0 for the sheet itself, from 1 for its sheets of findings
 */
record SheetNumber(int position, int of, int findings) {

    /** @throws IllegalArgumentException if there is no such sheet */
    static SheetNumber of(Drawing d, String sheet, int findings) {
        int n = 1;
        for (Sheet s : d.sheets().values()) {
            if (s.id().equals(sheet)) {
                return new SheetNumber(n, d.sheets().size(), findings);
            }
            n++;
        }
        throw new IllegalArgumentException("there is no sheet " + sheet);
    }

    /** {@code "" } or {@code /F2}: what stands behind a sheet's number or name. */
    static String suffix(int findings) {
        return findings == 0 ? "" : "/F" + findings;
    }

    /** {@code 1}, {@code 1/F2}. */
    String text() {
        return position + suffix(findings);
    }
}
