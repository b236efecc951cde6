package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.planar.Corners;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** Reductions that keep a layer, with traps and all, on generated drawings, some of which have strips beside what is kept. */
class KeptFilmsTest {
    private static final List<String> STEPS = List.of("#dddcd9", "#9b9a98", "#585858", "#1c1c1c");
    private static final String JOB = """
            inks:
              - {name: one,   prints: "#dddcd9"}
              - {name: two,   prints: "#9b9a98"}
              - {name: three, prints: "#585858"}
              - {name: four,  prints: "#1c1c1c"}
            order: [one, two, three, four]
            use: {reduction: {enabled: true%s}}
            """;
    private static final double EXACT_MM2 = 1e-3;

    /**
     * Beside what is kept each film lies within the one before it, and is as if nothing were kept; in what is kept none lies but its own, and
     * rims no wider than the trap.
     */
    @Test
    void filmsNestBesideWhatIsKept() throws IOException {
        Job keeping = JobReader.read("job.yaml", JOB.formatted(", keep: \"#The moon\""));
        Job plain = JobReader.read("job.yaml", JOB.formatted(""));
        double keptMm2 = 0;
        for (long seed = 0; seed < 12; seed++) {
            byte[] svg = drawing(new Random(seed));
            Separation kept = separated(svg, keeping);
            Separation all = separated(svg, plain);
            Region moon = moon(kept, row -> true);
            keptMm2 += moon.areaMm2();
            for (int pull = 0; pull < kept.printed().size(); pull++) {
                Region film = kept.printed().get(pull).minus(moon);
                assertThat(film.differenceMm2(all.printed().get(pull).minus(moon)))
                        .as("drawing %d, pull %d beside what is kept", seed, pull + 1)
                        .isLessThan(EXACT_MM2);
                if (pull > 0) {
                    assertThat(film.minus(kept.printed().get(pull - 1)).areaMm2())
                            .as("drawing %d, pull %d within the one before", seed, pull + 1)
                            .isLessThan(EXACT_MM2);
                }
                Ink ink = kept.plan().pulls().get(pull).ink();
                Region own = moon(kept, row -> row.shows(ink));
                Region rims = Region.union(List.of(
                                own,
                                kept.map()
                                        .dissolve(kept.plan().pulls().get(pull).prints())))
                        .grown(keeping.registerMm() + 0.002, Corners.ROUND);
                assertThat(own.minus(kept.printed().get(pull)).areaMm2())
                        .as("drawing %d, pull %d prints what is its own", seed, pull + 1)
                        .isLessThan(EXACT_MM2);
                assertThat(kept.printed()
                                .get(pull)
                                .intersection(moon)
                                .minus(rims)
                                .areaMm2())
                        .as("drawing %d, pull %d in what is kept", seed, pull + 1)
                        .isLessThan(EXACT_MM2);
            }
        }
        assertThat(keptMm2).isGreaterThan(500);
    }

    private static Region moon(Separation kept, Predicate<Row> also) {
        return kept.map()
                .dissolve(StackSet.of(kept.table().rows().stream()
                        .filter(row -> row.drawings().contains("#The moon") && also.test(row))
                        .mapToInt(row -> row.stack())));
    }

    private static Separation separated(byte[] svg, Job job) throws IOException {
        return new Separator(Press.plugins())
                .separate(SvgReader.read("kept.svg", new ByteArrayInputStream(svg), ReadOptions.DEFAULT), job);
    }

    private static byte[] drawing(Random random) {
        StringBuilder svg = new StringBuilder(
                "<svg xmlns='http://www.w3.org/2000/svg' xmlns:x='urn:x' width='40mm' height='40mm' viewBox='0 0 40 40'>");
        for (String layer : List.of("<g>", "<g x:label='The  moon' id='layer2'>", "<g>")) {
            svg.append(layer);
            for (int i = 3 + random.nextInt(4); i > 0; i--) {
                String fill = i == 1 && layer.equals("<g>") ? "#ffffff" : STEPS.get(random.nextInt(STEPS.size()));
                svg.append(
                        random.nextBoolean()
                                ? String.format(
                                        Locale.ROOT,
                                        "<circle cx='%.2f' cy='%.2f' r='%.2f' fill='%s'/>",
                                        40 * random.nextDouble(),
                                        40 * random.nextDouble(),
                                        1 + 8 * random.nextDouble(),
                                        fill)
                                : String.format(
                                        Locale.ROOT,
                                        "<rect x='%.2f' y='%.2f' width='%.2f' height='%.2f' fill='%s'/>",
                                        35 * random.nextDouble(),
                                        35 * random.nextDouble(),
                                        1 + 15 * random.nextDouble(),
                                        1 + 15 * random.nextDouble(),
                                        fill));
            }
            svg.append("</g>");
        }
        return svg.append("</svg>").toString().getBytes(StandardCharsets.UTF_8);
    }
}
