package orlop.drawing;

/** The size of a sheet, ISO 216, lying; A4 upright too. */
public enum SheetSize implements Named {
    A1(841, 594),
    A2(594, 420),
    A3(420, 297),
    A4(297, 210),
    A4_UPRIGHT(210, 297);

    private final double widthMm;
    private final double heightMm;

    SheetSize(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    @Override
    public String word() {
        return this == A4_UPRIGHT ? "A4-upright" : name();
    }

    /** The designation of ISO 216, without how it lies: {@code A4}. */
    public String designation() {
        return name().substring(0, 2);
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }
}
