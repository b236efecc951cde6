package inkstrata.samples;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A picture of 60 x 60 mm as drawing programs export them: rounded coordinates, near-equal colours, things that do not show, any units, groups in
 * groups with transforms, huge and tiny view boxes, empty and doubled things. The same seed gives the same file.
 */
final class DirtyDrawing {
    static final int SIDE_MM = 60;

    private static final List<String> UNITS = List.of("mm", "cm", "in", "pt", "pc", "px");
    private static final double[] PER_MM = {1, 0.1, 1 / 25.4, 72 / 25.4, 6 / 25.4, 96 / 25.4};

    private final Random random;
    private final StringBuilder svg = new StringBuilder();
    private final List<int[]> colours = new ArrayList<>();
    private final double perMm;
    private final int decimals;

    private DirtyDrawing(long seed) {
        random = new Random(seed * 7_919 + 13);
        int inks = 2 + random.nextInt(4);
        for (int i = 0; i < inks; i++) {
            // Far enough apart, whatever a level more or less.
            colours.add(new int[] {20 + 45 * i, 30 + random.nextInt(4) * 60, 40 + random.nextInt(4) * 55});
        }
        // User units to the millimetre, from a picture that is a ten-thousandth of a unit wide to one of sixty million.
        perMm = pick(1.0, 1.0, 96 / 25.4, 100.0, 1e-6 / 60 * 100, 1e6, 0.037);
        // As many as leave a hundredth or a thousandth of a millimetre.
        decimals = Math.max(0, (int) Math.ceil(2 + random.nextInt(2) - Math.log10(perMm)));
    }

    static byte[] of(long seed) {
        return new DirtyDrawing(seed).drawn().getBytes(UTF_8);
    }

    private String drawn() {
        int unit = random.nextInt(UNITS.size());
        double page = SIDE_MM * PER_MM[unit];
        double left = random.nextInt(3) == 0 ? -17 : 0;
        svg.append("<?xml version='1.0' encoding='UTF-8' standalone='no'?>\n<!-- made by a program -->\n");
        svg.append(String.format(
                Locale.ROOT,
                "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' xmlns:x='urn:program' version='1.1'"
                        + " width='%.9f%s' height='%.9f%s' viewBox='%s %s %s %s' x:zoom='1.4'>\n",
                page,
                UNITS.get(unit),
                page,
                UNITS.get(unit),
                number(left),
                number(0),
                number(SIDE_MM),
                number(SIDE_MM)));
        svg.append(
                "<metadata id='m'><x:rdf>anything</x:rdf></metadata><defs id='defs'><path id='p' d='M0 0h5v5z'/></defs>\n");
        svg.append("<style>.s0{fill:")
                .append(colour())
                .append("} .s1 { fill : ")
                .append(colour())
                .append("; }</style>\n");
        svg.append("<x:view guides='true'/>\n<g transform='translate(")
                .append(number(left))
                .append(" 0)' x:label='Layer 1' id='layer1'>\n");
        if (random.nextBoolean()) {
            rectangle(0, 0, SIDE_MM, SIDE_MM);
        }
        for (int i = 6 + random.nextInt(18); i > 0; i--) {
            thing(0);
        }
        return svg.append("</g>\n<g id='layer1'/><g/>\n</svg>\n").toString();
    }

    private void thing(int depth) {
        switch (random.nextInt(12)) {
            case 0, 1 -> rectangle(place(), place(), size(), size());
            case 2 -> bricks();
            case 3, 4 -> polygon();
            case 5 -> disc();
            case 6 -> curve();
            case 7 -> line();
            case 8 -> junk();
            case 9 -> hidden(depth);
            default -> group(depth);
        }
    }

    /** Side by side, with edges that rounding sets apart or over each other. */
    private void bricks() {
        double x = place();
        double y = place();
        double height = size();
        for (int i = 2 + random.nextInt(5); i > 0; i--) {
            double width = 1 + 7 * random.nextDouble();
            rectangle(x, y, width, height);
            x += width;
        }
    }

    private void rectangle(double x, double y, double width, double height) {
        svg.append("<rect ").append(paint());
        svg.append(" x='").append(number(x)).append("' y='").append(number(y));
        svg.append("' width='")
                .append(number(width))
                .append("' height='")
                .append(number(height))
                .append("'/>\n");
    }

    private void polygon() {
        double x = place();
        double y = place();
        double size = size();
        boolean relative = random.nextBoolean();
        svg.append("<path ")
                .append(paint())
                .append(" d='M")
                .append(number(x))
                .append(',')
                .append(number(y));
        for (int i = 2 + random.nextInt(5); i > 0; i--) {
            double toX = relative ? size * (random.nextDouble() - 0.5) : x + size * random.nextDouble();
            double toY = relative ? size * (random.nextDouble() - 0.5) : y + size * random.nextDouble();
            svg.append(relative ? " l" : " L").append(number(toX)).append(' ').append(number(toY));
        }
        svg.append(random.nextBoolean() ? "z" : "").append("'/>\n");
    }

    private void disc() {
        svg.append(random.nextBoolean() ? "<circle " : "<ellipse ").append(paint());
        boolean circle = svg.lastIndexOf("<circle") > svg.lastIndexOf("<ellipse");
        svg.append(" cx='")
                .append(number(place()))
                .append("' cy='")
                .append(number(place()))
                .append("' ");
        svg.append(circle ? "r='" : "rx='").append(number(size() / 2)).append("'");
        svg.append(circle ? "" : " ry='" + number(size() / 3) + "'").append("/>\n");
    }

