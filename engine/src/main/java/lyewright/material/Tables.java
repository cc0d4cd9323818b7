package lyewright.material;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * One edition of the reference figures: oils, fatty acids, additives, fragrance oils, acids, alkalis, lye densities,
 * solubilities, balance errors, common practice, salts of acids, grades of soap. Immutable; read once from the class path,
 * shared freely between threads.
 */
public final class Tables {

    private final String edition;
    private final Map<String, FattyAcid> fattyAcids;
    private final Map<String, Oil> oils;
    private final Map<String, OilBlend> alone = new HashMap<>();
    private final Map<String, Additive> additives;
    private final Map<String, Acid> acids;
    private final List<AlkaliFigures> alkalis;
    private final List<LyeDensityPoint> lyeDensities;
    private final List<SolubilityPoint> solubilities;
    private final List<SaltInLyePoint> saltInLye;
    private final List<BalanceErrorRow> balanceErrors;
    private final Map<String, Practice> practices;
    private final List<AcidSalt> acidSalts;
    private final List<SoapGrade> soapGrades;

    private Tables() {
        edition = CsvTable.rows("edition.csv").get(0).text("edition");
        fattyAcids = OilTables.fattyAcids();
        oils = OilTables.oils(fattyAcids);
        oils.forEach((key, oil) -> alone.put(key, new OilBlend(key, oil.name(), List.of(new OilBlend.Part(oil, 1)))));
        additives = new LinkedHashMap<>(AdditiveTables.additives());
        additives.putAll(AdditiveTables.fragrances());
        acids = AdditiveTables.acids();
        alkalis = SolutionTables.alkalis();
        lyeDensities = SolutionTables.lyeDensities();
        solubilities = SolutionTables.solubilities();
        saltInLye = SolutionTables.saltInLye();
        balanceErrors = SolutionTables.balanceErrors();
        practices = SolutionTables.practices();
        acidSalts = CompositionTables.acidSalts();
        soapGrades = CompositionTables.soapGrades();
    }

    private static final class Bundled {
        static final Tables TABLES = new Tables();
    }

    /**
     * The edition that comes with this release.
     *
     * @return the tables, always the same object
     */
    public static Tables bundled() {
        return Bundled.TABLES;
    }

    /**
     * An acid that is weighed as such, for the maker's own materials.
     *
     * @param name its name
     * @param molarMass g/mol
     * @param protons mol of alkali that a mole of it takes in soap
     * @param source where from
     */
    public record Acid(String name, double molarMass, int protons, String source) {}

    /**
     * An alkali's figures with their sources; the values themselves stand in {@link Alkali}.
     *
     * @param alkali which
     * @param molarMass g/mol
     * @param assumedPercent purity taken where none is given
     * @param assumed the range it is assumed to lie in, with source
     * @param solidDensity g/ml of the solid
     * @param inci its INCI name
     * @param cas its CAS number
     * @param source of molar mass, rest, density and identity, joined by {@code " | "}
     */
    public record AlkaliFigures(
            Alkali alkali,
            double molarMass,
            double assumedPercent,
            Figure assumed,
            double solidDensity,
            String inci,
            String cas,
            String source) {}

    /**
     * A published density of lye.
     *
     * @param alkali which alkali
     * @param percent pure alkali, percent by mass
     * @param celsius temperature
     * @param gramsPerMillilitre density
     * @param series which of the published tables: hot, molality or crc20
     * @param source its source
     */
    public record LyeDensityPoint(
            Alkali alkali, double percent, double celsius, double gramsPerMillilitre, String series, String source) {}

    /**
     * A published solubility in water.
     *
     * @param solute chemical formula of what dissolves
     * @param celsius temperature
     * @param massPercent of the saturated solution
     * @param source its source
     */
    public record SolubilityPoint(String solute, double celsius, double massPercent, String source) {}

    /**
     * What salt a lye holds, hot.
     *
     * @param naohPercent sodium hydroxide, percent of the solution's mass
     * @param naclPercent sodium chloride it holds, percent of the solution's mass
     * @param waterPercent water, percent of the solution's mass
     * @param outlier whether the point lies off the others and is not used
     * @param source its source
     */
    public record SaltInLyePoint(
            double naohPercent, double naclPercent, double waterPercent, boolean outlier, String source) {}

    /**
     * The error a balance of a class may have up to a load.
     *
     * @param accuracyClass I, II, III or IIII
     * @param fromSteps over so many verification steps
     * @param toSteps up to so many; infinite in a class's last row
     * @param inServiceSteps permitted error in service, in steps
     * @param source its source
     */
    public record BalanceErrorRow(
            String accuracyClass, double fromSteps, double toSteps, double inServiceSteps, String source) {}

    /**
     * A figure of the trade without a published source.
     *
     * @param id what it is for
     * @param low least usual
     * @param high most usual
     * @param unit its unit
     * @param what in words
     * @param source common practice
     */
    public record Practice(String id, double low, double high, String unit, String what, String source) {}

    /**
     * The edition's name, printed on each sheet.
     *
     * @return a date
     */
    public String edition() {
        return edition;
    }

    /**
     * An oil by key.
     *
     * @param key its key
     * @return the oil, if the tables have it
     */
    public Optional<Oil> oil(String key) {
        return Optional.ofNullable(oils.get(key));
    }

    /**
     * An oil by key, as a blend of nothing else.
     *
     * @param key its key
     * @return always the same blend, if the tables have the oil
     */
    public Optional<OilBlend> alone(String key) {
        return Optional.ofNullable(alone.get(key));
    }

