package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Keeping;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.chemistry.OxidationIndices;
import lyewright.makingsheet.Comparison.Group;
import lyewright.makingsheet.Comparison.Row;
import lyewright.material.FattyAcid;

/** Lays the figures of two sheets side by side, once. */
final class ComparisonRows {

    private static final String OF_THE_BAR = "% of cured bar";

    private final ComparedSheet a;
    private final ComparedSheet b;
    private final List<Row> rows = new ArrayList<>();

    private ComparisonRows(ComparedSheet a, ComparedSheet b) {
        this.a = a;
        this.b = b;
    }

    /** A sheet's own, the same on either side. */
    static List<Row> of(MakingSheet sheet) {
        ComparedSheet compared = new ComparedSheet(sheet);
        return of(new ComparisonRows(compared, compared));
    }

    static List<Row> of(MakingSheet a, MakingSheet b) {
        return of(new ComparisonRows(new ComparedSheet(a), new ComparedSheet(b)));
    }

    private static List<Row> of(ComparisonRows both) {
        both.oils();
        both.additions();
        both.alkaliAndWater();
        both.superfatAndLye();
        both.fattyAcids();
        both.oilValues();
        both.keeping();
        both.curedBar();
        both.batch();
        return both.rows;
    }

    private void oils() {
        shares(Group.OILS, "oils.", sheet -> sheet.oilPercents, "% of oils", 2);
    }

    private void additions() {
        shares(Group.ADDITIONS, "additions.", sheet -> sheet.additionsPerKilogram, "g per kg oils", 1);
    }

    /** What one of the two has not counts as nothing of it. */
    private void shares(
            Group group, String path, Function<ComparedSheet, Map<String, Double>> figure, String unit, int decimals) {
        Map<String, Double> all = new LinkedHashMap<>(figure.apply(a));
        figure.apply(b).forEach(all::putIfAbsent);
        for (String key : all.keySet()) {
            rows.add(new Row(
                    path + key,
                    group,
                    a.names.getOrDefault(key, b.names.getOrDefault(key, key)),
                    Optional.of(figure.apply(a).getOrDefault(key, 0.0)),
                    Optional.of(figure.apply(b).getOrDefault(key, 0.0)),
                    unit,
                    decimals));
        }
    }

    private void alkaliAndWater() {
        Group group = Group.ALKALI_AND_WATER;
        String unit = "g per kg oils";
        unlessNone(group, "perKgOils.naohGrams", "Sodium hydroxide as weighed", s -> s.naoh, unit, 1);
        unlessNone(group, "perKgOils.naohPureGrams", "Sodium hydroxide, pure", s -> s.naohPure, unit, 1);
        unlessNone(group, "perKgOils.kohGrams", "Potassium hydroxide as weighed", s -> s.koh, unit, 1);
        unlessNone(group, "perKgOils.kohPureGrams", "Potassium hydroxide, pure", s -> s.kohPure, unit, 1);
        add(group, "perKgOils.waterGrams", "Water by the rule", s -> Optional.of(s.water), unit, 1);
        add(group, "perKgOils.allWaterGrams", "All water", s -> Optional.of(s.allWater), unit, 1);
    }

    private void superfatAndLye() {
        Group group = Group.SUPERFAT_AND_LYE;
        add(group, "superfat.exactPercent", "Superfat before rounding", s -> Optional.of(s.superfat), "%", 2);
        add(group, "superfat.sheetPercent", "Superfat", s -> Optional.of(s.sheet.sheetSuperfatPercent()), "%", 1);
        band("superfat.low95Percent", "Superfat, low end of 95 %", SuperfatBand::lowPercent, "%", 1);
        band("superfat.high95Percent", "Superfat, high end of 95 %", SuperfatBand::highPercent, "%", 1);
        band("superfat.worstPercent", "Superfat, all at its worst", SuperfatBand::worstPercent, "%", 1);
        band(
                "superfat.freeAlkaliProbability",
                "Chance of alkali left over",
                SuperfatBand::freeAlkaliProbability,
                "",
                3);
        unlessNone(group, "alkali.potassiumMolesPercent", "Potassium's share by moles", s -> s.potassium, "%", 1);
        add(group, "lye.pureStrengthPercent", "Lye, pure", s -> Optional.of(s.lyeStrength), "%", 1);
        add(group, "alkali.jugConcentrationPercent", "Lye in its jug", s -> Optional.of(s.jugStrength), "%", 1);
    }

    private void band(String path, String label, Function<SuperfatBand, Double> figure, String unit, int decimals) {
        add(Group.SUPERFAT_AND_LYE, path, label, s -> Optional.of(figure.apply(s.sheet.band())), unit, decimals);
    }

    private void fattyAcids() {
        Set<FattyAcid> all = new TreeSet<>(OilPhaseAcids.BY_SIZE);
        a.acids.acids().forEach(share -> all.add(share.acid()));
        b.acids.acids().forEach(share -> all.add(share.acid()));
        for (FattyAcid acid : all) {
            add(
                    Group.FATTY_ACIDS,
                    "fattyAcids." + acid.code(),
                    acid.commonName() + " " + acid.code(),
                    s -> s.acids.known() ? Optional.of(s.acids.percent(acid.code())) : Optional.empty(),
                    "% of acids",
                    1);
        }
        unlessNone(
                Group.FATTY_ACIDS,
                "unknownPercent",
                "Oils whose acids are not known",
                s -> s.acids.unknownPercent(),
                "% of oils",
                1);
    }

