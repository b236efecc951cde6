package inkstrata.command;

import inkstrata.artwork.Artwork;
import inkstrata.job.Job;
import inkstrata.measure.Place;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Quantity;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/**
 * What films were to print: as the drawing and the job say, at the size and with as few inks as the folder says that they were made.
 *
 * @param planned by which they are checked
 * @param findings where the command says something else
 */
record AsMade(Separation planned, List<Finding> findings) {
    /** Sizes that differ by less, in millimetres, are the same but for rounding. */
    private static final double ROUNDING_MM = 0.002;

    AsMade {
        findings = List.copyOf(findings);
    }

    /** Plans them, and says on the screen what was taken from the folder. */
    static AsMade of(
            Path folder,
            SetRecord record,
            ArtworkArguments arguments,
            Job job,
            Plugins plugins,
            Separator separator,
            Desk desk,
            InputStream in)
            throws IOException {
        List<Finding> findings = new ArrayList<>();
        Set<String> drawings = Separator.drawings(plugins, job);
        Artwork artwork = arguments.read(job, drawings, in);
        double asked = artwork.frame().width();
        double made = record.pictureWidthMm().orElse(asked);
        if (Math.abs(asked - made) > ROUNDING_MM) {
            if (arguments.saysSize()) {
                findings.add(size(folder, asked, made));
            } else {
                desk.say(String.format(
                        Locale.ROOT,
                        "the films in %s were made for a picture %.2f mm wide (plan.json), not %.2f mm; they are checked for that.",
                        folder,
                        made,
                        asked));
            }
            artwork = arguments.readAt(made, job, drawings, in);
        }
        Separation planned = separator.separate(artwork, job);
        Set<String> inks = names(planned);
        Set<String> madeInks = new TreeSet<>(record.inks());
        if (!madeInks.isEmpty() && madeInks.size() < inks.size()) {
            Separation fewer =
                    separator.separate(artwork, job.withMerge(job.merge().withInks(madeInks.size())));
            if (names(fewer).equals(madeInks)) {
                if (arguments.saysInks()) {
                    findings.add(inks(inks.size(), madeInks.size()));
                } else {
                    desk.say("the films in " + folder + " were made with " + madeInks.size()
                            + " inks at most (plan.json); they are checked for that.");
                }
                planned = fewer;
            }
        }
        return new AsMade(planned, findings);
    }

    private static Set<String> names(Separation separation) {
        Set<String> names = new TreeSet<>();
        separation.plan().pulls().forEach(pull -> names.add(pull.ink().name()));
        return names;
    }

    private static Finding size(Path folder, double asked, double made) {
        return new Finding(
                        Severity.ERROR,
                        "picture size",
                        new Place(0, 0),
                        String.format(Locale.ROOT, "films in %s were made for a picture %.2f mm wide", folder, made),
                        String.format(Locale.ROOT, "%.2f mm, as the command says", asked),
                        "Make them anew at that size, or leave it out of the command.")
                .withQuantity(Quantity.of(made, asked, Quantity.Unit.MILLIMETRES));
    }

    private static Finding inks(int asked, int made) {
        return new Finding(
                        Severity.ERROR,
                        "number of inks",
                        new Place(0, 0),
                        "films were made with " + made + " inks at most",
                        asked + " inks, as the command says",
                        "Make them anew with so many, or leave --inks away.")
                .withQuantity(Quantity.of(made, asked, Quantity.Unit.COUNT));
    }
}