    /**
     * An additive or fragrance oil by key.
     *
     * @param key its key
     * @return the additive, if the tables have it
     */
    public Optional<Additive> additive(String key) {
        return Optional.ofNullable(additives.get(key));
    }

    /**
     * Whether the tables have a material.
     *
     * @param key its key
     * @return true for an oil, additive or fragrance oil
     */
    public boolean has(String key) {
        return oils.containsKey(key) || additives.containsKey(key);
    }

    /**
     * What a key that the tables lack may have been meant for.
     *
     * @param key what was typed
     * @return at most three keys, best first
     */
    public List<String> nearest(String key) {
        String typed = key.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
        String bare = typed.endsWith("-oil") ? typed.substring(0, typed.length() - 4) : typed;
        if (oils.containsKey(bare)) {
            return List.of(bare);
        }
        List<String> named = calledSo(bare.replace('-', ' '));
        if (!named.isEmpty()) {
            return named;
        }
        Set<String> all = new TreeSet<>(oils.keySet());
        all.addAll(additives.keySet());
        return NearestKey.among(typed, all);
    }

    /** Keys of what goes by a name, or has it in its name, oils first. */
    private List<String> calledSo(String name) {
        if (name.length() < 3) {
            return List.of();
        }
        return Stream.concat(
                        oils.values().stream()
                                .filter(oil -> (oil.key().replace('-', ' ') + " " + oil.name() + " "
                                                + oil.names().inci() + " " + (name.length() < 6 ? "" : oil.notes()))
                                        .toLowerCase(Locale.ROOT)
                                        .contains(name))
                                .map(Oil::key),
                        additives.values().stream()
                                .filter(additive -> (additive.key().replace('-', ' ') + " " + additive.name())
                                        .toLowerCase(Locale.ROOT)
                                        .contains(name))
                                .map(Additive::key))
                .limit(3)
                .toList();
    }

    /**
     * All oils.
     *
     * @return in the tables' order
     */
    public Collection<Oil> oils() {
        return oils.values();
    }

    /**
     * All additives and fragrance oils.
     *
     * @return in the tables' order
     */
    public Collection<Additive> additives() {
        return additives.values();
    }

    /**
     * All fatty acids.
     *
     * @return in the table's order
     */
    public Collection<FattyAcid> fattyAcids() {
        return fattyAcids.values();
    }

    /**
     * An acid by name, such as {@code citric acid}: its name in the table, or a part of it where all that it fits are one
     * acid. Crystal water is meant only by the full name.
     *
     * @param name its name or a part of it, at least three letters
     * @return the acid, if there is exactly one
     */
    public Optional<Acid> acid(String name) {
        Acid exact = acids.get(name);
        if (exact != null) {
            return Optional.of(exact);
        }
        if (name.length() < 3) {
            return Optional.empty();
        }
        List<Acid> fitting = acids.values().stream()
                .filter(a -> a.name().contains(name) && !a.name().contains("hydrate"))
                .toList();
        boolean oneAcid =
                fitting.stream().mapToDouble(Acid::molarMass).distinct().count() == 1;
        return oneAcid ? Optional.of(fitting.get(0)) : Optional.empty();
    }

    /**
     * An acid by its full name.
     *
     * @param name its name in the table
     * @return the acid, if the table has it
     */
    public Optional<Acid> acidCalled(String name) {
        return Optional.ofNullable(acids.get(name));
    }

    /**
     * The acids' names.
     *
     * @return as in the table
     */
    public Collection<String> acidNames() {
        return acids.keySet();
    }

    /**
     * The names of an acid and its salts.
     *
     * @param acidName as an additive's makeup has it, such as {@code citric acid}
     * @return the names, if the table has that acid
     */
    public Optional<AcidSalt> acidSalt(String acidName) {
        // the longest wins: ricinoleic acid is not oleic
        return acidSalts.stream()
                .filter(salt -> acidName.contains(salt.acid()))
                .max(Comparator.comparingInt(salt -> salt.acid().length()));
    }

    /**
     * Published grades of soap.
     *
     * @return in the table's order
     */
    public List<SoapGrade> soapGrades() {
        return soapGrades;
    }

    /**
     * The two alkalis with the sources of their figures.
     *
     * @return sodium, potassium
     */
    public List<AlkaliFigures> alkalis() {
        return alkalis;
    }

    /**
     * Published densities of lye.
     *
     * @return all points
     */
    public List<LyeDensityPoint> lyeDensities() {
        return lyeDensities;
    }

    /**
     * Published solubilities.
     *
     * @return all points
     */
    public List<SolubilityPoint> solubilities() {
        return solubilities;
    }

    /**
     * What salt hot lye holds.
     *
     * @return all points
     */
    public List<SaltInLyePoint> saltInLye() {
        return saltInLye;
    }

    /**
     * Permitted errors of balances.
     *
     * @return by class, light loads first
     */
    public List<BalanceErrorRow> balanceErrors() {
        return balanceErrors;
    }

    /**
     * A figure of common practice.
     *
     * @param id what it is for
     * @return the figure
     * @throws IllegalArgumentException if the table lacks it: our fault
     */
    public Practice practice(String id) {
        Practice practice = practices.get(id);
        if (practice == null) {
            throw new IllegalArgumentException("no common practice called " + id);
        }
        return practice;
    }

    /**
     * All figures of common practice.
     *
     * @return in the table's order
     */
    public Collection<Practice> practices() {
        return practices.values();
    }
}
