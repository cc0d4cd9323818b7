package lyewright.material;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lyewright.material.CsvTable.Row;

/** Reads what concerns solutions, balances and common practice. */
final class SolutionTables {

    private SolutionTables() {}

    static List<Tables.AlkaliFigures> alkalis() {
        return CsvTable.rows("alkalis.csv").stream().map(SolutionTables::alkali).toList();
    }

    private static Tables.AlkaliFigures alkali(Row row) {
        return new Tables.AlkaliFigures(
                row.text("key").equals(Alkali.POTASSIUM.key()) ? Alkali.POTASSIUM : Alkali.SODIUM,
                row.number("molar_mass_g_mol"),
                row.number("assumed_purity_percent"),
                Figure.range(row.number("assumed_low"), row.number("assumed_high"), row.text("purity_source")),
                row.number("solid_density_g_ml"),
                row.text("inci"),
                row.text("cas"),
                row.text("molar_mass_source") + " | " + row.text("rest_source") + " | " + row.text("density_source")
                        + " | " + row.text("identity_source"));
    }

    static List<Tables.LyeDensityPoint> lyeDensities() {
        return CsvTable.rows("lye_densities.csv").stream()
                .map(row -> new Tables.LyeDensityPoint(
                        row.text("solute").equals("KOH") ? Alkali.POTASSIUM : Alkali.SODIUM,
                        row.number("mass_percent"),
                        row.number("temperature_c"),
                        row.number("density_g_ml"),
                        row.text("series"),
                        row.text("source")))
                .toList();
    }

    static List<Tables.SolubilityPoint> solubilities() {
        return CsvTable.rows("solubilities.csv").stream()
                .map(row -> new Tables.SolubilityPoint(
                        row.text("solute"),
                        row.number("temperature_c"),
                        row.number("mass_percent_saturated"),
                        row.text("source")))
                .toList();
    }

    static List<Tables.SaltInLyePoint> saltInLye() {
        return CsvTable.rows("salt_in_lye.csv").stream()
                .map(SolutionTables::saltInLyePoint)
                .toList();
    }

    private static Tables.SaltInLyePoint saltInLyePoint(Row row) {
        return new Tables.SaltInLyePoint(
                row.number("naoh_mass_percent"),
                row.number("nacl_mass_percent"),
                row.number("water_mass_percent"),
                row.text("note").contains("outlier"),
                row.text("source"));
    }

    static List<Tables.BalanceErrorRow> balanceErrors() {
        return CsvTable.rows("balance_errors.csv").stream()
                .map(row -> new Tables.BalanceErrorRow(
                        row.text("class"),
                        row.number("load_from_e"),
                        row.text("load_to_e").equals("max") ? Double.POSITIVE_INFINITY : row.number("load_to_e"),
                        row.number("in_service_mpe_in_e"),
                        row.text("source")))
                .toList();
    }

    static Map<String, Tables.Practice> practices() {
        Map<String, Tables.Practice> practices = new LinkedHashMap<>();
        for (Row row : CsvTable.rows("common_practice.csv")) {
            practices.put(
                    row.text("id"),
                    new Tables.Practice(
                            row.text("id"),
                            row.numberOr("low", 0),
                            row.numberOr("high", Double.POSITIVE_INFINITY),
                            row.text("unit"),
                            row.text("what"),
                            row.text("source")));
        }
        return Collections.unmodifiableMap(practices);
    }
}
