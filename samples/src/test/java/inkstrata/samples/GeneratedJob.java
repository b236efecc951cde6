package inkstrata.samples;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Layer;
import inkstrata.artwork.Source;
import inkstrata.artwork.TranslucentGroup;
import inkstrata.colour.Rgb;
import inkstrata.planar.MapSettings;
import inkstrata.planar.NastyDrawings;
import inkstrata.planar.Visible;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A random drawing and a random job for it: any hiding, any order, any options of plug-ins within their ranges.
 *
 * @param artwork as the reader would give it
 * @param job the text of a job file
 */
record GeneratedJob(Artwork artwork, String job) {
    static GeneratedJob of(long seed) {
        Random random = new Random(seed * 0x2545F4914F6CDD1DL + 5);
        Artwork artwork = switch (random.nextInt(16)) {
            case 0, 1 -> nasty(seed);
            case 2 -> translucent(GeneratedDrawing.of(seed).artwork(), random);
            case 3 -> GeneratedDrawing.of(seed).artwork();
            case 4, 5, 6 -> translucent(StackedDrawing.of(seed), random);
            default -> StackedDrawing.of(seed);
        };
        Artwork named = named(artwork, random);
        return new GeneratedJob(named, new Words(random, named).job());
    }

    /** Of few shapes: where a trap is as wide as the drawing, rims all lie over each other, and work grows with their number's square. */
    private static Artwork nasty(long seed) {
        Artwork artwork = NastyDrawings.translucent(seed);
        return artwork.shapes().size() <= 20 ? artwork : StackedDrawing.of(seed);
    }

    /** Some shapes shine through, alone or in groups. */
    private static Artwork translucent(Artwork artwork, Random random) {
        List<FlatShape> shapes = new ArrayList<>();
        Optional<TranslucentGroup> group = Optional.empty();
        int groups = 0;
        for (FlatShape shape : artwork.shapes()) {
            if (random.nextInt(4) == 0) {
                group = group.isPresent()
                        ? Optional.empty()
                        : Optional.of(new TranslucentGroup(groups++, random.nextInt(5) / 4.0, Optional.empty()));
            }
            double opacity = random.nextInt(3) == 0 ? 0.25 + random.nextInt(3) / 4.0 : 1;
            shapes.add(new FlatShape(
                    shape.area(), shape.colour(), Math.min(1, opacity), group, shape.clips(), shape.source()));
        }
        return artwork.withShapes(shapes);
    }

    /** Some shapes lie in layers, and some a colour beside their own. */
    private static Artwork named(Artwork artwork, Random random) {
        List<FlatShape> shapes = new ArrayList<>();
        for (FlatShape shape : artwork.shapes()) {
            Rgb colour = random.nextInt(8) == 0 ? beside(shape.colour(), random) : shape.colour();
            int id = shapes.size() < 3 ? shapes.size() : random.nextInt(12);
            Source source = id < 3 ? layered("shape-" + id, id) : Source.UNKNOWN;
            shapes.add(new FlatShape(
                    shape.area(), colour, shape.opacity(), shape.group(), shape.clips(), source, shape.drawing()));
        }
        return artwork.withShapes(shapes);
    }

    private static Source layered(String name, int number) {
        return new Source("path", "", 0, List.of(new Layer("g", name, List.of(), 0, number)));
    }

    private static Rgb beside(Rgb colour, Random random) {
        return new Rgb(
                Math.max(0, Math.min(255, colour.red() + random.nextInt(7) - 3)),
                Math.max(0, Math.min(255, colour.green() + random.nextInt(7) - 3)),
                Math.max(0, Math.min(255, colour.blue() + random.nextInt(7) - 3)));
    }

    /** Writes the job file. */
    private record Words(Random random, Artwork artwork, List<String> shapes) {
        Words(Random random, Artwork artwork) {
            this(random, artwork, shown(artwork));
        }

