package inkstrata.samples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.svg.Flags;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.house.HowMany;
import inkstrata.job.Job;
import inkstrata.job.JobExample;
import inkstrata.job.JobReader;
import inkstrata.job.Merge;
import inkstrata.job.PluginSettings;
import inkstrata.plugin.Plugin;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import inkstrata.shop.Starter;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A job file to begin with gives the very plan that was made without it. */
class StarterTest {
    private static final Plugins ALL = Plugins.load(StarterTest.class.getClassLoader());
    /** Findings are no part of the plan. */
    private static final Plugins PLUGINS = new Plugins(ALL.planners(), ALL.shapers(), List.of(), ALL.writers());

    private static final int FLAGS = HowMany.of(12);

    private static final int GENERATED = HowMany.of(8);

    @Test
    void givesFlagsTheirOwnPlansAgain() throws IOException {
        assertThat(givesTheirOwnPlansAgain(FLAGS)).isEqualTo(FLAGS);
    }

    @Tag("long")
    @Test
    void givesAllFlatFlagsTheirOwnPlansAgain() throws IOException {
        assertThat(givesTheirOwnPlansAgain(Integer.MAX_VALUE)).isGreaterThan(250);
    }

    /** How many were planned. */
    private static int givesTheirOwnPlansAgain(int most) throws IOException {
        int planned = 0;
        int joined = 0;
        for (String name : Flags.names()) {
            if (planned < most && name.startsWith("1x1")) {
                Artwork flag;
                try (InputStream in = Flags.open(name)) {
                    flag = SvgReader.read(name.substring(name.indexOf('/') + 1), in, ReadOptions.DEFAULT);
                } catch (ArtworkException notFlat) {
                    continue;
                }
                // Half of them with colours joined that touch, so that there is something to tell.
                Merge merge = planned % 2 == 0 ? Merge.DEFAULT : Merge.DEFAULT.withInks(3);
                joined += same(flag, Job.DEFAULT.withMerge(merge));
                planned++;
            }
        }
        assertThat(joined).as("flags with joined colours").isGreaterThan(planned / 10);
        return planned;
    }

    @Test
    void tellsWhichColoursAreJoinedAndWhichAreBareSheet() throws IOException {
        String drawing = "<svg xmlns='http://www.w3.org/2000/svg' width='60mm' height='20mm' viewBox='0 0 60 20'>"
                + "<rect width='60' height='20' fill='#fdfefc'/><rect x='2' y='2' width='9' height='9' fill='#c03020'/>"
                + "<rect x='20' y='2' width='9' height='9' fill='#c13121'/>"
                + "<rect x='40' y='2' width='9' height='9' fill='#fbfcf9'/></svg>";
        Artwork artwork = SvgReader.read(
                "\"odd\" name: #1.svg", new ByteArrayInputStream(drawing.getBytes(UTF_8)), ReadOptions.DEFAULT);
        assertThat(same(artwork, Job.DEFAULT)).isOne();
        assertThat(same(artwork, Job.DEFAULT.withMerge(new Merge(0, false, OptionalInt.empty()))))
                .isZero();
    }

    /** As somebody may edit it who has no use for remarks, or takes every # away, as the file says. */
    @ParameterizedTest
    @MethodSource("samples")
    void ofSamplesRunsWithoutRemarksAndWithEverySetting(Sample sample) throws IOException {
        runsEdited(SvgReader.read(sample.artwork(), ReadOptions.DEFAULT));
    }

    /** Traps are left out, as they take long and follow from the plan; what is said to them is checked all the same. */
    private static void runsEdited(Artwork artwork) {
        Separator planners = new Separator(new Plugins(ALL.planners(), List.of(), List.of(), List.of()));
        Separation separation = planners.separate(artwork, Job.DEFAULT);
        String starter = Starter.text(separation, PLUGINS, Job.DEFAULT, "");
        for (String edited : List.of(withoutRemarks(starter), withEverySetting(starter))) {
            Job job = JobReader.read("boats.yaml", edited);
            ALL.check(job);
            Map<String, PluginSettings> use = new TreeMap<>(job.use());
            use.keySet().retainAll(ALL.planners().stream().map(Plugin::id).toList());
            assertThat(told(planners.separate(artwork, JobExample.withUse(job, use))))
                    .as(edited)
                    .isEqualTo(told(separation));
        }
    }

    /** Pulls with what they print, and decisions but for why they come in that order: the job may ask for it. */
    private static List<String> told(Separation separation) {
        List<String> told = new ArrayList<>();
        for (int pull = 0; pull < separation.printed().size(); pull++) {
            told.add(separation.plan().pulls().get(pull).ink().name() + " prints "
                    + separation.printed().get(pull).areaMm2());
        }
        separation.plan().decisions().stream()
                .filter(decision -> !decision.by().equals("order"))
                .forEach(decision -> told.add(decision.toString()));
        return told;
    }

    @Test
    void ofGeneratedDrawingsRunsWithoutRemarksAndWithEverySetting() throws IOException {
        for (int seed = 1; seed <= GENERATED; seed++) {
            runsEdited(GeneratedDrawing.of(seed).artwork());
        }
    }

    static List<Sample> samples() {
        return Sample.all();
    }

    /** All that stands after a # outside quotes is gone, and so are lines of which nothing is left. */
    private static String withoutRemarks(String starter) {
        String edited = starter.lines()
                .map(line -> line.replaceAll("^((?:[^\"#]|\"(?:[^\"\\\\]|\\\\.)*\")*)#.*", "$1"))
                .filter(line -> !line.isBlank())
                .collect(Collectors.joining("\n"));
        assertThat(edited).doesNotContain(" # ").startsWith("title: ");
        return edited;
    }

    /** Every setting that a remark holds is in force. */
    private static String withEverySetting(String starter) {
        String edited = starter.lines()
                .map(line -> line.replaceFirst("^# ( *[A-Za-z-]+:)", "$1"))
                .collect(Collectors.joining("\n"));
        assertThat(edited).contains("\nartwork: ", "\nuse:", "\n    corners: ", "\norder: ");
        return edited;
    }

    /** 1 if colours were joined. */
    private static int same(Artwork artwork, Job job) throws IOException {
        Separation separation = new Separator(PLUGINS).separate(artwork, job);
        String starter = Starter.text(separation, PLUGINS, job, "");
        Map<String, byte[]> before = Press.files(separation, job, PLUGINS);
        Map<String, byte[]> again = Press.files(artwork, JobReader.read("boats.yaml", starter), PLUGINS);
        assertThat(new String(again.get("plan.json"), UTF_8))
                .as("%s%n%s", artwork.name(), starter)
                .isEqualTo(new String(before.get("plan.json"), UTF_8));
        assertThat(again.keySet()).isEqualTo(before.keySet());
        before.forEach((file, bytes) -> assertThat(again.get(file)).as(file).isEqualTo(bytes));
        return separation.joined().isEmpty() ? 0 : 1;
    }
}
