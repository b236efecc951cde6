package inkstrata.command;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.measure.Length;
import inkstrata.plan.Ink;
import inkstrata.shop.Drawings;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which drawing is meant, how large it is, and what the printmaker asks for. */
final class ArtworkArguments {
    /** Stands for standard input. */
    private static final Path DASH = Path.of("-");

    /** One byte more than the reader of drawings takes, so that it is the one to refuse. */
    private static final int MOST_PIPED = (256 << 20) + 1;

    /** What came from there: it can be read but once, and a drawing may be asked for at two sizes. */
    private byte[] piped = {};

    /** What a drawing from there is called. */
    private static final String STANDARD_INPUT = "standard input";

    @Parameters(
            paramLabel = "ARTWORK.svg",
            description = "The drawing: SVG or svgz with flat colours; - reads it from standard input.")
    private Path artwork;

    @Option(
            names = "--job",
            paramLabel = "JOB.yaml",
            description = "The job file. Without it ARTWORK.yaml beside the drawing is used, if there is one.")
    private Path job;

    @Option(
            names = "--width",
            paramLabel = "LENGTH",
            description = "True width of the picture, for example \"400 mm\". Overrides the drawing and the job file.")
    private String width;

    @Option(
            names = "--units-per-inch",
            paramLabel = "N",
            description =
                    "How many user units make an inch where the drawing gives no unit; 72 is common, CSS says 96.")
    private Double unitsPerInch;

    @Option(
            names = "--leave-out",
            description = "Go on without elements that no film can hold, such as gradients and images.")
    private boolean leaveOut;

    @Option(
            names = "--inks",
            paramLabel = "N",
            description = "At most so many inks: the closest colours are printed alike, and what is lost is said.")
    private Integer inks;

    private final List<Path> files = new ArrayList<>();

    /** The file beside the drawing that has its name and ends in yaml, if it is to be used. */
    Optional<Path> jobBeside() {
        if (job != null || artwork.equals(DASH)) {
            return Optional.empty();
        }
        String name = artwork.toString().replaceFirst("(?i)\\.svgz?$", "");
        return Optional.of(Path.of(name + ".yaml")).filter(Files::isRegularFile);
    }

    /**
     * What is asked for; the defaults where there is no job file.
     *
     * @throws inkstrata.job.JobException if the job file is at fault
     * @throws CommandFault if it is not there
     */
    Job job() throws IOException {
        Optional<Path> file = jobFile();
        if (file.isPresent()) {
            mustBeThere(file.get(), "job file");
        }
        Job asked = file.isEmpty() ? Job.DEFAULT : JobReader.read(file.get());
        if (inks == null) {
            return asked;
        }
        if (inks < 1) {
            throw new CommandFault("--inks: '" + inks + "' must be 1 or more.");
        }
        return asked.withMerge(asked.merge().withInks(inks));
    }

    /** What was read so far: the job file, the drawing, those that are to lie over it. */
    List<Path> files() {
        return List.copyOf(files);
    }

    private Optional<Path> jobFile() {
        return Optional.ofNullable(job).or(this::jobBeside);
    }

    /** The picture's width as it was given; empty if it was not. */
    String widthAsked() {
        return width == null ? "" : width;
    }

    /**
     * Reads the drawing, and the files whose drawings are to lie over it.
     *
     * @param drawings names of drawings of their own that somebody asks about
     * @param in standard input
     * @throws inkstrata.artwork.ArtworkException if a drawing is at fault
     * @throws CommandFault if one is not there, or an option makes no sense
     */
    Artwork read(Job asked, Set<String> drawings, InputStream in) throws IOException {
        return read(width == null ? asked.artworkWidthMm() : OptionalDouble.of(widthMm()), asked, drawings, in);
    }

    /** The same with the picture so wide, whatever was asked for. */
    Artwork readAt(double widthMm, Job asked, Set<String> drawings, InputStream in) throws IOException {
        return read(OptionalDouble.of(widthMm), asked, drawings, in);
    }

    /** Whether the command says how large the picture is. */
    boolean saysSize() {
        return width != null || unitsPerInch != null;
    }

    /** Whether the command says how many inks there shall be at most. */
    boolean saysInks() {
        return inks != null;
    }

    private Artwork read(OptionalDouble widthMm, Job asked, Set<String> drawings, InputStream in) throws IOException {
        ReadOptions options = new ReadOptions(widthMm, perInch(), leaveOut);
        Artwork read = picture(options, in);
        for (Ink ink : asked.inks()) {
            if (ink.from().filter(from -> !Drawings.isElement(from)).isPresent()) {
                read = Drawings.over(read, SvgReader.read(beside(ink.from().get()), options), ink.name(), asked);
            }
        }
        for (String drawing : drawings) {
            if (!Drawings.isElement(drawing)) {
                read = Drawings.over(read, SvgReader.read(beside(drawing), options), drawing, asked);
            }
        }
        return read;
    }

    private Artwork picture(ReadOptions options, InputStream in) throws IOException {
        if (artwork.equals(DASH)) {
            if (piped.length == 0) {
                piped = in.readNBytes(MOST_PIPED);
            }
            return SvgReader.read(STANDARD_INPUT, new ByteArrayInputStream(piped), options);
        }
        mustBeThere(artwork, "drawing");
        return SvgReader.read(artwork, options);
    }

    /** A file that the job file names. */
    private Path beside(String name) {
        Path file = jobFile().orElse(artwork).resolveSibling(name);
        mustBeThere(file, "drawing");
        return file;
    }

    private double widthMm() {
        try {
            double millimetres = Length.parse(width).millimetres();
            if (millimetres > 0) {
                return millimetres;
            }
        } catch (IllegalArgumentException fault) {
            throw new CommandFault("--width: " + fault.getMessage(), fault);
        }
        throw new CommandFault("--width: '" + width + "' must be more than 0.");
    }

    private OptionalDouble perInch() {
        if (unitsPerInch == null) {
            return OptionalDouble.empty();
        }
        if (!(unitsPerInch > 0 && Double.isFinite(unitsPerInch))) {
            throw new CommandFault("--units-per-inch: '"
                    + unitsPerInch.toString().replaceFirst("\\.0$", "") + "' must be more than 0, for example 72.");
        }
        return OptionalDouble.of(unitsPerInch);
    }

    private void mustBeThere(Path file, String what) {
        if (!Files.isRegularFile(file)) {
            throw new CommandFault(file + ": there is no such " + what + ". Look at the name and the folder.");
        }
        if (!Files.isReadable(file)) {
            throw new CommandFault(file + ": this " + what + " can't be read. Look at its rights.");
        }
        files.add(file);
    }
}
