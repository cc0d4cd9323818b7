package lyewright.web.recipe;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/** A formula file as names and texts, every value the text it is written with. */
final class YamlTexts {

    /** Longer than any text of a form, so that none is broken into lines. */
    private static final int WIDEST = 1 << 20;

    private static final DumpSettings WRITING = DumpSettings.builder()
            .setDefaultScalarStyle(ScalarStyle.DOUBLE_QUOTED)
            .setSchema(new FailsafeSchema())
            .setWidth(WIDEST)
            .build();

    private static final LoadSettings READING =
            LoadSettings.builder().setSchema(new FailsafeSchema()).build();

    private YamlTexts() {}

    static String write(Map<String, Object> entries) {
        return new Dump(WRITING).dumpToString(entries);
    }

    /** The entries of a file that is known to be one. */
    static Map<String, Object> read(String file) {
        return map(new Load(READING).loadFromString(file));
    }

    /** The entries of a group, in order; none where it is none. */
    static Map<String, Object> map(@Nullable Object value) {
        Map<String, Object> entries = new LinkedHashMap<>();
        if (value instanceof Map<?, ?> map) {
            map.forEach((name, inner) -> entries.put(String.valueOf(name), inner));
        }
        return entries;
    }

    /** The text under a name, empty where there is none. */
    static String text(Map<String, Object> entries, String name) {
        return entries.get(name) instanceof String text ? text : "";
    }
}
