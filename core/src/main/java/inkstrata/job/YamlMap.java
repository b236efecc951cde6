package inkstrata.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * One map of a YAML 1.2 file whose keys are known beforehand; the only door to the YAML library.
 *
 * <p>Values are taken as the text that was written, so that {@code no} and {@code 0120} stay what they are.
 */
final class YamlMap {
    /** A job file is written by hand. */
    private static final int MOST_CHARACTERS = 1_000_000;

    private static final int MOST_ALIASES = 50;

    private final JobText text;
    private final String file;
    private final String path;
    private final int line;
    private final Map<String, Node> values = new LinkedHashMap<>();
    private final Map<String, Integer> lines = new LinkedHashMap<>();

    private YamlMap(JobText text, String path, MappingNode node) {
        this.text = text;
        this.file = text.file();
        this.path = path;
        this.line = line(node);
        for (NodeTuple entry : node.getValue()) {
            int at = line(entry.getKeyNode());
            if (!(entry.getKeyNode() instanceof ScalarNode key)) {
                throw new JobException(file, at, "a key must be a word.");
            }
            if (values.put(key.getValue(), entry.getValueNode()) != null) {
                throw new JobException(file, at, "'" + path + key.getValue() + "' is there twice. Keep one.");
            }
            lines.put(key.getValue(), at);
            requireQuotes(entry.getValueNode());
        }
    }

    /** The map a whole file holds; an empty file is an empty map. */
    static YamlMap parse(String file, String text) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setCodePointLimit(MOST_CHARACTERS)
                .setMaxAliasesForCollections(MOST_ALIASES)
                .build();
        JobText written = JobText.of(file, text);
        try {
            Optional<Node> root = new Compose(settings).composeString(text);
            return map(written, "", root.orElseGet(YamlMap::empty));
        } catch (MarkedYamlEngineException e) {
            int at = e.getProblemMark().map(mark -> mark.getLine() + 1).orElse(0);
            Optional<JobException> unquoted = written.unclosed(at);
            if (unquoted.isPresent()) {
                throw unquoted.get();
            }
            throw new JobException(
                    file, at, "this is not YAML: " + e.getProblem() + ". Mend the line or the one above.");
        } catch (YamlEngineException e) {
            throw new JobException(file, 0, "this is not YAML: " + e.getMessage() + ".");
        }
    }

    private static MappingNode empty() {
        return new MappingNode(Tag.MAP, List.of(), FlowStyle.BLOCK);
    }

    /** A map that is not there. */
    static YamlMap none() {
        return map(JobText.of("", ""), "", empty());
    }

    int line() {
        return line;
    }

    Iterable<String> keys() {
        return values.keySet();
    }

    boolean has(String key) {
        return values.containsKey(key);
    }

    int lineOf(String key) {
        return lines.getOrDefault(key, line);
    }

    /** Fails at the first key that is none of these, naming the nearest. */
    YamlMap only(String... known) {
        List<String> all = List.of(known);
        for (String key : values.keySet()) {
            if (!all.contains(key)) {
                throw new JobException(
                        file, lineOf(key), "there is no key '" + path + key + "'. " + NearestWord.orAll(key, all));
            }
        }
        return this;
    }

    /** The text of a value, if the key is there. */
    Optional<String> text(String key) {
        Node node = values.get(key);
        if (node == null) {
            return Optional.empty();
        }
        return Optional.of(scalar(key, node));
    }

    /**
     * A value read by a function.
     *
     * @param read throws IllegalArgumentException with a sentence that quotes the text and says how to mend it
     */
    <T> Optional<T> value(String key, Function<String, T> read) {
        return text(key).map(text -> {
            try {
                return read.apply(text);
            } catch (IllegalArgumentException e) {
                throw new JobException(file, lineOf(key), path + key + ": " + e.getMessage());
            }
        });
    }

    Optional<YamlMap> map(String key) {
        Node node = values.get(key);
        return node == null ? Optional.empty() : Optional.of(map(text, path + key + ".", node));
    }

    /** Whether the key's value is a map rather than a text. */
    boolean isMap(String key) {
        return values.get(key) instanceof MappingNode;
    }

    /** Whether its value is a list. */
    boolean isList(String key) {
        return values.get(key) instanceof SequenceNode;
    }

    List<String> texts(String key) {
        return sequence(key).stream().map(node -> scalar(key, node)).toList();
    }

    List<YamlMap> maps(String key) {
        return sequence(key).stream()
                .map(node -> map(text, path + key + ".", node))
                .toList();
    }

    JobException fault(String key, String message) {
        return new JobException(file, lineOf(key), message);
    }

    private List<Node> sequence(String key) {
        Node node = values.get(key);
        if (node == null) {
            return List.of();
        }
        if (node instanceof SequenceNode sequence) {
            sequence.getValue().forEach(this::requireQuotes);
            return sequence.getValue();
        }
        throw new JobException(
                file, line(node), path + key + " must be a list: write [a, b] or lines that begin with '- '.");
    }

    /** @throws JobException if nothing is left of a value since it lacks its quotes */
    private void requireQuotes(Node value) {
        if (value instanceof ScalarNode scalar
                && scalar.isPlain()
                && scalar.getValue().isEmpty()) {
            text.unquoted(line(value)).ifPresent(fault -> {
                throw fault;
            });
        }
    }

    private String scalar(String key, Node node) {
        if (node instanceof ScalarNode scalar) {
            return scalar.getValue();
        }
        throw new JobException(file, line(node), path + key + " must be a single value, not a list or a map.");
    }

    private static YamlMap map(JobText text, String path, Node node) {
        if (node instanceof MappingNode mapping) {
            return new YamlMap(text, path, mapping);
        }
        String what = path.isEmpty() ? "a job file" : path.substring(0, path.length() - 1);
        throw new JobException(
                text.file(), line(node), what + " must be a map: write {key: value} or lines of 'key: value'.");
    }

    private static int line(Node node) {
        return node.getStartMark().map(mark -> mark.getLine() + 1).orElse(0);
    }
}
