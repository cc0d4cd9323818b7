package lyewright.web.stores;

import lyewright.material.AcidShare;
import lyewright.words.MaterialWords;

/**
 * One fatty acid of an oil.
 *
 * @param code its shorthand
 * @param name its common name
 * @param percent of all its fatty acids, as a range
 * @param source where it was read
 */
public record AcidRow(String code, String name, String percent, String source) {

    static AcidRow of(AcidShare share) {
        return new AcidRow(
                share.acid().code(),
                share.acid().commonName(),
                MaterialWords.range(share.share()),
                share.share().source());
    }
}
