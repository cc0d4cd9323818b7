package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import lyewright.chemistry.Solutions;
import lyewright.fill.CutPlan;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.fill.Moulds;
import lyewright.fill.Shape;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.Process;
import lyewright.makingsheet.Caution.Level;
import lyewright.material.Alkali;
import lyewright.material.Tables;

/** For every caution a sheet on either side of where it begins. The thresholds are ENGINE's common practice or its rules. */
final class CautionCases {

    /**
     * One case.
     *
     * @param id the caution
     * @param level the level it must have, or empty where it must not be there
     * @param what in words
     * @param sheet the sheet
     */
    record Case(String id, Optional<Level> level, String what, Supplier<MakingSheet> sheet) {
        @Override
        public String toString() {
            return id + " " + level.map(Level::word).orElse("none") + ": " + what;
        }
    }

    private final List<Case> cases = new ArrayList<>();

    private CautionCases() {}

    static List<Case> all() {
        CautionCases all = new CautionCases();
        all.lye();
        all.superfat();
        all.oils();
        all.salt();
        all.additions();
        all.dispersions();
        all.milkAndSugar();
        all.fragrance();
        all.making();
        return all.cases;
    }

    private void note(String id, String what, AFormula formula) {
        add(id, Optional.of(Level.NOTE), what, () -> kilogram(formula));
    }

    private void care(String id, String what, AFormula formula) {
        add(id, Optional.of(Level.CARE), what, () -> kilogram(formula));
    }

    private void stop(String id, String what, AFormula formula) {
        add(id, Optional.of(Level.STOP), what, () -> kilogram(formula));
    }

    private void none(String id, String what, AFormula formula) {
        add(id, Optional.empty(), what, () -> kilogram(formula));
    }

    private void add(String id, Optional<Level> level, String what, Supplier<MakingSheet> sheet) {
        cases.add(new Case(id, level, what, sheet));
    }

    /** 1000 g of oils, so finely weighed that rounding moves nothing over a threshold. */
    private static MakingSheet kilogram(AFormula formula) {
        return formula.sheet(Fill.oilMass(1000), Sheets.LABORATORY);
    }

    /** An oil that takes 5 mmol a gram: 1000 g take 5 mol, 199.985 g of NaOH. */
    private static AFormula oil() {
        return AFormula.ofOils("house-oil", "100 %").own(HouseMaterials.oilOfFive("house-oil"));
    }

    private static AFormula bar() {
        return oil().superfat("6 %");
    }

    private static AFormula coconutBar(String coconut, String superfat) {
        return AFormula.ofOils("coconut", coconut, "castor", "rest").superfat(superfat);
    }

    private static AFormula grams() {
        return AFormula.ofOils("house-oil", "1000 g")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .water("300 g");
    }

    private static AFormula barWith(String of, String amount, String stage) {
        return bar().add(of, amount, stage);
    }

