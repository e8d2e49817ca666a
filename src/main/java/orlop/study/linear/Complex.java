package orlop.study.linear;

/**
 * A complex number.
 *
 * @param re real part
 * @param im imaginary part
 */
public record Complex(double re, double im) {
    public static final Complex ZERO = new Complex(0, 0);

    /** The number of this magnitude and angle. */
    public static Complex polar(double magnitude, double angleDeg) {
        double angle = Math.toRadians(angleDeg);
        return new Complex(magnitude * Math.cos(angle), magnitude * Math.sin(angle));
    }

    public Complex plus(Complex o) {
        return new Complex(re + o.re, im + o.im);
    }

    public Complex minus(Complex o) {
        return new Complex(re - o.re, im - o.im);
    }

    public Complex times(Complex o) {
        return new Complex(re * o.re - im * o.im, re * o.im + im * o.re);
    }

    public Complex times(double factor) {
        return new Complex(re * factor, im * factor);
    }

    /** One over this number, which is not 0. */
    public Complex inverse() {
        double square = re * re + im * im;
        return new Complex(re / square, -im / square);
    }

    public Complex conjugate() {
        return new Complex(re, -im);
    }

    public double magnitude() {
        return Math.hypot(re, im);
    }

    /** Angle in degrees, above −180 to 180. */
    public double angleDeg() {
        return Math.toDegrees(Math.atan2(im, re));
    }

    public boolean isNaN() {
        return Double.isNaN(re) || Double.isNaN(im);
    }
}
