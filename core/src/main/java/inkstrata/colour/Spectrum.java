package inkstrata.colour;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
import java.util.function.IntToDoubleFunction;

/**
 * A reflectance, or another share of light, for each band of wavelength.
 *
 * <p>36 bands of 10 nm, the first around 380 nm, the last around 730 nm.
 */
public final class Spectrum {
    /** How many bands. */
    public static final int BANDS = Observer.BANDS;

    /** Reflects all light. */
    public static final Spectrum WHITE = of(band -> 1);

    /** Reflects none. */
    public static final Spectrum BLACK = of(band -> 0);

    private final double[] shares;

    private Spectrum(double[] shares) {
        this.shares = shares;
    }

    /** With the share that a function gives for each band from 0. */
    public static Spectrum of(IntToDoubleFunction share) {
        double[] shares = new double[BANDS];
        Arrays.setAll(shares, share);
        return new Spectrum(shares);
    }

    /** A smooth reflectance that looks like a colour: {@link SmoothReflectance}. */
    public static Spectrum of(Rgb colour) {
        return new Spectrum(SmoothReflectance.of(Xyz.of(colour)));
    }

    /** The wavelength in the middle of a band, in nanometres. */
    public static int nanometres(int band) {
        return Observer.FIRST_NM + Observer.STEP_NM * band;
    }

    public double at(int band) {
        return shares[band];
    }

    /** Band by band. */
    Spectrum with(Spectrum other, DoubleBinaryOperator operator) {
        return of(band -> operator.applyAsDouble(shares[band], other.shares[band]));
    }

    /** How it looks under D65. */
    public Xyz xyz() {
        return Observer.xyz(shares);
    }

    /** Nearly how it looks: sRGB does not hold every colour. */
    public Rgb rgb() {
        return Rgb.of(xyz());
    }

    public Lab lab() {
        return Lab.of(xyz());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Spectrum that && Arrays.equals(shares, that.shares);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(shares);
    }

    @Override
    public String toString() {
        return Arrays.toString(shares);
    }
}
