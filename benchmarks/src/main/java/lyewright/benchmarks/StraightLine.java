package lyewright.benchmarks;

import static lyewright.benchmarks.Figures.NAOH;
import static lyewright.benchmarks.Figures.OILS;
import static lyewright.benchmarks.Figures.REST_DENSITY;
import static lyewright.benchmarks.Figures.WATER_DENSITY;

/**
 * The making sheet of {@link TenItems} as bare arithmetic: doubles in, doubles out, nothing allocated. It stands for what
 * the figures alone cost; line numbers are those of {@link SheetCells}. Not thread-safe.
 */
final class StraightLine {

    static final int LINES = 13;
    private static final int CLAY = 5;
    private static final int CLAY_WATER = 6;
    private static final int WATER = 11;
    private static final int ALKALI = 12;

    private final Figures in;

    final double[] exact = new double[LINES];
    final double[] weigh = new double[LINES];
    final double[] reading = new double[LINES];
    final double[] by = new double[LINES];
    final double[] share = new double[LINES];
    final double[] ofAll = new double[LINES];
    final double[] ofPortion = new double[LINES];
    final double[] jugReading = new double[LINES];
    final double[] base = new double[2];
    final double[] portionOils = new double[2];
    final double[] portionWater = new double[2];
    final double[] portion = new double[2];
    final double[] portionSuperfat = new double[2];

    private final double[] equivalentsOfPortion = new double[2];
    private final double[] takenInPortion = new double[2];
    private final double[] k = new double[LINES];
    private final double[] eq = new double[OILS];
    private final boolean[] apart = new boolean[OILS];

    double oilsAsked;
    double oils;
    double batch;
    double water;
    double brought;
    double saltGrams;
    double oilEquivalents;
    double equivalents;
    double taken;
    double superfat;
    double pure;
    double concentration;
    double pureStrength;
    double weighedStrength;
    double waterLeft;
    double saltPerWater;
    double held;
    double batterDensity;
    double pot;
    double jug;
    boolean alkaliApart;
    int notes;
    int cares;
    int stops;

    StraightLine(Figures in) {
        this.in = in;
    }

    /** Makes the sheet; the result stands in the fields. */
    void make(double target) {
        perGramOfOils();
        exactMasses(target);
        balances();
        weighedMasses();
        readings();
        totals();
        lye();
        density();
        portions();
        cautions();
    }

    private void perGramOfOils() {
        double rest = 100;
        for (int i = 0; i < OILS; i++) {
            double percent = i < OILS - 1 ? in.oilPercent[i] : rest;
            rest -= percent;
            k[i] = percent / 100;
            eq[i] = in.saponificationValue[i] / Figures.MILLIGRAMS_KOH_PER_MOLE;
        }
        double plain = in.plainPercent / 100;
        k[CLAY] = in.clayGramsPerKilogram / 1000 * (1 - plain);
        k[CLAY_WATER] = k[CLAY] * in.clayLiquid;
        k[7] = in.fragrancePercent / 100 * plain;
        k[8] = in.fragrancePercent / 100 * (1 - plain);
        k[9] = in.saltPercent / 100 * plain;
        k[10] = in.saltPercent / 100 * (1 - plain);
        double moles = equivalentsOf(k) * (1 - in.superfat) + takenBy(k);
        double rule = moles * NAOH * (1 - in.lyeStrength) / in.lyeStrength;
        k[WATER] = rule - k[CLAY_WATER];
        k[ALKALI] = moles * NAOH / in.purity;
    }

    private double equivalentsOf(double[] masses) {
        oilEquivalents = 0;
        for (int i = 0; i < OILS; i++) {
            oilEquivalents += masses[i] * eq[i];
        }
        return oilEquivalents
                + masses[CLAY] * fatEquivalents(0)
                + (masses[7] + masses[8]) * fatEquivalents(1)
                + (masses[9] + masses[10]) * fatEquivalents(2);
    }

    private double fatEquivalents(int addition) {
        return in.fat[addition] * in.fatSaponificationValue[addition] / Figures.MILLIGRAMS_KOH_PER_MOLE;
    }

    private double takenBy(double[] masses) {
        return ofAdditions(in.acid, masses);
    }

    private static double ofAdditions(double[] each, double[] masses) {
        return masses[CLAY] * each[0] + (masses[7] + masses[8]) * each[1] + (masses[9] + masses[10]) * each[2];
    }

