package inkstrata.command;

import inkstrata.job.NearestWord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with a command line that nobody understands, and what may have been meant. */
final class WordFaults {
    private WordFaults() {}

    /** One sentence or two, and where to read on. */
    static String say(ParameterException fault) {
        CommandSpec spec = fault.getCommandLine().getCommandSpec();
        return words(fault, spec) + " See " + spec.qualifiedName() + " --help.";
    }

    private static String words(ParameterException fault, CommandSpec spec) {
        if (fault instanceof UnmatchedArgumentException unknown) {
            return unknown(unknown.getUnmatched().get(0), spec);
        }
        if (fault instanceof MissingParameterException missing) {
            // A misspelt option leaves its own behind as missing: what is there is the better clue.
            List<String> unmatched = new ArrayList<>(fault.getCommandLine().getUnmatchedArguments());
            unmatched.removeIf(word -> !word.startsWith("--"));
            return unmatched.isEmpty() ? missing(missing.getMissing().get(0)) : unknown(unmatched.get(0), spec);
        }
        ArgSpec argument = fault.getArgSpec();
        if (argument == null || fault.getValue() == null) {
            String message = fault.getMessage();
            return message.matches("(?s).*[.?]") ? message : message + ".";
        }
        return name(argument) + ": " + wrong(fault.getValue(), argument.type());
    }

    private static String unknown(String word, CommandSpec spec) {
        boolean isVerb = !spec.subcommands().isEmpty();
        if (word.startsWith("-")) {
            String option = word.replaceFirst("=.*", "");
            String others = others(option, spec);
            return "There is no option '" + option + "'" + (isVerb ? "" : " of " + spec.name()) + "."
                    + (others.isEmpty() ? NearestWord.question(option, options(spec)) : others);
        }
        return isVerb
                ? noVerb(word, spec)
                : "'" + word + "' is one word too many. Put quotes around names with spaces.";
    }

    static String noVerb(String word, CommandSpec program) {
        return "There is no verb '" + word + "'. "
                + NearestWord.orAll(word, program.subcommands().keySet());
    }

    /** Whose option it is. */
    private static String others(String option, CommandSpec spec) {
        if (spec.parent() == null) {
            return "";
        }
        List<String> verbs = spec.parent().subcommands().values().stream()
                .map(CommandLine::getCommandSpec)
                .filter(other -> options(other).contains(option))
                .map(CommandSpec::name)
                .distinct()
                .toList();
        return verbs.isEmpty() ? "" : " It belongs to " + String.join(" and ", verbs) + ".";
    }

    private static List<String> options(CommandSpec spec) {
        return spec.options().stream()
                .flatMap(option -> Stream.of(option.names()))
                .toList();
    }

    private static String missing(ArgSpec argument) {
        return argument instanceof OptionSpec option
                ? option.longestName()
                        + (option.required() ? " " : " needs a ")
                        + argument.paramLabel()
                        + (option.required() ? " is missing." : ".")
                : argument.paramLabel() + " is missing.";
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    private static String wrong(String value, Class<?> type) {
        if (type.isEnum()) {
            List<String> choices = Arrays.stream(type.getEnumConstants())
                    .map(choice -> choice.toString().toLowerCase(Locale.ROOT))
                    .toList();
            return "'" + value + "' is none of " + String.join(", ", choices) + "."
                    + NearestWord.question(value.toLowerCase(Locale.ROOT), choices);
        }
        if (type == Integer.class) {
            return "'" + value + "' is not a whole number.";
        }
        return "'" + value + "' is not " + (type == Double.class ? "a number." : "what belongs here.");
    }
}
