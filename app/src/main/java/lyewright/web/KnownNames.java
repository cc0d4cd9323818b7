package lyewright.web;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import lyewright.formula.MaterialNames;
import lyewright.material.Tables;
import lyewright.records.Records;
import lyewright.records.material.KeptMaterial;

/**
 * The names that may be typed in each workshop, taken apart once for each change of its own materials. Safe for several threads.
 */
final class KnownNames {

    private final Map<Records, Looked> looked = new ConcurrentHashMap<>();

    /** The names as they were at a revision of the workshop's materials. */
    private record Looked(String revision, MaterialNames names) {}

    MaterialNames of(Records records) {
        String revision = records.materials().revision();
        return looked.compute(
                        records,
                        (key, last) -> last != null && last.revision().equals(revision)
                                ? last
                                : new Looked(revision, look(records)))
                .names();
    }

    private static MaterialNames look(Records records) {
        return MaterialNames.of(Tables.bundled())
                .with(records.materials().list().stream()
                        .map(KeptMaterial::material)
                        .toList());
    }
}