        /** Ids of shapes that show: nobody can ask for others. */
        private static List<String> shown(Artwork artwork) {
            return Visible.of(artwork, MapSettings.DEFAULT).artwork().shapes().stream()
                    .flatMap(shape -> shape.source().layers().stream())
                    .map(Layer::id)
                    .distinct()
                    .toList();
        }

        String job() {
            List<Rgb> colours = new ArrayList<>(
                    artwork.shapes().stream().map(FlatShape::colour).collect(Collectors.toCollection(TreeSet::new)));
            Collections.shuffle(colours, random);
            List<String> names = new ArrayList<>();
            StringBuilder text = new StringBuilder();
            text.append("sheet: {colour: '").append(sheet(colours)).append("', print: ");
            text.append(random.nextInt(4) == 0 ? "back" : "front");
            text.append(random.nextInt(3) == 0 ? ", hiding: " + share() : "").append("}\n");
            text.append("register: ")
                    .append(length(random.nextInt(15) == 0 ? 10 : 1))
                    .append('\n');
            text.append(merge());
            text.append("inks:\n");
            for (Rgb colour : colours.subList(0, Math.min(colours.size(), random.nextInt(16)))) {
                if (random.nextInt(4) > 0) {
                    names.add("ink " + names.size());
                    text.append(ink(names.get(names.size() - 1), colour)).append('\n');
                }
            }
            text.append(ink("spare", Rgb.of(random.nextInt(1 << 24)))).append('\n');
            names.add(0, "spare");
            text.append(order(names));
            List<String> listed = names.subList(1, names.size());
            text.append(new GeneratedOptions(random, listed, shapes).lines(Press.plugins()));
            return text.toString();
        }

        private Rgb sheet(List<Rgb> colours) {
            return switch (random.nextInt(4)) {
                case 0 -> Rgb.of(random.nextInt(1 << 24));
                case 1 -> colours.isEmpty() ? Rgb.WHITE : colours.get(0);
                default -> Rgb.WHITE;
            };
        }

        private String merge() {
            return switch (random.nextInt(4)) {
                case 0 -> "merge: " + number(30) + "\n";
                case 1 ->
                    "merge: {within: " + number(5) + ", touching: " + random.nextBoolean() + ", inks: "
                            + (1 + random.nextInt(20)) + "}\n";
                default -> "";
            };
        }

        private String ink(String name, Rgb colour) {
            return "  - {name: " + name + ", prints: '" + colour + "', hiding: " + share()
                    + (random.nextInt(8) == 0 ? ", key: true" : "")
                    + (random.nextInt(8) == 0 ? ", side: " + (random.nextBoolean() ? "front" : "back") : "")
                    + from()
                    + (random.nextInt(4) == 0 ? ", mesh: 77-48" : "") + "}";
        }

        private String from() {
            return shapes.isEmpty() || random.nextInt(12) > 0
                    ? ""
                    : ", from: '#" + shapes.get(random.nextInt(shapes.size())) + "'";
        }

        private String order(List<String> names) {
            List<String> some = new ArrayList<>(names.subList(0, random.nextInt(names.size() + 1)));
            if (some.isEmpty()) {
                return "";
            }
            some.add("...");
            Collections.shuffle(some, random);
            return "order: [" + String.join(", ", some) + "]\n";
        }

        private String share() {
            return switch (random.nextInt(6)) {
                case 0 -> "0";
                case 1 -> "1";
                case 2 -> "0.1";
                default -> String.format(Locale.ROOT, "%.3f", random.nextDouble());
            };
        }

        private String number(double most) {
            return random.nextInt(5) == 0 ? "0" : String.format(Locale.ROOT, "%.2f", most * random.nextDouble());
        }

        private String length(double most) {
            return switch (random.nextInt(6)) {
                case 0 -> "0 mm";
                case 1 -> "0.0003 mm";
                default -> String.format(Locale.ROOT, "%.3f mm", most * random.nextDouble());
            };
        }
    }
}
