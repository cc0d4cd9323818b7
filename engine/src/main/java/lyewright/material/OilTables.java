package lyewright.material;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.material.CsvTable.Row;

/** Reads the oils and their fatty acids. */
final class OilTables {

    private OilTables() {}

    static Map<String, FattyAcid> fattyAcids() {
        Map<String, FattyAcid> acids = new LinkedHashMap<>();
        for (Row row : CsvTable.rows("fatty_acids.csv")) {
            acids.put(row.text("code"), fattyAcid(row));
        }
        return Collections.unmodifiableMap(acids);
    }

    private static FattyAcid fattyAcid(Row row) {
        return new FattyAcid(
                row.text("code"),
                row.text("systematic_name"),
                row.text("common_name"),
                row.text("formula"),
                row.whole("carbons"),
                row.whole("double_bonds"),
                row.number("molar_mass_g_mol"),
                row.text("source"));
    }

    static Map<String, Oil> oils(Map<String, FattyAcid> acids) {
        Map<String, FattyAcidProfile> profiles = profiles(acids);
        Map<String, Oil> oils = new LinkedHashMap<>();
        for (Row row : CsvTable.rows("oils.csv")) {
            oils.put(row.text("key"), oil(row, profiles));
        }
        return Collections.unmodifiableMap(oils);
    }

    private static Map<String, FattyAcidProfile> profiles(Map<String, FattyAcid> acids) {
        Map<String, List<AcidShare>> shares = new LinkedHashMap<>();
        for (Row row : CsvTable.rows("oil_fatty_acids.csv")) {
            FattyAcid acid = acids.get(row.text("acid_code"));
            if (acid == null) {
                throw new IllegalStateException("oil_fatty_acids.csv names an unknown acid " + row.text("acid_code"));
            }
            row.range("low", "high", "source")
                    .ifPresent(share -> shares.computeIfAbsent(row.text("oil_key"), k -> new ArrayList<>())
                            .add(new AcidShare(acid, share)));
        }
        Map<String, FattyAcidProfile> profiles = new LinkedHashMap<>();
        shares.forEach((key, list) -> profiles.put(key, new FattyAcidProfile(list)));
        return profiles;
    }

    private static Oil oil(Row row, Map<String, FattyAcidProfile> profiles) {
        String key = row.text("key");
        OilKind kind = kind(row.text("kind"));
        Figure saponificationValue = row.range("sap_low_mg_koh_g", "sap_high_mg_koh_g", "sap_source")
                .orElseThrow(() -> new IllegalStateException("oils.csv: " + key + " has no saponification value"));
        Optional<Figure> acidValue = row.range("acid_value_low", "acid_value_high", "acid_value_source");
        FattyAcidProfile acids = profiles.getOrDefault(key, FattyAcidProfile.UNKNOWN);
        return new Oil(
                key,
                row.text("common_name"),
                kind,
                saponificationValue,
                acidValue,
                row.range("iodine_low", "iodine_high", "iodine_source"),
                density(row),
                acids,
                row.has("unsap_max_g_kg")
                        ? Optional.of(Figure.exact(row.number("unsap_max_g_kg"), row.text("unsap_source")))
                        : Optional.empty(),
                names(row),
                ReckonedValue.ofTable(kind, saponificationValue, acidValue, acids),
                row.text("notes"));
    }

    private static LiquidDensity density(Row row) {
        return new LiquidDensity(
                row.number("density_g_ml"),
                row.number("density_at_c"),
                row.number("density_slope_per_k"),
                row.text("density_source"));
    }

    private static Names names(Row row) {
        return new Names(
                row.text("inci_oil"),
                row.text("inci_oil_source"),
                row.text("cas"),
                row.text("cas_source"),
                row.text("ec"),
                row.text("inci_sodium_soap"),
                row.text("inci_potassium_soap"));
    }

    private static OilKind kind(String word) {
        return switch (word) {
            case "triglyceride" -> OilKind.TRIGLYCERIDE;
            case "fatty-acid" -> OilKind.FATTY_ACID;
            case "wax", "wax-ester" -> OilKind.WAX;
            default -> throw new IllegalStateException("oils.csv: unknown kind " + word);
        };
    }
}