    private void exactMasses(double target) {
        double all = 0;
        double oilsOfAll = 0;
        for (int i = 0; i < LINES; i++) {
            all += k[i];
            oilsOfAll += i < OILS ? k[i] : 0;
        }
        oilsAsked = target / all;
        for (int i = 0; i < LINES; i++) {
            exact[i] = k[i] * oilsAsked;
            share[i] = 100 * k[i] / oilsOfAll;
        }
    }

    private double finest(double load) {
        return load <= in.capacity[0] ? in.step[0] : in.step[1];
    }

    private void balances() {
        double oilsExact = 0;
        for (int i = 0; i < OILS; i++) {
            oilsExact += exact[i];
        }
        double jugFirst = finest(exact[WATER] + exact[ALKALI]);
        double potFirst = finest(oilsExact);
        double alkali = exact[ALKALI] / jugFirst < 200 ? finest(exact[ALKALI]) : jugFirst;
        alkaliApart = alkali < jugFirst;
        double left = 0;
        for (int i = 0; i < OILS; i++) {
            apart[i] = exact[i] / potFirst < 20 && finest(exact[i]) < potFirst;
            left += apart[i] ? 0 : exact[i];
        }
        pot = finest(left);
        jug = finest(exact[WATER] + (alkaliApart ? 0 : exact[ALKALI]));
        for (int i = 0; i < OILS; i++) {
            by[i] = apart[i] ? finest(exact[i]) : pot;
        }
        by[CLAY] = finest(exact[CLAY] + exact[CLAY_WATER]);
        by[CLAY_WATER] = by[CLAY];
        for (int i = 7; i < WATER; i++) {
            by[i] = finest(exact[i]);
        }
        by[WATER] = jug;
        by[ALKALI] = alkaliApart ? alkali : jug;
    }

    private void weighedMasses() {
        for (int i = 0; i < ALKALI; i++) {
            weigh[i] = Math.round(exact[i] / by[i]) * by[i];
        }
        equivalents = equivalentsOf(weigh);
        taken = takenBy(weigh);
        double moles = (1 - in.superfat) * equivalents + taken;
        weigh[ALKALI] = Math.floor(moles * NAOH / in.purity / by[ALKALI] + 1e-9) * by[ALKALI];
        pure = weigh[ALKALI] * in.purity;
        superfat = 100 * (1 - Math.max(0, pure / NAOH - taken) / equivalents);
    }

    private void readings() {
        double inPot = 0;
        for (int i = 0; i < OILS; i++) {
            inPot += apart[i] ? 0 : weigh[i];
            reading[i] = apart[i] ? weigh[i] : inPot;
        }
        for (int i = CLAY; i < ALKALI; i++) {
            reading[i] = weigh[i];
        }
        reading[CLAY_WATER] += weigh[CLAY];
        reading[ALKALI] = weigh[ALKALI] + (alkaliApart ? 0 : weigh[WATER]);
    }

    private void totals() {
        oils = 0;
        batch = 0;
        for (int i = 0; i < LINES; i++) {
            oils += i < OILS ? weigh[i] : 0;
            batch += weigh[i];
        }
        water = weigh[CLAY_WATER] + weigh[WATER];
        brought = ofAdditions(in.water, weigh);
        saltGrams = ofAdditions(in.salt, weigh);
    }

    private void lye() {
        concentration = 100 * pure / (pure + weigh[WATER]);
        pureStrength = 100 * pure / (pure + water);
        weighedStrength = 100 * weigh[ALKALI] / (weigh[ALKALI] + water);
        double saturated = along(in.solubility, Figures.COOLED_TO);
        waterLeft = weigh[WATER] - pure * (100 - saturated) / saturated;
        double allWater = water + brought;
        saltPerWater = 100 * saltGrams / allWater;
        double[] known = in.saltInLye[0];
        held = along(in.saltInLye, Math.min(100 * pure / allWater, known[known.length - 1]));
    }

    private static double along(double[][] table, double x) {
        int i = below(table[0], x);
        double low = table[1][i];
        return low + (table[1][i + 1] - low) * (x - table[0][i]) / (table[0][i + 1] - table[0][i]);
    }

    private static int below(double[] sorted, double value) {
        int i = 0;
        while (i < sorted.length - 2 && sorted[i + 1] <= value) {
            i++;
        }
        return i;
    }

