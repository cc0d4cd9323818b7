package lyewright.records.material;

import java.time.Instant;
import lyewright.formula.OwnMaterial;

/**
 * A material of the maker's own.
 *
 * @param id its id
 * @param material the material, with the key that recipes name it by
 * @param changedAt when it was last changed
 */
public record KeptMaterial(String id, OwnMaterial material, Instant changedAt) {

    /** The key that recipes name it by. */
    public String key() {
        return material.key();
    }

    /** Its kind, perhaps empty for a key of the tables. */
    public String kind() {
        return material.kind();
    }
}
