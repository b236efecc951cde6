package inkstrata.positive;

import inkstrata.job.Job;
import inkstrata.plugin.Option;
import inkstrata.plugin.OutputFolder;
import inkstrata.plugin.Writer;
import inkstrata.positive.page.ColourSheet;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Writes one true-size film for each pull in the formats a job asks for, a page that shows them all, and the plan they belong to. */
public final class Positive implements Writer {
    @Override
    public String id() {
        return "positive";
    }

    @Override
    public String description() {
        return "one true-size film positive for each pull, an overview, films.json and plan.json";
    }

    @Override
    public List<Option> options() {
        return Stream.of(FilmFormats.OPTIONS, FilmSettings.OPTIONS)
                .flatMap(List::stream)
                .toList();
    }

    @Override
    public void check(Job job) {
        FilmFormats.of(this, job);
        FilmSettings.of(this, job);
    }

    @Override
    public int rank() {
        return 10;
    }

    @Override
    public void write(Separation separation, Inspection inspection, Job job, OutputFolder folder) throws IOException {
        FilmFormats formats = FilmFormats.of(this, job);
        FilmSettings settings = FilmSettings.of(this, job);
        FilmSet set = FilmSet.of(separation, job, settings);
        Ledger ledger = new Ledger(folder);
        if (!set.films().isEmpty()) {
            new FilmFiles(set, settings, formats, ledger).write();
            ColourSheet overview = Overview.of(set);
            overview.writeSvg(ledger.create("overview.svg", Map.of("what", "overview")));
            overview.writePng(ledger.create("overview.png", Map.of("what", "overview")));
        }
        try (java.io.Writer out = new BufferedWriter(
                new OutputStreamWriter(ledger.create("plan.json", Map.of("what", "plan")), StandardCharsets.UTF_8))) {
            PlanJson.write(separation, set, formats, inspection, job, out);
        }
        ledger.write(set.title());
    }
}