    private void density() {
        double volume = 0;
        for (int i = 0; i < OILS; i++) {
            volume += weigh[i] / (in.oilDensity[i] + in.oilDensitySlope[i] * (Figures.BLENDED_AT - in.oilDensityAt[i]));
        }
        volume += weigh[CLAY] / in.density[0]
                + weigh[CLAY_WATER] / WATER_DENSITY
                + (weigh[7] + weigh[8]) / in.density[1]
                + (weigh[9] + weigh[10]) / in.density[2]
                + Math.max(0, weigh[ALKALI] - pure) / REST_DENSITY
                + (pure + weigh[WATER]) / lyeDensity();
        batterDensity = batch / volume;
    }

    private double lyeDensity() {
        int row = below(in.lyePercents, concentration);
        int column = below(in.lyeCelsius, Figures.BLENDED_AT);
        double along =
                (Figures.BLENDED_AT - in.lyeCelsius[column]) / (in.lyeCelsius[column + 1] - in.lyeCelsius[column]);
        double across = (concentration - in.lyePercents[row]) / (in.lyePercents[row + 1] - in.lyePercents[row]);
        double[] weaker = in.lyeDensities[row];
        double[] stronger = in.lyeDensities[row + 1];
        double low = weaker[column] + along * (weaker[column + 1] - weaker[column]);
        double high = stronger[column] + along * (stronger[column + 1] - stronger[column]);
        return low + across * (high - low);
    }

    private void portions() {
        double all = oils + weigh[WATER] + weigh[ALKALI];
        double plain = in.plainPercent / 100;
        for (int p = 0; p < 2; p++) {
            double fraction = p == 0 ? plain : 1 - plain;
            base[p] = all * fraction;
            portionOils[p] = oils * fraction;
            portionWater[p] = weigh[WATER] * fraction;
            portion[p] = base[p];
            equivalentsOfPortion[p] = oilEquivalents * fraction;
            takenInPortion[p] = 0;
        }
        add(7, 0, 1, 0);
        add(9, 0, 2, 0);
        add(CLAY, 1, 0, weigh[CLAY_WATER]);
        add(8, 1, 1, 0);
        add(10, 1, 2, 0);
        portionSuperfat[0] = superfatOf(0, plain);
        portionSuperfat[1] = superfatOf(1, 1 - plain);
    }

    private double superfatOf(int p, double fraction) {
        return 100 * (1 - Math.max(0, pure / NAOH * fraction - takenInPortion[p]) / equivalentsOfPortion[p]);
    }

    private void add(int line, int p, int addition, double liquid) {
        portion[p] += weigh[line] + liquid;
        portionWater[p] += weigh[line] * in.water[addition] + liquid;
        equivalentsOfPortion[p] += weigh[line] * fatEquivalents(addition);
        takenInPortion[p] += weigh[line] * in.acid[addition];
        ofAll[line] = 1000 * weigh[line] / oils;
        ofPortion[line] = 1000 * weigh[line] / portionOils[p];
        jugReading[line] = portion[p];
    }

    private void cautions() {
        notes = 0;
        cares = 0;
        stops = 0;
        cautionsOfLyeAndSuperfat();
        cautionsOfMaterials();
        cautionsOfWeighing();
    }

    private void raise(int level) {
        notes += level == 1 ? 1 : 0;
        cares += level == 2 ? 1 : 0;
        stops += level == 3 ? 1 : 0;
    }

    private void cautionsOfLyeAndSuperfat() {
        boolean saltBar = saltShare() >= 25;
        double low = saltBar ? in.saltBarSuperfatLow : in.superfatLow;
        double high = saltBar ? in.saltBarSuperfatHigh : in.superfatHigh;
        raise(weigh[WATER] < pure ? 3 : concentration > 40 ? 2 : 0);
        raise(concentration < 22 ? 1 : 0);
        raise(weigh[ALKALI] > 0 ? 1 : 0);
        raise(weigh[ALKALI] > 0 && 100 * in.purity < in.purityLeast ? 2 : 0);
        raise(superfat < -1e-9 ? 3 : 0);
        boolean usual = superfat < -1e-9 || (superfat > low - 0.05 && superfat < high + 0.05);
        raise(usual ? 0 : superfat < low - 3 || superfat > high + 7 ? 2 : 1);
        for (double own : portionSuperfat) {
            raise(own > superfat - 0.5 ? 0 : own < -1e-9 ? 3 : own < low - 3 ? 2 : 1);
        }
        raise(100 * Math.min(taken, pure / NAOH) / equivalents < 0.05 ? 0 : 1);
    }

    private double saltShare() {
        return 100 * (weigh[9] + weigh[10]) / oils;
    }