    private void curve() {
        double x = place();
        double y = place();
        double size = size();
        svg.append("<path ")
                .append(paint())
                .append(" d='M")
                .append(number(x))
                .append(' ')
                .append(number(y));
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            svg.append('C');
            for (int j = 0; j < 3; j++) {
                svg.append(number(x + size * random.nextDouble())).append(' ');
                svg.append(number(y + size * random.nextDouble())).append(' ');
            }
        }
        svg.append("Z'/>\n");
    }

    private void line() {
        svg.append("<polyline fill='none' stroke='")
                .append(colour())
                .append("' stroke-linejoin='round' stroke-width='");
        svg.append(number(0.5 + 3 * random.nextDouble())).append("' points='");
        for (int i = 2 + random.nextInt(3); i > 0; i--) {
            svg.append(number(place())).append(',').append(number(place())).append(' ');
        }
        svg.append("'/>\n");
    }

    /** Things that draw nothing. */
    private void junk() {
        svg.append(pick(
                        "<path d=''/>",
                        "<path d='M 1 1'/>",
                        "<path fill='#123456' d='M1 1z'/>",
                        "<rect width='0' height='" + number(9) + "'/>",
                        "<rect x='1' y='1'/>",
                        "<circle cx='1' cy='1' r='0'/>",
                        "<ellipse rx='0' ry='3'/>",
                        "<line x1='0' y1='0' x2='9' y2='9'/>",
                        "<polygon points=''/>",
                        "<polyline points='3,3'/>",
                        "<path fill='none' stroke='none' d='M0 0H9V9z'/>",
                        "<path fill='none' stroke='#00f' stroke-width='0' d='M0 0L9 9'/>",
                        "<g id='layer1'><title>Empty</title><desc/></g>",
                        "<g transform='scale(0)'><rect width='9' height='9'/></g>",
                        "<x:thing width='9' height='9'/>",
                        "<symbol id='unused'><rect width='9' height='9'/></symbol>",
                        "<text/>",
                        "<a xlink:href='https://example.org/'></a>",
                        "<!-- <rect width='99' height='99'/> -->"))
                .append('\n');
    }

    /** Things that are not seen. */
    private void hidden(int depth) {
        switch (random.nextInt(5)) {
            case 0 -> wrapped("<g display='none'>", depth);
            case 1 -> wrapped("<g style='display:none;-x-mode:layer'>", depth);
            case 2 -> wrapped("<g visibility='hidden'>", depth);
            case 3 -> wrapped("<g opacity='0'>", depth);
            default -> wrapped("<g transform='translate(" + number(500) + " " + number(-300) + ")'>", depth);
        }
    }

    private void group(int depth) {
        double x = place();
        double y = place();
        switch (random.nextInt(6)) {
            case 0 -> wrapped("<g transform='translate(" + number(x / 9) + "," + number(-y / 9) + ")'>", depth);
            case 1 -> wrapped("<g transform='rotate(90 " + number(x) + " " + number(y) + ")'>", depth);
            case 2 -> wrapped("<g transform='matrix(-1 0 0 1 " + number(60) + " 0)'>", depth);
            case 3 -> wrapped("<g transform='scale(0.5)'><g transform='scale(2)'>", depth);
            case 4 ->
                wrapped(
                        "<g transform='rotate(" + random.nextInt(360) + " " + number(x) + " " + number(y)
                                + ") scale(1.1)'>",
                        depth);
            default -> wrapped("<g id='layer1' class='cls-1' style='fill-rule:evenodd;;'>", depth);
        }
    }

    private void wrapped(String open, int depth) {
        svg.append(open).append('\n');
        for (int i = random.nextInt(4); i > 0 && depth < 6; i--) {
            thing(depth + 1);
        }
        svg.append(open.endsWith("<g transform='scale(2)'>") ? "</g></g>\n" : "</g>\n");
    }

    private String paint() {
        return switch (random.nextInt(5)) {
            case 0 -> "class='s" + random.nextInt(2) + "'";
            case 1 -> "style='fill:" + colour() + ";stroke:none;-x-font-specification:Sans;paint-order:normal'";
            case 2 -> "fill='" + colour().toUpperCase(Locale.ROOT) + "' stroke='none' stroke-width='1'";
            case 3 -> "fill='black' style='fill:" + colour() + "'";
            default -> "fill='" + colour() + "' id='path" + random.nextInt(5) + "'";
        };
    }

    /** One of a few, a level more or less. */
    private String colour() {
        int[] colour = colours.get(random.nextInt(colours.size()));
        int more = random.nextInt(4) == 0 ? 1 : 0;
        return String.format("#%02x%02x%02x", colour[0] + more, colour[1], colour[2] + more);
    }

    private double place() {
        return -5 + 65 * random.nextDouble();
    }

    private double size() {
        return random.nextInt(9) == 0 ? 0.3 * random.nextDouble() : 1 + 25 * random.nextDouble();
    }

    /** A length in the file's units, rounded as programs do. */
    private String number(double millimetres) {
        String fixed = String.format(Locale.ROOT, "%." + decimals + "f", millimetres * perMm);
        return fixed.contains(".") ? fixed.replaceAll("0+$", "").replaceAll("\\.$", "") : fixed;
    }

    private double pick(double... some) {
        return some[random.nextInt(some.length)];
    }

    private String pick(String... some) {
        return some[random.nextInt(some.length)];
    }
}