    private void lye() {
        stop("less-water-than-alkali", "0.99 parts of water to one of alkali", bar().water("0.99 to 1"));
        none("less-water-than-alkali", "1.01 parts of water to one of alkali", bar().water("1.01 to 1"));
        stop(
                "less-water-than-alkali",
                "half the water stands with the clay, which does not dissolve alkali",
                bar().water("1.5 to 1")
                        .add("bentonite", "15 g per kg oils", "trace")
                        .dispersed("water", "7 to 1"));

        care("lye-too-strong", "40.1 % lye", bar().water("40.1 % lye"));
        none("lye-too-strong", "39.9 % lye", bar().water("39.9 % lye"));
        care("lye-too-strong", "41 % potash lye", bar().potassium().water("41 % lye"));
        care("lye-too-strong", "all of 33 % lye's water but what the clay has makes 41 %", wetClayBar());
        none("lye-too-strong", "so strong that the graver caution says it", bar().water("0.9 to 1"));

        note("lye-weak", "21.9 % lye", bar().water("21.9 % lye"));
        none("lye-weak", "22.1 % lye", bar().water("22.1 % lye"));

        note("purity-assumed", "sodium's", bar().puritiesAssumed());
        note("purity-assumed", "potassium's", bar().potassium().puritiesAssumed());
        note(
                "purity-assumed",
                "both",
                bar().mixed("50 %", "50 %", AlkaliChoice.Basis.MOLES).puritiesAssumed());
        note(
                "purity-assumed",
                "one of both",
                bar().mixed("50 %", "50 %", AlkaliChoice.Basis.MOLES).purities("naoh=98"));
        care("purity-unusual", "soda of 88.9 %", bar().purities("naoh=88.9"));
        none("purity-unusual", "soda of 89 %", bar().purities("naoh=89"));
        stop("purity-impossible", "soda of 9.85 %, a slipped point", bar().certifiedSodium(9.85));
        stop("purity-impossible", "soda of 49.9 %", bar().certifiedSodium(49.9));
        none("purity-impossible", "soda of 50 %", bar().purities("naoh=50"));
        none("purity-unusual", "so low that the graver caution says it", bar().certifiedSodium(9.85));
        care("purity-unusual", "potash of 79.9 %", bar().potassium().purities("koh=79.9"));
        none(
                "purity-unusual",
                "potash of 80 %, while no soda is used",
                bar().potassium().purities("koh=80,naoh=60"));
        none("purity-assumed", "given", bar().purities("naoh=98.5"));
        none("purity-assumed", "the other's is not given", bar().potassium().purities("koh=90"));
        none(
                "purity-assumed",
                "a stock lye has its own strength",
                bar().own(HouseMaterials.stockLye("stock", "50 %", Alkali.SODIUM))
                        .stockLye("stock")
                        .puritiesAssumed());

        note("alkali-as-weighed", "a mass of alkali, not said of what", grams().naoh("188 g"));
        none("alkali-as-weighed", "said to be as weighed", grams().naohAsWeighed("188 g"));
        none("alkali-as-weighed", "said to be pure", grams().naohPure("188 g"));
        none("alkali-as-weighed", "left to the sheet", bar());

        // sodium carbonate: 21.8 g dissolve in 100 g of water at 20 °C, so 65.4 g in 300 g
        care("jug-undissolved", "66 g of soda ash in 300 g", sodaAsh("66 g per kg oils"));
        none("jug-undissolved", "65 g of soda ash in 300 g", sodaAsh("65 g per kg oils"));
        none(
                "jug-undissolved",
                "it goes in at trace",
                bar().water("300 g").add("sodium-carbonate", "66 g per kg oils", "trace"));

        note("temperatures-apart", "11 K", bar().blendedAt("49 C", "38 C"));
        note("temperatures-apart", "11 K the other way", bar().blendedAt("35 C", "46 C"));
        none("temperatures-apart", "10 K", bar().blendedAt("48 C", "38 C"));
        none("temperatures-apart", "18 °F are 10 K", bar().blendedAt("118 F", "100 F"));
        none("temperatures-apart", "not written", bar());
    }

    /** 33 % lye less the water of 60 g of clay, 120 g. */
    private static AFormula wetClayBar() {
        return bar().water("33 % lye")
                .add("rose-clay", "55 g per kg oils", "trace")
                .dispersed("water", "2 to 1");
    }

    private static AFormula sodaAsh(String amount) {
        return bar().water("300 g").add("sodium-carbonate", amount, "lye");
    }

