package inkstrata.report;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.jr.ob.JSON;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Results held against their schemas, by a validator that is not ours, and schemas against the pages that describe them. */
public final class Schemas {
    private static final String COMMON = "/inkstrata/report/common.schema.json";

    private Schemas() {}

    /**
     * What is wrong with a result.
     *
     * @param schema name of a resource
     */
    public static List<String> faults(String schema, String result) throws IOException {
        Map<String, String> common = Map.of("urn:inkstrata:common", text(COMMON));
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(common))
                .getSchema(text(schema), InputFormat.JSON)
                .validate(result, InputFormat.JSON)
                .stream()
                .map(Object::toString)
                .toList();
    }

    /** The keys that a schema allows on its outermost object. */
    public static Set<String> keys(String schema) throws IOException {
        return keys(JSON.std.mapFrom(text(schema)));
    }

    /** The same of one of the objects that results have in common. */
    public static Set<String> commonKeys(String name) throws IOException {
        return keys((Map<?, ?>) ((Map<?, ?>) JSON.std.mapFrom(text(COMMON)).get("$defs")).get(name));
    }

    private static Set<String> keys(Map<?, ?> object) {
        Set<String> keys = new TreeSet<>();
        ((Map<?, ?>) object.get("properties")).keySet().forEach(key -> keys.add((String) key));
        return keys;
    }

    /**
     * The keys in the first column of the table after some words of a page.
     *
     * @param page a file, from the root of the module
     */
    public static Set<String> described(Path page, String after) throws IOException {
        String text = Files.readString(page);
        int start = text.indexOf(after);
        if (start < 0) {
            throw new IllegalArgumentException(page + " does not say " + after);
        }
        List<String> rows = new ArrayList<>();
        for (String line : text.substring(start + after.length()).lines().toList()) {
            if (line.startsWith("|")) {
                rows.add(line);
            } else if (!rows.isEmpty()) {
                break;
            }
        }
        Set<String> keys = new TreeSet<>();
        for (String row : rows) {
            Matcher matcher = Pattern.compile("`([^`]+)`").matcher(row.split("\\|", -1)[1]);
            while (matcher.find()) {
                keys.add(matcher.group(1));
            }
        }
        return keys;
    }

    private static String text(String resource) throws IOException {
        try (InputStream in = Schemas.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), UTF_8);
        }
    }
}
