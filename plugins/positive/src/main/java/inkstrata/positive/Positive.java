package inkstrata.positive;

import inkstrata.job.Job;
import inkstrata.plugin.Option;
import inkstrata.plugin.OutputFolder;
import inkstrata.plugin.Writer;
import inkstrata.positive.page.SvgFile;
import inkstrata.separation.Finding;
import inkstrata.separation.Separation;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Writes one true-size film for each pull, and the plan they belong to. */
public final class Positive implements Writer {
    @Override
    public String id() {
        return "positive";
    }

    @Override
    public String description() {
        return "one true-size film positive for each pull (SVG), and plan.json";
    }

    @Override
    public List<Option> options() {
        return FilmSettings.OPTIONS;
    }

    @Override
    public int rank() {
        return 10;
    }

    @Override
    public void write(Separation separation, List<Finding> findings, Job job, OutputFolder folder) throws IOException {
        FilmSettings settings = FilmSettings.of(this, job);
        FilmSet set = FilmSet.of(separation, job, settings);
        for (int i = 0; i < set.films().size(); i++) {
            SvgFile.write(
                    set.films().get(i).page(settings), folder.create(set.names().get(i)));
        }
        try (java.io.Writer out = open(folder, "plan.json")) {
            PlanJson.write(separation, set, findings, job, out);
        }
    }

    private static java.io.Writer open(OutputFolder folder, String name) throws IOException {
        return new BufferedWriter(new OutputStreamWriter(folder.create(name), StandardCharsets.UTF_8), 1 << 16);
    }
}