    private void cautionsOfMaterials() {
        double lathering = 0;
        double wide = 0;
        double remembered = 0;
        for (int i = 0; i < OILS; i++) {
            lathering += 100 * k[i] * in.lathers[i];
            wide += in.wide[i];
            remembered += in.remembered[i];
        }
        raise(wide > 0 ? 1 : 0);
        raise(remembered > 0 ? 1 : 0);
        double salt = saltShare();
        raise(salt >= 150 ? 3 : salt > 100.05 ? 2 : salt > 5 && salt < 25 ? 1 : 0);
        raise(salt >= 49.95 && lathering < in.latherFatLeast - 0.05 ? 2 : 0);
        raise(salt >= 25 && saltPerWater > held ? 1 : 0);
        double clay = 100 * weigh[CLAY] / portionOils[1];
        raise(clay > in.clayUsualMost * 1.005 && clay > in.clayUsualMost + 0.005 ? 2 : 0);
        double fragrance = 100 * (weigh[7] + weigh[8]) / oils;
        raise(fragrance > in.fragranceUsualMost * 1.005 && fragrance > in.fragranceUsualMost + 0.005 ? 2 : 0);
        raise(in.clayHoursAhead > 24 ? 2 : 0);
        raise(in.clayLiquid < in.clayLiquidLeast - 1e-9 ? 2 : 0);
        raise(in.clayHoursAhead < in.clayHoursLeast - 1e-9 ? 1 : 0);
        raise(1000 * ofAdditions(in.sugar, weigh) / oils < 5 ? 0 : 1);
    }

    private void cautionsOfWeighing() {
        int coarse = 0;
        for (int i = 0; i < LINES; i++) {
            boolean grave = i == ALKALI || i == 7 || i == 8;
            double needed = i == ALKALI ? 200 : grave ? 50 : 20;
            if (exact[i] / by[i] < needed) {
                coarse = Math.max(coarse, grave || weigh[i] == 0 ? 2 : 1);
            }
        }
        raise(coarse);
        double inPot = 0;
        for (int i = 0; i < OILS; i++) {
            inPot += apart[i] ? 0 : weigh[i];
            raise(apart[i] && weigh[i] > carries(by[i]) ? 2 : 0);
        }
        raise(inPot > carries(pot) ? 2 : 0);
        raise(weigh[WATER] + (alkaliApart ? 0 : weigh[ALKALI]) > carries(jug) ? 2 : 0);
        raise(alkaliApart && weigh[ALKALI] > carries(by[ALKALI]) ? 2 : 0);
        raise(weigh[CLAY] + weigh[CLAY_WATER] > carries(by[CLAY]) ? 2 : 0);
        for (int i = 7; i < WATER; i++) {
            raise(weigh[i] > carries(by[i]) ? 2 : 0);
        }
    }

    private double carries(double step) {
        return step == in.step[0] ? in.capacity[0] : in.capacity[1];
    }

    /** What was computed, by the names of {@link SheetCells}. */
    double get(String name) {
        int digits = name.length();
        while (Character.isDigit(name.charAt(digits - 1))) {
            digits--;
        }
        return digits == name.length()
                ? single(name)
                : several(name.substring(0, digits))[Integer.parseInt(name.substring(digits))];
    }

    private double[] several(String name) {
        return switch (name) {
            case "exact" -> exact;
            case "weigh" -> weigh;
            case "reading" -> reading;
            case "by" -> by;
            case "share" -> share;
            case "ofAll" -> ofAll;
            case "ofPortion" -> ofPortion;
            case "jugReading" -> jugReading;
            case "base" -> base;
            case "portionOils" -> portionOils;
            case "portionWater" -> portionWater;
            case "portion" -> portion;
            case "portionSuperfat" -> portionSuperfat;
            default -> throw new IllegalArgumentException("nothing is called " + name);
        };
    }

    private double single(String name) {
        return switch (name) {
            case "oilsAsked" -> oilsAsked;
            case "oils" -> oils;
            case "batch", "mould" -> batch;
            case "water" -> water;
            case "brought" -> brought;
            case "sheetSuperfat" -> superfat;
            case "batterDensity" -> batterDensity;
            case "pure" -> pure;
            case "concentration" -> concentration;
            case "pureStrength" -> pureStrength;
            case "weighedStrength" -> weighedStrength;
            case "waterLeft" -> waterLeft;
            case "saltPerWater" -> saltPerWater;
            case "held" -> held;
            case "notes" -> notes;
            case "cares" -> cares;
            case "stops" -> stops;
            default -> throw new IllegalArgumentException("nothing is called " + name);
        };
    }
}
