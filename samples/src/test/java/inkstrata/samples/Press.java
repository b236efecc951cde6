package inkstrata.samples;

import inkstrata.artwork.Artwork;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.measure.Size;
import inkstrata.plan.Ink;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Makes films of a sample as jsvg reads it, with all plug-ins on the class path. */
final class Press {
    private Press() {}

    /** The films, written to that folder; every other setting of the job file is left at its default. */
    static Films print(Sample sample, Size picture, Size sheet, Rgb bare, Path folder) throws IOException {
        Artwork artwork = Tracer.trace(sample.name(), sample.drawing(), picture);
        List<Ink> inks = sample.listedInks().stream()
                .map(swatch -> new Ink(swatch.toString(), swatch, 0.9, Optional.empty(), false))
                .toList();
        Job job = new Job(
                "",
                sample.name(),
                Optional.of(sheet),
                bare,
                Job.DEFAULT.side(),
                OptionalDouble.empty(),
                Optional.empty(),
                Job.DEFAULT_REGISTER_MM,
                Job.DEFAULT_MERGE,
                inks,
                List.of(),
                Job.DEFAULT.edition(),
                Map.of());
        Separator separator = new Separator(Plugins.load(Press.class.getClassLoader()));
        Separation separation = separator.separate(artwork, job);
        Files.createDirectories(folder);
        separator.write(
                separation,
                separator.inspect(separation, job),
                job,
                name -> Files.newOutputStream(folder.resolve(name)));
        return Films.in(folder);
    }
}
