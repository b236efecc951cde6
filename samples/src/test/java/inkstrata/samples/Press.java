package inkstrata.samples;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Makes films, with the plug-ins on the class path. */
final class Press {
    private Press() {}

    static Plugins plugins() {
        return Plugins.load(Press.class.getClassLoader());
    }

    /** Those that decide and write, without those that change regions, such as trap. */
    static Plugins withoutShapers() {
        Plugins all = plugins();
        return new Plugins(all.planners(), List.of(), all.inspectors(), all.writers());
    }

    /** A sample as its job file asks. */
    static Films print(Sample sample) throws IOException {
        return Films.of(files(read(sample), JobReader.read(sample.job()), plugins()));
    }

    /** A sample's drawing at the size its job file says. */
    static Artwork read(Sample sample) throws IOException {
        Job job = JobReader.read(sample.job());
        return SvgReader.read(sample.artwork(), new ReadOptions(job.artworkWidthMm(), OptionalDouble.empty(), false));
    }

    /** Every file that the writers write, by name. */
    static Map<String, byte[]> files(Artwork artwork, Job job, Plugins plugins) throws IOException {
        return files(new Separator(plugins).separate(artwork, job), job, plugins);
    }

    /** Every file that the writers write of a separation, by name. */
    static Map<String, byte[]> files(Separation separation, Job job, Plugins plugins) throws IOException {
        Separator separator = new Separator(plugins);
        Map<String, byte[]> files = new TreeMap<>();
        separator.write(separation, separator.inspect(separation, job), job, name -> new ByteArrayOutputStream() {
            @Override
            public void close() {
                files.put(name, toByteArray());
            }
        });
        return files;
    }
}
