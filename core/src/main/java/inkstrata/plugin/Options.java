package inkstrata.plugin;

import inkstrata.job.Flag;
import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.job.NearestWord;
import inkstrata.job.PluginSettings;
import inkstrata.job.PluginSettings.Setting;
import inkstrata.measure.Length;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** The settings of one plug-in in one job, typed. */
public final class Options {
    private final Plugin plugin;
    private final Job job;
    private final PluginSettings settings;

    private Options(Plugin plugin, Job job) {
        this.plugin = plugin;
        this.job = job;
        this.settings = job.settingsFor(plugin.id());
    }

    public static Options of(Plugin plugin, Job job) {
        return new Options(plugin, job);
    }

    /**
     * Reads everything the job says to this plug-in.
     *
     * @throws JobException at the first option the plug-in does not declare or value that can't be read
     */
    void check() {
        settings.values().forEach((name, setting) -> {
            Option option = plugin.options().stream()
                    .filter(declared -> declared.name().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new JobException(job.file(), setting.line(), unknown(name)));
            switch (option.kind()) {
                case LENGTH -> lengthMm(name);
                case NUMBER -> number(name);
                case FLAG -> flag(name);
                case CHOICE -> choice(name);
                case TEXT -> text(name);
            }
        });
    }

    private String unknown(String name) {
        Optional<Option> renamed = plugin.options().stream()
                .filter(option -> option.oldName().equals(name))
                .findFirst();
        if (renamed.isPresent()) {
            return "'" + name + "' of " + plugin.id() + " is now '"
                    + renamed.get().name() + "'. Write " + renamed.get().name() + " instead.";
        }
        return plugin.id() + " has no option '" + name + "'. "
                + (plugin.options().isEmpty()
                        ? "It has none."
                        : NearestWord.orAll(
                                name,
                                plugin.options().stream().map(Option::name).toList()));
    }

    /** The length in millimetres the job sets; empty if it does not and the default is words. */
    public Optional<Double> lengthMm(String name) {
        return value(
                name,
                Option.Kind.LENGTH,
                text -> within(declared(name), Length.parse(text).millimetres(), text, " mm"));
    }

    public Optional<Double> number(String name) {
        return value(name, Option.Kind.NUMBER, text -> within(declared(name), parseNumber(text), text, ""));
    }

    public boolean flag(String name) {
        return value(name, Option.Kind.FLAG, Flag::parse).orElseThrow(() -> noDefault(name));
    }

    public String choice(String name) {
        return value(name, Option.Kind.CHOICE, text -> chosen(declared(name), text))
                .orElseThrow(() -> noDefault(name));
    }

    public String text(String name) {
        return value(name, Option.Kind.TEXT, text -> text).orElseThrow(() -> noDefault(name));
    }

    /** The plug-in's own fault: its default is none. */
    private IllegalStateException noDefault(String name) {
        Option option = declared(name);
        return new IllegalStateException("option " + name + " of " + plugin.id() + " has the default '"
                + option.byDefault() + "', which is no " + option.kind().name().toLowerCase(Locale.ROOT)
                + "; its plug-in has to declare another");
    }

    private <T> Optional<T> value(String name, Option.Kind kind, Function<String, T> parse) {
        Option option = declared(name);
        if (option.kind() != kind) {
            throw new IllegalArgumentException(
                    "option " + name + " of " + plugin.id() + " is of kind " + option.kind());
        }
        Setting setting = settings.values().get(name);
        if (setting != null && !setting.text().equals(option.byDefault())) {
            try {
                return Optional.of(parse.apply(setting.text()));
            } catch (IllegalArgumentException e) {
                throw new JobException(job.file(), setting.line(), plugin.id() + "." + name + ": " + e.getMessage());
            }
        }
        try {
            return Optional.of(parse.apply(option.byDefault()));
        } catch (IllegalArgumentException words) {
            return Optional.empty();
        }
    }

    private Option declared(String name) {
        return plugin.options().stream()
                .filter(option -> option.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(plugin.id() + " declares no option " + name));
    }

    private static double within(Option option, double value, String text, String unit) {
        if (!option.range().holds(value)) {
            throw new IllegalArgumentException("'" + text + "' is outside " + option.range() + unit + ".");
        }
        return value;
    }

    private static double parseNumber(String text) {
        try {
            double number = Double.parseDouble(text);
            if (Double.isFinite(number)) {
                return number;
            }
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("'" + text + "' is not a number. Write it plainly, without a unit.", e);
        }
        throw new IllegalArgumentException("'" + text + "' is not a finite number.");
    }

    private static String chosen(Option option, String text) {
        if (!option.choices().contains(text)) {
            throw new IllegalArgumentException("'" + text + "' is none of " + String.join(", ", option.choices()) + "."
                    + NearestWord.question(text, option.choices()));
        }
        return text;
    }
}
