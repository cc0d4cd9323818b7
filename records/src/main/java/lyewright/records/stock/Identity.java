package lyewright.records.stock;

import java.util.Optional;

/**
 * What a material is: by INCI name and CAS number, or, where it has none, by who sells it under which code and by the version of its
 * certificate.
 *
 * @param materialKey what recipes call it: a key of the tables or of the maker's own materials; empty where no recipe names it
 * @param inci INCI name, or empty
 * @param cas CAS number, or empty
 * @param species the plant's botanical name, or empty
 * @param part which part of the plant, or empty
 * @param supplierId who sells it, where that is part of what it is
 * @param productCode under which code, or empty
 * @param certificateVersion of which certificate, or empty
 */
public record Identity(
        Optional<String> materialKey,
        String inci,
        String cas,
        String species,
        String part,
        Optional<String> supplierId,
        String productCode,
        String certificateVersion) {

    /** Of something that recipes name and of which nothing else is said. */
    public static Identity ofKey(String materialKey) {
        return new Identity(Optional.of(materialKey), "", "", "", "", Optional.empty(), "", "");
    }

    /** Of something that no recipe names and of which nothing is said. */
    public static Identity none() {
        return new Identity(Optional.empty(), "", "", "", "", Optional.empty(), "", "");
    }

    /** The same with what recipes call it. */
    Identity withKey(Optional<String> key) {
        return new Identity(key, inci, cas, species, part, supplierId, productCode, certificateVersion);
    }

    /** The same with who sells it. */
    Identity withSupplier(Optional<String> id) {
        return new Identity(materialKey, inci, cas, species, part, id, productCode, certificateVersion);
    }
}
