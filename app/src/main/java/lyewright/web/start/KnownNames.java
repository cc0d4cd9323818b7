package lyewright.web.start;

import lyewright.formula.MaterialNames;
import lyewright.material.Tables;
import lyewright.records.Records;
import lyewright.records.material.KeptMaterial;
import lyewright.web.Shop;
import org.jspecify.annotations.Nullable;

/** The names that a notebook may have, taken apart once for each change of the workshop's own materials. Safe for several threads. */
final class KnownNames {

    private final Shop shop;
    private volatile @Nullable Looked looked;

    KnownNames(Shop shop) {
        this.shop = shop;
    }

    private record Looked(Records records, String revision, MaterialNames names) {}

    MaterialNames now() {
        Records records = shop.records();
        String revision = records.materials().revision();
        Looked last = looked;
        if (last == null || last.records() != records || !last.revision().equals(revision)) {
            last = new Looked(
                    records,
                    revision,
                    MaterialNames.of(Tables.bundled())
                            .with(records.materials().list().stream()
                                    .map(KeptMaterial::material)
                                    .toList()));
            looked = last;
        }
        return last.names();
    }
}
