package inkstrata.colour;

/**
 * One printed film of ink: what it reflects by itself and what it lets through, band by band.
 *
 * <p>The two-flux theory of Kubelka and Munk for a film of even thickness (P. Kubelka, New contributions to the optics of intensely
 * light-scattering materials, part I, J. Opt. Soc. Am. 38 (1948), 448-457; films on films: part II, J. Opt. Soc. Am. 44
 * (1954), 330-335). No light is lost at surfaces. Whatever comes out is a guide: ink, mesh, squeegee and paper decide.
 *
 * @param alone reflectance over ideal black, 0 to 1
 * @param through share of light that crosses it, 0 to 1; no more than {@code alone} leaves
 */
public record InkFilm(Spectrum alone, Spectrum through) {
    /**
     * The film of an ink of which only a colour and its hiding are known. Every band hides alike (our own choice).
     *
     * @param overWhite reflectance over ideal white
     * @param hiding contrast ratio (ISO 6504-3), luminous reflectance over ideal black by that over ideal white: 0 clear, such that it
     *     filters what lies beneath; 1 opaque, such that it looks alike over everything
     */
    public static InkFilm of(Spectrum overWhite, double hiding) {
        if (!(hiding >= 0 && hiding <= 1)) {
            throw new IllegalArgumentException("hiding " + hiding + " is outside 0 (clear) to 1 (opaque)");
        }
        return measured(overWhite, Spectrum.of(band -> hiding * overWhite.at(band)));
    }

    /**
     * The film that was measured over white and black.
     *
     * @throws IllegalArgumentException if no film can reflect that: less over white than over black, or more than all
     */
    public static InkFilm measured(Spectrum overWhite, Spectrum overBlack) {
        Spectrum through = overWhite.with(overBlack, (white, black) -> {
            if (!(black >= 0 && black <= white && white <= 1)) {
                throw new IllegalArgumentException("reflectance " + white + " over white and " + black
                        + " over black: no film is like that. They must rise from 0 to 1 in the order black, white.");
            }
            return Math.sqrt((white - black) * (1 - black));
        });
        return new InkFilm(overBlack, through);
    }

    /**
     * The film that was measured over two cards which are neither ideal white nor black: in the equations for both the squares of what
     * the film reflects alone cancel.
     *
     * @throws IllegalArgumentException if no film can reflect that
     */
    public static InkFilm measured(Spectrum overWhite, Spectrum overBlack, Spectrum white, Spectrum black) {
        Spectrum alone = Spectrum.of(band -> {
            double w = white.at(band);
            double b = black.at(band);
            if (!(w > b)) {
                throw new IllegalArgumentException("the white card reflects " + w + " and the black one " + b + " at "
                        + Spectrum.nanometres(band) + " nm. White must reflect more.");
            }
            double both = w * b;
            return (overWhite.at(band) * b - overBlack.at(band) * w)
                    / (b - w + (overWhite.at(band) - overBlack.at(band)) * both);
        });
        return measured(
                Spectrum.of(band -> {
                    double squared = (overWhite.at(band) - alone.at(band))
                            * (1 - alone.at(band) * white.at(band))
                            / white.at(band);
                    return alone.at(band) + squared / (1 - alone.at(band));
                }),
                alone);
    }

    /**
     * The film of one absorption, scattering and thickness in all bands, each 0 or more, in units whose products are plain numbers.
     */
    static InkFilm of(double absorption, double scattering, double thickness) {
        double k = absorption * thickness;
        double s = scattering * thickness;
        double alone;
        double through;
        if (s == 0) {
            alone = 0;
            through = Math.exp(-k);
        } else if (k == 0) {
            alone = s / (1 + s);
            through = 1 / (1 + s);
        } else {
            double a = 1 + k / s;
            double b = Math.sqrt(k / s * (k / s + 2));
            // With e = exp(-bs): sinh and cosh would overflow in thick films.
            double e2 = Math.exp(-2 * b * s);
            double denominator = a * (1 - e2) + b * (1 + e2);
            alone = (1 - e2) / denominator;
            through = 2 * b * Math.exp(-b * s) / denominator;
        }
        return new InkFilm(Spectrum.of(band -> alone), Spectrum.of(band -> through));
    }

    /** What is seen where it lies on something. */
    public Spectrum over(Spectrum ground) {
        return Spectrum.of(band -> {
            double beneath = ground.at(band);
            double crossing = through.at(band);
            return crossing == 0
                    ? alone.at(band)
                    : alone.at(band) + crossing * crossing * beneath / (1 - alone.at(band) * beneath);
        });
    }

    /** What is seen of a film so thick that nothing shows through. */
    public Spectrum masstone() {
        return Spectrum.of(band -> {
            double ratio = ratio(band);
            return Double.isInfinite(ratio) ? 0 : 1 + ratio - Math.sqrt(ratio * (ratio + 2));
        });
    }

    /**
     * Absorption by scattering, K/S, in a band; infinite where nothing is scattered.
     */
    double ratio(int band) {
        double r = alone.at(band);
        double t = through.at(band);
        return r == 0 ? Double.POSITIVE_INFINITY : Math.max(0, ((1 - r) * (1 - r) - t * t) / (2 * r));
    }

    /** Scattering times thickness, S X, in a band; infinite where nothing crosses. */
    double scattering(int band) {
        double r = alone.at(band);
        double t = through.at(band);
        if (r == 0) {
            return 0;
        }
        if (t == 0) {
            return Double.POSITIVE_INFINITY;
        }
        double ratio = ratio(band);
        double b = Math.sqrt(ratio * (ratio + 2));
        return b == 0 ? r / t : asinh(b * r / t) / b;
    }

    /** Absorption times thickness, K X, in a band; infinite where nothing crosses. */
    double absorption(int band) {
        return alone.at(band) == 0 ? -Math.log(through.at(band)) : ratio(band) * scattering(band);
    }

    private static double asinh(double x) {
        return Math.log(x + Math.sqrt(x * x + 1));
    }

    /** How much it hides: luminous reflectance over ideal black by that over ideal white. */
    public double hiding() {
        return alone.xyz().y() / over(Spectrum.WHITE).xyz().y();
    }
}