    private void superfat() {
        // 199.985 g are all it takes
        stop("free-alkali", "200.1 g of NaOH", grams().naohPure("200.1 g"));
        none("free-alkali", "199.9 g of NaOH", grams().naohPure("199.9 g"));
        // known to the last digit, but for what the balances may err: 0.02 g of 200 g
        care("free-alkali", "none asked", oil().superfat("0 %"));
        none("free-alkali", "0.05 % asked", oil().superfat("0.05 %"));
        // coconut's saponification value is anywhere from 248 to 265 (Codex): the chance that it is under what the
        // alkali
        // needs is (256.5 x (1 - superfat) - 248) / 17
        care(
                "free-alkali",
                "coconut at 3.2 %: 1.7 in 100",
                AFormula.ofOils("coconut", "100 %").superfat("3.2 %"));
        none(
                "free-alkali",
                "coconut at 3.3 %: 0.2 in 100",
                AFormula.ofOils("coconut", "100 %").superfat("3.3 %"));

        care("superfat-unusual", "1.9 %", oil().superfat("1.9 %"));
        note("superfat-unusual", "2.1 %", oil().superfat("2.1 %"));
        note("superfat-unusual", "4.9 %", oil().superfat("4.9 %"));
        none("superfat-unusual", "5 %", oil().superfat("5 %"));
        none("superfat-unusual", "8 %", oil().superfat("8 %"));
        note("superfat-unusual", "8.1 %", oil().superfat("8.1 %"));
        note("superfat-unusual", "14.9 %", oil().superfat("14.9 %"));
        care("superfat-unusual", "15.1 %", oil().superfat("15.1 %"));
        none("superfat-unusual", "under 0, which the graver caution says", grams().naohPure("205 g"));
        care("superfat-unusual", "a salt bar of 11.9 %", saltBar("11.9 %"));
        note("superfat-unusual", "a salt bar of 14.9 %", saltBar("14.9 %"));
        none("superfat-unusual", "a salt bar of 15 %", saltBar("15 %"));
        none("superfat-unusual", "a salt bar of 20 %", saltBar("20 %"));
        note("superfat-unusual", "a salt bar of 20.1 %", saltBar("20.1 %"));
        note("superfat-unusual", "a shaving soap of 2.9 %", shaving("2.9 %"));
        none("superfat-unusual", "a shaving soap of 3 %", shaving("3 %"));
        none("superfat-unusual", "a shaving soap of 6 %", shaving("6 %"));
        note("superfat-unusual", "a shaving soap of 6.1 %", shaving("6.1 %"));
        none(
                "superfat-unusual",
                "a soft soap of 4 %",
                oil().superfat("4 %").mixed("66 %", "34 %", AlkaliChoice.Basis.MOLES));
        note(
                "superfat-unusual",
                "too little potassium to be soft",
                oil().superfat("4 %").mixed("68 %", "32 %", AlkaliChoice.Basis.MOLES));

        // a point of superfat is 0.05 mol, 3.202 g of anhydrous citric acid (0.015615 mol/g)
        note("acid-takes-alkali", "0.17 g of citric acid", citric("0.17 g", false));
        none("acid-takes-alkali", "0.15 g of citric acid", citric("0.15 g", false));
        note("acid-takes-alkali", "4.9 points as written", citric("15.7 g", true));
        care("acid-takes-alkali", "5.1 points as written", citric("16.3 g", true));
        // 4.7 mol of alkali, 0.015615 mol/g of acid: 301 g take all of it
        stop("acid-takes-all", "302 g of citric acid as written", citric("302 g", true));
        none("acid-takes-all", "300 g of citric acid as written", citric("300 g", true));
        care("volume-of-powder", "a spoon of salt", bar().add("sea-salt", "15 ml", "trace"));
        care("volume-of-powder", "a spoon of milk powder", bar().add("goat-milk-powder", "15 ml", "trace"));
        none("volume-of-powder", "a spoon of honey", bar().add("honey", "15 ml", "trace"));
        none("volume-of-powder", "lavender", bar().add("lavender-oil", "15 ml", "trace"));
        // clay wetted out in oil takes x of the oils out of the base, which keeps all the alkali: the plain half of a
        // batch
        // of superfat s has 1 - (1 - s) / (1 - x)
        note("portion-superfat", "6 % asked, 2 % of the oils gone: 4.1 %", leaner("6 %", "20 g", "2 to 1"));
        care("portion-superfat", "3 % asked, 2 % of the oils gone: 1.0 %", leaner("3 %", "20 g", "2 to 1"));
        none("portion-superfat", "6 % asked, 0.4 % of the oils gone: 5.6 %", leaner("6 %", "8 g", "1 to 1"));
        none("portion-superfat", "under 0, which the graver caution says", leaner("2 %", "20 g", "4 to 1"));
        stop("portion-free-alkali", "0.3 % asked, 0.4 % gone: -0.1 %", leaner("0.3 %", "8 g", "1 to 1"));
        stop("portion-free-alkali", "2 % asked, 4 % of the oils gone: -2.1 %", leaner("2 %", "20 g", "4 to 1"));
        none("portion-free-alkali", "3 % asked, 2 % of the oils gone", leaner("3 %", "20 g", "2 to 1"));
        // the house bar is 187.98 g of alkali and 375.97 g of water to 1000 g of oils: 24.04 % water as poured
        note(
                "cured-as-poured",
                "25 % of water asked of a pour of 24 %",
                oil().superfat("6 %").water("2 to 1").curedWater("25 %"));
        none(
                "cured-as-poured",
                "23 % of water asked of a pour of 24 %",
                oil().superfat("6 %").water("2 to 1").curedWater("23 %"));
        note("acid-takes-alkali", "5.1 points compensated", citric("16.3 g", false));
        // bicarbonate 0.0119039 mol/g: a point is 4.2 g
        care(
                "acid-takes-alkali",
                "22 g of bicarbonate",
                barWith("sodium-bicarbonate", "22 g", "trace").forSale());
        none(
                "acid-takes-alkali",
                "acid on top stays out of the batter",
                barWith("citric-acid-anhydrous", "9 g", "top"));
        note("acid-takes-alkali", "beside a given alkali", givenBesideAcid());
    }

