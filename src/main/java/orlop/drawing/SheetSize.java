package orlop.drawing;

/** The size of a sheet, ISO 216, lying. */
public enum SheetSize implements Named {
    A1(841, 594),
    A2(594, 420),
    A3(420, 297),
    A4(297, 210);

    private final double widthMm;
    private final double heightMm;

    SheetSize(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    @Override
    public String word() {
        return name();
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }
}