    private void oilValues() {
        Group group = Group.OIL_VALUES;
        String unit = "mg KOH/g";
        add(
                group,
                "oilPhase.saponificationValueUsed",
                "Saponification value as used",
                s -> Optional.of(s.saponificationValue),
                unit,
                1);
        add(
                group,
                "oilPhase.saponificationValueFromAcids",
                "Saponification value from the acids",
                s -> s.acids.saponificationValue(),
                unit,
                1);
        add(
                group,
                "oilPhase.saponificationValueCd3a94",
                "Saponification value by Cd 3a-94",
                s -> s.acids.saponificationValueCd3a94(),
                unit,
                1);
    }

    private void keeping() {
        add(
                Group.KEEPING,
                "keeping.iodineValue",
                "Iodine value from the acids",
                s -> s.acids.iodineValue(),
                "g/100 g",
                1);
        index("oxidisability", "Oxidisability", OxidationIndices::oxidisability, 1);
        index("cox", "Calculated oxidisability (COX)", OxidationIndices::cox, 2);
        index("pi", "Peroxidisability index (PI)", OxidationIndices::peroxidisability, 1);
        index("ape", "Allylic position equivalents (APE)", OxidationIndices::allylic, 1);
        index("bape", "Bis-allylic position equivalents (BAPE)", OxidationIndices::bisAllylic, 1);
    }

    private void index(String name, String label, Function<OxidationIndices, Double> index, int decimals) {
        add(
                Group.KEEPING,
                "keeping." + name,
                label,
                s -> Keeping.of(s.acids).map(Keeping::indices).map(index),
                "",
                decimals);
    }

    private void curedBar() {
        cured(Composition.Kind.SOAP, "Soap");
        cured(Composition.Kind.GLYCEROL, "Glycerol");
        cured("oilLeft", "Oil left over", s -> s.percent(Composition.Kind.OIL_LEFT) - s.waxLeftPercent());
        cured("waxLeft", "Wax that does not react", Composition::waxLeftPercent);
        cured(Composition.Kind.ACID_LEFT, "Acid left over");
        cured(Composition.Kind.ACID_SALT, "Salts of acids and carbonates");
        cured(Composition.Kind.UNSAPONIFIABLE, "Unsaponifiable");
        cured(Composition.Kind.SALT, "Salt");
        cured(Composition.Kind.WATER, "Water in the bar");
        cured(Composition.Kind.FREE_ALKALI, "Alkali left over");
        cured(Composition.Kind.INERT, "Inert (clay, colour, impurity)");
        cured(Composition.Kind.OTHER, "Everything else");
        add(
                Group.CURED_BAR,
                "cured.totalFattyMatterPercent",
                "Total fatty matter",
                s -> s.cured.totalFattyMatterPercent(),
                OF_THE_BAR,
                1);
    }

    private void cured(Composition.Kind kind, String label) {
        cured(kind.word(), label, cured -> cured.percent(kind));
    }

    private void cured(String word, String label, Function<Composition, Double> percent) {
        unlessNone(Group.CURED_BAR, "cured." + word + "Percent", label, s -> percent.apply(s.cured), OF_THE_BAR, 1);
    }

    private void batch() {
        Group group = Group.BATCH;
        add(group, "totals.oilsGrams", "Oils", s -> Optional.of(s.sheet.totals().oils()), "g", 1);
        add(
                group,
                "totals.batchGrams",
                "Weighed in all",
                s -> Optional.of(s.sheet.totals().batch()),
                "g",
                1);
        add(
                group,
                "totals.mouldGrams",
                "Into the mould",
                s -> Optional.of(s.sheet.totals().mould()),
                "g",
                1);
        add(group, "batterDensityGramsPerMl", "Batter", s -> Optional.of(s.sheet.batterDensity()), "g/ml", 3);
        if (a.sheet.bars().isPresent() || b.sheet.bars().isPresent()) {
            add(group, "bars.count", "Bars", s -> s.sheet.bars().map(bars -> (double) bars.count()), "", 0);
            add(group, "bars.cutGrams", "A bar as cut", s -> s.sheet.bars().map(MakingSheet.Bars::cutGrams), "g", 1);
            add(group, "bars.curedGrams", "A bar cured", s -> s.sheet.bars().map(MakingSheet.Bars::curedGrams), "g", 1);
        }
    }

    private void unlessNone(
            Group group, String path, String label, Function<ComparedSheet, Double> figure, String unit, int decimals) {
        if (figure.apply(a) > 0 || figure.apply(b) > 0) {
            add(group, path, label, s -> Optional.of(figure.apply(s)), unit, decimals);
        }
    }

    private void add(
            Group group,
            String path,
            String label,
            Function<ComparedSheet, Optional<Double>> figure,
            String unit,
            int decimals) {
        Optional<Double> ofA = figure.apply(a);
        Optional<Double> ofB = figure.apply(b);
        if (ofA.isPresent() || ofB.isPresent()) {
            rows.add(new Row(path, group, label, ofA, ofB, unit, decimals));
        }
    }
}