    private static AFormula givenBesideAcid() {
        return grams().naohAsWeighed("199 g").add("citric-acid-anhydrous", "8 g", "lye");
    }

    private static AFormula citric(String amount, boolean forSale) {
        AFormula formula = barWith("citric-acid-anhydrous", amount, "lye");
        return forSale ? formula.forSale() : formula;
    }

    private static AFormula saltBar(String superfat) {
        return coconutBar("90 %", superfat).add("sea-salt", "50 % of oils", "trace");
    }

    private static AFormula shaving(String superfat) {
        return AFormula.ofOils("house-oil", "80 %", "stearic-acid-50", "20 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat(superfat)
                .blendedAt("75 C", "75 C");
    }

    private void oils() {
        note("wax", "beeswax", withOil("beeswax", "2 %"));
        note("wax", "jojoba", withOil("jojoba", "2 %"));
        note("wax", "lanolin", withOil("lanolin", "2 %"));
        note("wax", "10 % of it", withOil("lanolin", "10 %"));
        care("wax", "over 10 % of it", withOil("lanolin", "10.1 %"));
        none("wax", "cocoa butter", withOil("cocoa-butter", "2 %"));

        note(
                "beeswax-needs-heat",
                "blended at 49.9 °C",
                withOil("beeswax", "2 %").blendedAt("49.9 C", "49 C"));
        none("beeswax-needs-heat", "blended at 50 °C", withOil("beeswax", "2 %").blendedAt("50 C", "49 C"));
        note("beeswax-needs-heat", "no temperature written", withOil("beeswax", "2 %"));
        none("beeswax-needs-heat", "jojoba stays liquid", withOil("jojoba", "2 %"));

        // 160 to 195 mg KOH/g is 35 wide, a tenth of 177.5 is 17.75; coconut's 248 to 265 is 17, a tenth is 25.65
        note("sv-wide", "shea butter", withOil("shea-butter", "10 %"));
        none("sv-wide", "coconut", withOil("coconut", "10 %"));
        none(
                "sv-wide",
                "shea butter with a certificate",
                withOil("shea-butter", "10 %").own(HouseMaterials.certificate("shea-butter", "178")));
        none("sv-wide", "a wax, which is not counted by its saponification value", withOil("beeswax", "2 %"));

        note("sv-remembered", "olive", withOil("olive-virgin", "10 %"));
        none("sv-remembered", "coconut", withOil("coconut", "10 %"));
        none(
                "sv-remembered",
                "olive with a certificate",
                withOil("olive-virgin", "10 %").own(HouseMaterials.certificate("olive-virgin", "189.5")));
        note(
                "sv-remembered",
                "olive in a premix",
                withOil("blend", "10 %")
                        .own(HouseMaterials.premix("blend", "coconut", "50 %", "olive-virgin", "50 %")));

        care(
                "stearic-needs-heat",
                "blended at 69 °C",
                withOil("stearic-acid-50", "10 %").blendedAt("69 C", "69 C"));
        note(
                "stearic-needs-heat",
                "blended at 70 °C",
                withOil("stearic-acid-50", "10 %").blendedAt("70 C", "70 C"));
        care("stearic-needs-heat", "no temperature written", withOil("stearic-acid-90", "10 %"));
        note("stearic-needs-heat", "cooked", withOil("palmitic-acid", "10 %").make(Process.Make.COOKED));
        none("stearic-needs-heat", "oleic acid pours", withOil("oleic-acid", "10 %"));
        none("stearic-needs-heat", "no free acid", bar());
        care(
                "stearic-needs-heat",
                "stearic acid second in a premix",
                withOil("blend", "50 %")
                        .own(HouseMaterials.premix("blend", "coconut", "80 %", "stearic-acid-50", "20 %")));

        note(
                "density-assumed",
                "an oil of one's own without density",
                withOil("own-oil", "10 %").own(HouseMaterials.oilWithoutDensity("own-oil", "190")));
        none(
                "density-assumed",
                "an oil of one's own with it",
                withOil("own-oil", "10 %").own(HouseMaterials.oil("own-oil", "190", "0.91")));
    }

    private static AFormula withOil(String key, String share) {
        return AFormula.ofOils("house-oil", "rest", key, share)
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("6 %");
    }

    private static AFormula leaner(String superfat, String clayPerKilogramPortionOils, String ratio) {
        return oil().superfat(superfat)
                .portions("plain", "50 %", "clay", "rest")
                .add("kaolin", clayPerKilogramPortionOils + " per kg portion oils", "portion clay")
                .dispersed("oil", ratio);
    }

    private void salt() {
        stop("salt-too-much", "150 %", salted("150 % of oils"));
        none("salt-too-much", "149.9 %", salted("149.9 % of oils"));

        care("salt-unusual", "149.9 %", salted("149.9 % of oils"));
        none("salt-unusual", "150 %, which the graver caution says", salted("150 % of oils"));
        care("salt-unusual", "100.1 %", salted("100.1 % of oils"));
        none("salt-unusual", "100 %", salted("100 % of oils"));
        none("salt-unusual", "25 %", salted("25 % of oils"));
        note("salt-unusual", "24.9 %", salted("24.9 % of oils"));
        note("salt-unusual", "5.1 %", salted("5.1 % of oils"));
        none("salt-unusual", "5 %", salted("5 % of oils"));
        // a quarter of it is salt: 21 % of brine are 5.25 % of salt, 19 % are 4.75 %
        note("salt-unusual", "21 % of brine", salted("brine-25", "21 % of oils"));
        none("salt-unusual", "19 % of brine", salted("brine-25", "19 % of oils"));
        none(
                "salt-unusual",
                "salt on top is no salt bar",
                coconutBar("90 %", "6 %").add("sea-salt-coarse", "10 % of oils", "top"));

        care("salt-anticaking", "salt with E 535", salted("table-salt-anticaking", "50 % of oils"));
        none("salt-anticaking", "plain table salt", salted("table-salt", "50 % of oils"));
        care("salt-magnesium", "salt of the Dead Sea kind", salted("dead-sea-salt", "1 % of oils"));
        care("salt-magnesium", "Epsom salt", salted("epsom-salt", "1 % of oils"));
        none("salt-magnesium", "sea salt", salted("sea-salt", "1 % of oils"));

        care("salt-little-lather", "50 % salt, 69.9 % coconut", salted("69.9 %", "sea-salt", "50 % of oils"));
        none("salt-little-lather", "50 % salt, 70 % coconut", salted("70 %", "sea-salt", "50 % of oils"));
        none("salt-little-lather", "49.9 % salt, 60 % coconut", salted("60 %", "sea-salt", "49.9 % of oils"));
        none(
                "salt-little-lather",
                "coconut within a premix",
                AFormula.ofOils("blend", "100 %")
                        .own(HouseMaterials.premix("blend", "castor", "20 %", "coconut", "80 %"))
                        .superfat("17 %")
                        .add("sea-salt", "50 % of oils", "trace"));

        double held = heldByTheJug();
        care("salt-undissolved", "2 % more salt in the jug than its lye holds", brinyLye(1.02 * held));
        none("salt-undissolved", "2 % less salt in the jug than its lye holds", brinyLye(0.98 * held));
        note("salt-undissolved", "a salt bar", salted("50 % of oils"));
        none(
                "salt-undissolved",
                "a salt bar with as much water as oils",
                coconutBar("90 %", "17 %").water("120 % of oils").add("sea-salt", "25 % of oils", "trace"));
        none("salt-undissolved", "grains in a bar that is no salt bar", salted("24 % of oils"));
    }

    private static AFormula salted(String amount) {
        return salted("sea-salt", amount);
    }

    private static AFormula salted(String key, String amount) {
        return salted("90 %", key, amount);
    }

    private static AFormula salted(String coconut, String key, String amount) {
        return coconutBar(coconut, "17 %").add(key, amount, "trace");
    }

    /** Grams of common salt that 300 g of water with 6 % superfat's alkali in it hold. */
    private static double heldByTheJug() {
        double pure = 0.94 * 199.985;
        return 300 * Solutions.of(Tables.bundled()).saltPerWater(pure / 300);
    }

    private static AFormula brinyLye(double saltGrams) {
        // table salt is 99.8 % salt
        return bar().water("300 g").add("table-salt", String.format(Locale.ROOT, "%.3f g", saltGrams / 0.998), "lye");
    }

    private void additions() {
        note("clay-dry", "clay as it is", barWith("kaolin", "20 g per kg oils", "trace"));
        none(
                "clay-dry",
                "clay wetted out",
                barWith("kaolin", "20 g per kg oils", "trace").dispersed("water", "2 to 1"));
        none("clay-dry", "clay dusted on top", barWith("kaolin", "2 g per kg oils", "top"));
        none("clay-dry", "charcoal, which is no clay", barWith("activated-charcoal", "5 g per kg oils", "trace"));

        // kaolin: up to 30 g per kg of oils, 3 %
        care("over-usual-dose", "30.5 g/kg of clay", barWith("kaolin", "30.5 g per kg oils", "trace"));
        none("over-usual-dose", "30 g/kg of clay", barWith("kaolin", "30 g per kg oils", "trace"));
        care("over-usual-dose", "30.5 g/kg of a portion's oils", portionClay("30.5 g per kg portion oils"));
        none("over-usual-dose", "30 g/kg of a portion's oils", portionClay("30 g per kg portion oils"));
        none("over-usual-dose", "milk in place of water", milk("40 % of oils").water("40 % of oils"));
        none("over-usual-dose", "salt has its own cautions", salted("120 % of oils"));
        none("over-usual-dose", "nothing is known of Prussian blue's", barWith("prussian-blue", "50 g", "trace"));

        care("alcohol", "beer", barWith("beer", "10 % of oils", "lye"));
        care("alcohol", "wine", barWith("wine", "10 % of oils", "lye"));
        none("alcohol", "tea", barWith("black-tea", "10 % of oils", "lye"));

        care("do-not-use", "Prussian blue", barWith("prussian-blue", "1 g per kg oils", "trace"));
        care("do-not-use", "borax", barWith("borax", "1 g per kg oils", "trace"));
        none("do-not-use", "ultramarine", barWith("ultramarine-blue", "1 g per kg oils", "trace"));
        none("do-not-use", "a salt, which has its own cautions", salted("table-salt-anticaking", "50 % of oils"));

        care("restricted", "BHT", barWith("bht", "0.3 g per kg oils", "oils"));
        care("restricted", "etidronate", barWith("tetrasodium-etidronate", "1 g per kg oils", "lye"));
        none("restricted", "tocopherol", barWith("tocopherol", "0.5 g per kg oils", "oils"));

        care("acid-on-ultramarine", "citric acid beside ultramarine", ultramarineWith("citric-acid-anhydrous", "5 g"));
        care("acid-on-ultramarine", "vinegar beside ultramarine", ultramarineWith("vinegar-5", "100 g"));
        none("acid-on-ultramarine", "bicarbonate is no acid", ultramarineWith("sodium-bicarbonate", "5 g"));
        none("acid-on-ultramarine", "ultramarine alone", barWith("ultramarine-pink", "5 g per kg oils", "trace"));
        none("acid-on-ultramarine", "acid alone", citric("5 g", false));
        none(
                "acid-on-ultramarine",
                "acid in the lye jug, where it is neutralised",
                barWith("ultramarine-blue", "5 g per kg oils", "trace").add("citric-acid-anhydrous", "5 g", "lye"));
        none("acid-on-ultramarine", "beer, which is hardly sour", ultramarineWith("beer", "50 g"));
    }

    private static AFormula ultramarineWith(String key, String amount) {
        return barWith("ultramarine-blue", "5 g per kg oils", "trace").add(key, amount, "trace");
    }

    private static AFormula portionClay(String amount) {
        return bar().add("kaolin", amount, "portion grey").portions("plain", "70 %", "grey", "rest");
    }

    private void dispersions() {
        care("dispersion-too-old", "25 h ahead", wetKaolin("2 to 1", "25 h"));
        none("dispersion-too-old", "24 h ahead", wetKaolin("2 to 1", "24 h"));
        none("dispersion-too-old", "a day ahead", wetKaolin("2 to 1", "1 d"));
        none(
                "dispersion-too-old",
                "alkanet stands in oil for a week",
                barWith("alkanet", "10 g per kg oils", "oils").dispersed("oil", "6 to 1", "7 d"));

        // kaolin wants 1 to 3 times its mass
        care("dispersion-too-dry", "0.9 to 1", wetKaolin("0.9 to 1", "1 h"));
        none("dispersion-too-dry", "1 to 1", wetKaolin("1 to 1", "1 h"));
        none(
                "dispersion-too-dry",
                "nothing is known of how water glass is wetted out",
                barWith("sodium-silicate", "10 g per kg oils", "trace").dispersed("water", "0.1 to 1"));

        // kaolin wants a quarter of an hour
        note("dispersion-too-short", "14 minutes", wetKaolin("2 to 1", "14 min"));
        none("dispersion-too-short", "15 minutes", wetKaolin("2 to 1", "15 min"));
        none(
                "dispersion-too-short",
                "not written",
                barWith("kaolin", "20 g per kg oils", "trace").dispersed("water", "2 to 1"));
    }

    private static AFormula wetKaolin(String ratio, String ahead) {
        return barWith("kaolin", "20 g per kg oils", "trace").dispersed("water", ratio, ahead);
    }

    private static AFormula milk(String amount) {
        return bar().water("30 % of oils").add("goat-milk", amount, "lye").replacingWater();
    }

    private void milkAndSugar() {
        care("milk-warm", "oils at 33 °C", milk("30 % of oils").blendedAt("33 C", "30 C"));
        care("milk-warm", "lye at 33 °C", milk("30 % of oils").blendedAt("30 C", "33 C"));
        none("milk-warm", "both at 32 °C", milk("30 % of oils").blendedAt("32 C", "32 C"));
        none("milk-warm", "no milk", bar().blendedAt("40 C", "40 C"));

        note("milk-cold", "alkali into milk", milk("30 % of oils").blendedAt("30 C", "30 C"));
        none("milk-cold", "milk at trace", barWith("goat-milk", "10 % of oils", "trace"));
        none(
                "milk-cold",
                "so warm that the graver caution says it",
                milk("30 % of oils").blendedAt("40 C", "40 C"));

        care("milk-oven", "an oven after pouring", milk("30 % of oils").oven("55 C"));
        care("milk-oven", "made in the oven", milk("30 % of oils").make(Process.Make.OVEN));
        none("milk-oven", "cold", milk("30 % of oils"));
        none("milk-oven", "no milk", bar().oven("70 C"));

        // sugar is 0.02 % water; from 5 and over 30 g per kg of oils
        none("sugar-heats", "4.9 g/kg of sugar", sugar("4.9 g per kg oils"));
        note("sugar-heats", "5.1 g/kg of sugar", sugar("5.1 g per kg oils"));
        note("sugar-heats", "29.9 g/kg of sugar", sugar("29.9 g per kg oils"));
        care("sugar-heats", "30.1 g/kg of sugar", sugar("30.1 g per kg oils"));
        care(
                "sugar-heats",
                "10 g/kg of sugar and an oven",
                sugar("10 g per kg oils").oven("60 C"));
        // honey is 17.1 % water: 6 g are 4.97 g, 6.1 g are 5.06 g
        none("sugar-heats", "6 g/kg of honey", sugar("honey", "6 g per kg oils"));
        note("sugar-heats", "6.1 g/kg of honey", sugar("honey", "6.1 g per kg oils"));
        // goat milk holds 4.45 % sugar: 30 % of oils bring 13.35 g/kg, and the milk has its own word about ovens
        note("sugar-heats", "goat milk in an oven", milk("30 % of oils").oven("55 C"));
        none("sugar-heats", "no sugar", bar());
    }

    private static AFormula sugar(String amount) {
        return sugar("sugar", amount);
    }

    private static AFormula sugar(String key, String amount) {
        return barWith(key, amount, "lye");
    }

    private void fragrance() {
        care("fragrance-much", "3.1 % of two oils", scented("1.6 % of oils"));
        none("fragrance-much", "3 % of two oils", scented("1.5 % of oils"));
        none("fragrance-much", "none", bar());
        none(
                "fragrance-much",
                "3.5 % of one, which its own dose says",
                barWith("lavender-oil", "3.5 % of oils", "trace"));
    }

    private static AFormula scented(String second) {
        return barWith("lavender-oil", "1.5 % of oils", "trace").add("rosemary-oil", second, "trace");
    }

    private void making() {
        balances();
        moulds();
        // a layer of n is 1/n of all, so a third is enough for three layers and not for two
        care("fade-runs-dry", "33 % coloured in three layers", faded("33 %", 3));
        none("fade-runs-dry", "34 % coloured in three layers", faded("34 %", 3));
        none("fade-runs-dry", "no pour", bar());
    }

    private static AFormula faded(String coloured, int layers) {
        return bar().portions("kelp", coloured, "plain", "rest").fade("plain", "kelp", layers);
    }

    private void balances() {
        // in 1 g: 1000 g of oil take 187.98 g of NaOH, 187 steps of 200; 1065 g take 200.2
        add("balance-coarse", Optional.of(Level.CARE), "alkali of 187 steps", () -> inGrams(bar(), 1000));
        add("balance-coarse", Optional.empty(), "alkali of 200 steps", () -> inGrams(bar(), 1065));
        add(
                "balance-coarse",
                Optional.of(Level.CARE),
                "fragrance of 49 steps",
                () -> inGrams(bar().add("lavender-oil", "49 g", "trace"), 2000));
        add(
                "balance-coarse",
                Optional.empty(),
                "fragrance of 50 steps",
                () -> inGrams(bar().add("lavender-oil", "50 g", "trace"), 2000));
        add(
                "balance-coarse",
                Optional.of(Level.NOTE),
                "clay of 19 steps",
                () -> inGrams(bar().add("kaolin", "19 g", "trace"), 2000));
        add(
                "balance-coarse",
                Optional.empty(),
                "clay of 20 steps",
                () -> inGrams(bar().add("kaolin", "20 g", "trace"), 2000));
        add(
                "balance-coarse",
                Optional.of(Level.CARE),
                "what rounds to nothing",
                () -> inGrams(bar().add("kaolin", "0.4 g", "trace"), 2000));

        add("balance-overload", Optional.of(Level.CARE), "5001 g on 5 kg", () -> inGrams(bar(), 5001));
        add("balance-overload", Optional.empty(), "5000 g on 5 kg", () -> inGrams(bar(), 5000));
        add(
                "balance-overload",
                Optional.of(Level.CARE),
                "4000 g in a pot of 1001 g on 5 kg",
                () -> bar().sheet(
                                Fill.oilMass(4000),
                                Equipment.parseBalances("kitchen:5kg:1g")
                                        .then(e -> e.withVessels("oil pot:1001g"))
                                        .orThrow()));
    }

    private static MakingSheet inGrams(AFormula formula, double oils) {
        return formula.sheet(
                Fill.oilMass(oils), Equipment.parseBalances("kitchen:5kg:1g").orThrow());
    }

    private void moulds() {
        // 998.2 g of water are 1000 ml
        mould(Optional.of(Level.CARE), "water fill 3.1 % over the measures", Moulds.boxOf(1000), 1031);
        mould(Optional.empty(), "water fill 2.9 % over the measures", Moulds.boxOf(1000), 1029);
        mould(Optional.of(Level.CARE), "water fill 3.1 % under the measures", Moulds.boxOf(1031), 1000);
        mould(Optional.empty(), "water fill 2.9 % under the measures", Moulds.boxOf(1029), 1000);
        add("mould-data-disagree", Optional.empty(), "nothing known of the mould", () -> kilogram(bar()));
        add("mould-data-disagree", Optional.empty(), "asked twice what the measures hold", () -> askedOf(2));
        add("mould-overfull", Optional.of(Level.CARE), "3.1 % more than the mould holds", () -> askedOf(1.031));
        add("mould-overfull", Optional.empty(), "2.9 % more than the mould holds", () -> askedOf(1.029));
        add("mould-overfull", Optional.empty(), "the mould full", () -> askedOf(1));
        add("mould-overfull", Optional.empty(), "nothing known of the mould", () -> kilogram(bar()));
        add("mould-not-full", Optional.of(Level.NOTE), "3.1 % less than the mould holds", () -> askedOf(1 / 1.031));
        add("mould-not-full", Optional.empty(), "2.9 % less than the mould holds", () -> askedOf(1 / 1.029));
        add("mould-not-full", Optional.empty(), "nothing known of the mould", () -> kilogram(bar()));
        add("mould-overfull", Optional.empty(), "bars of a cut that just fill the box", () -> {
            double full = fullBox();
            return bar().sheet(
                            new Fill(
                                    new Fill.Bars(12, full / 12, false),
                                    Moulds.box(300, 80, 65),
                                    Optional.of(CutPlan.parse("25mm").orThrow()),
                                    0),
                            Sheets.LABORATORY);
        });
    }

    private void mould(Optional<Level> level, String what, Mould box, double waterMillilitres) {
        Optional<Shape> shape = box.shape();
        Mould both = new Mould(shape, Optional.of(0.9982 * waterMillilitres), Optional.empty());
        add("mould-data-disagree", level, what, () -> bar().sheet(Moulds.fullOf(both), Sheets.LABORATORY));
    }

    private static double fullBox() {
        return bar().sheet(Moulds.fullOf(Moulds.box(300, 80, 65)), Sheets.LABORATORY)
                .totals()
                .mould();
    }

    private static MakingSheet askedOf(double times) {
        Fill fill = new Fill(new Fill.MouldMass(fullBox() * times), Moulds.box(300, 80, 65), Optional.empty(), 0);
        return bar().sheet(fill, Sheets.LABORATORY);
    }
}
