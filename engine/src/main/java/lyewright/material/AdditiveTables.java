package lyewright.material;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lyewright.material.Additive.Dispersing;
import lyewright.material.Additive.Makeup;
import lyewright.material.Additive.UsualDose;
import lyewright.material.CsvTable.Row;

/** Reads additives, fragrance oils and acids. */
final class AdditiveTables {

    private static final double GRAMS_PER_KILOGRAM_TO_PERCENT = 0.1;

    private AdditiveTables() {}

    static Map<String, Additive> additives() {
        Map<String, Additive> additives = new LinkedHashMap<>();
        for (Row row : CsvTable.rows("additives.csv")) {
            additives.put(row.text("key"), additive(row));
        }
        return Collections.unmodifiableMap(additives);
    }

    private static Additive additive(Row row) {
        return new Additive(
                row.text("key"),
                row.text("common_name"),
                kind(row.text("kind")),
                row.numberOr("density_g_cm3", 1.0),
                !row.has("density_g_cm3"),
                makeup(row),
                dispersing(row),
                usualDose(row),
                row.has("solubility_g_per_100g_water_20c")
                        ? Optional.of(row.number("solubility_g_per_100g_water_20c"))
                        : Optional.empty(),
                effects(row.text("effect_tags")),
                new Names(
                        row.text("inci"),
                        row.text("identity_source"),
                        row.text("cas"),
                        row.text("identity_source"),
                        "",
                        "",
                        ""),
                row.text("hazard_note"),
                row.text("identity_source") + " | " + row.text("physical_source") + " | " + row.text("practice_source"),
                row.text("notes"));
    }

    private static AdditiveKind kind(String word) {
        return Arrays.stream(AdditiveKind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("additives.csv: unknown kind " + word));
    }

    private static Makeup makeup(Row row) {
        return new Makeup(
                row.numberOr("acid_mol_per_g", 0),
                row.text("acid_name"),
                // fat without a saponification value is locked in seed or bran and does not react
                row.has("fat_sap_mg_koh_g") ? row.numberOr("fat_pct", 0) / 100 : 0,
                row.numberOr("fat_sap_mg_koh_g", 0),
                row.numberOr("water_pct", 0) / 100,
                row.numberOr("sugar_pct", 0) / 100,
                row.numberOr("salt_pct", 0) / 100);
    }

    private static Optional<Dispersing> dispersing(Row row) {
        if (!row.has("dispersing_liquid")) {
            return Optional.empty();
        }
        return Optional.of(new Dispersing(
                row.text("dispersing_liquid"),
                row.number("dispersing_ratio_low"),
                row.number("dispersing_ratio_high"),
                row.numberOr("dispersing_hours", 0)));
    }

    private static Optional<UsualDose> usualDose(Row row) {
        if (!row.has("usual_high")) {
            return Optional.empty();
        }
        double toPercent = row.text("usual_basis").equals("g per kg oils") ? GRAMS_PER_KILOGRAM_TO_PERCENT : 1;
        return Optional.of(new UsualDose(
                row.numberOr("usual_low", 0) * toPercent,
                row.number("usual_high") * toPercent,
                row.text("usual_stage"),
                row.text("practice_source")));
    }

    private static Set<String> effects(String tags) {
        return Arrays.stream(tags.split(";"))
                .map(String::strip)
                .filter(tag -> !tag.isEmpty())
                .collect(Collectors.toSet());
    }

    static Map<String, Additive> fragrances() {
        Map<String, Additive> fragrances = new LinkedHashMap<>();
        for (Row row : CsvTable.rows("fragrances.csv")) {
            fragrances.put(row.text("key"), fragrance(row));
        }
        return fragrances;
    }

    private static Additive fragrance(Row row) {
        return new Additive(
                row.text("key"),
                row.text("common_name"),
                AdditiveKind.FRAGRANCE,
                row.number("density_g_ml"),
                false,
                Makeup.INERT,
                Optional.empty(),
                Optional.of(new UsualDose(
                        row.number("usual_low_pct_of_oils"),
                        row.number("usual_high_pct_of_oils"),
                        "trace",
                        row.text("usual_source"))),
                Optional.empty(),
                Set.of(),
                Names.NONE,
                "Can sensitise: keep to the supplier's limits.",
                row.text("density_source") + " | flash point " + row.text("flash_point_source") + " | "
                        + row.text("usual_source"),
                row.text("notes"));
    }

    static Map<String, Tables.Acid> acids() {
        Map<String, Tables.Acid> acids = new LinkedHashMap<>();
        for (Row row : CsvTable.rows("acids.csv")) {
            acids.put(
                    row.text("substance"),
                    new Tables.Acid(
                            row.text("substance"),
                            row.number("molar_mass_g_mol"),
                            row.whole("protons_neutralised"),
                            row.text("source")));
        }
        return Collections.unmodifiableMap(acids);
    }
}
