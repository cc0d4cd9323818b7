package lyewright.benchmarks;

import java.util.Arrays;
import java.util.List;
import lyewright.formula.Disperse;
import lyewright.formula.Formula;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.AdditionPart;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.makingsheet.Balance;
import lyewright.makingsheet.Equipment;
import lyewright.material.Additive;
import lyewright.material.Alkali;
import lyewright.material.Oil;
import lyewright.material.ReckonedValue;
import lyewright.material.Tables;
import lyewright.material.Tables.LyeDensityPoint;
import lyewright.material.Tables.SaltInLyePoint;
import lyewright.material.Tables.SolubilityPoint;

/**
 * What goes into the calculation, as bare numbers: what a maker would type into a spreadsheet. Arrays over oils have five
 * places, over additions three: clay, fragrance, salt.
 */
final class Figures {

    static final int OILS = 5;
    static final int ADDITIONS = 3;

    /** Milligrams of potassium hydroxide in a mole. */
    static final double MILLIGRAMS_KOH_PER_MOLE = 56_105;

    /** Molar mass of sodium hydroxide, g/mol. */
    static final double NAOH = Alkali.SODIUM.molarMass();

    /** Density of water, and of what sodium hydroxide's purity leaves out, g/ml: those of the engine. */
    static final double WATER_DENSITY = 0.9982;

    static final double REST_DENSITY = 2.17;

    /** Temperature at which oils and lye are blended, and at which a jug's lye must stay dissolved, °C. */
    static final double BLENDED_AT = 38;

    static final double COOLED_TO = 20;

    final double superfat;
    final double lyeStrength;
    final double purity = Alkali.SODIUM.assumedPercent() / 100;
    final double clayGramsPerKilogram = 12;
    final double clayLiquid;
    final double clayHoursAhead;
    final double fragrancePercent = 2.2;
    final double saltPercent = 50;
    final double plainPercent = 60;

    /** Percent of the oils; the last takes the rest. */
    final double[] oilPercent = {50, 20, 15, 7};

    final double[] saponificationValue = new double[OILS];
    final double[] oilDensity = new double[OILS];
    final double[] oilDensityAt = new double[OILS];
    final double[] oilDensitySlope = new double[OILS];
    final double[] lathers = new double[OILS];
    final double[] wide = new double[OILS];
    final double[] remembered = new double[OILS];

    final double[] density = new double[ADDITIONS];
    final double[] fat = new double[ADDITIONS];
    final double[] fatSaponificationValue = new double[ADDITIONS];
    final double[] acid = new double[ADDITIONS];
    final double[] water = new double[ADDITIONS];
    final double[] salt = new double[ADDITIONS];
    final double[] sugar = new double[ADDITIONS];

    final double clayUsualMost;
    final double fragranceUsualMost;
    final double clayLiquidLeast;
    final double clayHoursLeast;
    final double purityLeast = Alkali.SODIUM.assumedPurity().low() - 8;
    final double superfatLow;
    final double superfatHigh;
    final double saltBarSuperfatLow;
    final double saltBarSuperfatHigh;
    final double latherFatLeast;

    final double[] capacity = new double[2];
    final double[] step = new double[2];

    /** Strengths, temperatures, and densities by strength and temperature. */
    final double[] lyePercents;

    final double[] lyeCelsius;
    final double[][] lyeDensities;

    /** Temperatures, and percent of the saturated solution. */
    final double[][] solubility;

    /** Alkali in 100 g of water, and the salt that holds. */
    final double[][] saltInLye;

    Figures(ResolvedFormula resolved) {
        Formula formula = resolved.formula();
        Tables tables = resolved.tables();
        superfat = formula.superfat().orElseThrow().fraction();
        lyeStrength = 0.33;
        for (int i = 0; i < OILS; i++) {
            readOil(i, resolved.oils().get(i));
        }
        for (int i = 0; i < ADDITIONS; i++) {
            readAddition(i, resolved.additions().get(i));
        }
        Disperse disperse = formula.additions().get(0).disperse().orElseThrow();
        clayLiquid = disperse.ratio();
        clayHoursAhead = disperse.ahead().orElseThrow().hours();
        Additive.Dispersing usual =
                resolved.additions().get(0).material().dispersing().orElseThrow();
        clayUsualMost = usualMost(resolved.additions().get(0));
        fragranceUsualMost = usualMost(resolved.additions().get(1));
        clayLiquidLeast = usual.lowRatio();
        clayHoursLeast = usual.hours();
        superfatLow = tables.practice("superfat-bar").low();
        superfatHigh = tables.practice("superfat-bar").high();
        saltBarSuperfatLow = tables.practice("superfat-salt-bar").low();
        saltBarSuperfatHigh = tables.practice("superfat-salt-bar").high();
        latherFatLeast = tables.practice("lather-fat-from-salt-50").low();
        for (int i = 0; i < step.length; i++) {
            Balance balance = Equipment.USUAL.balances().get(i);
            capacity[i] = balance.capacity().grams();
            step[i] = balance.step().grams();
        }
        List<LyeDensityPoint> hot = tables.lyeDensities().stream()
                .filter(p -> p.series().equals("hot"))
                .toList();
        lyePercents =
                hot.stream().mapToDouble(p -> p.percent()).distinct().sorted().toArray();
        lyeCelsius =
                hot.stream().mapToDouble(p -> p.celsius()).distinct().sorted().toArray();
        lyeDensities = new double[lyePercents.length][lyeCelsius.length];
        for (LyeDensityPoint p : hot) {
            int row = Arrays.binarySearch(lyePercents, p.percent());
            int column = Arrays.binarySearch(lyeCelsius, p.celsius());
            lyeDensities[row][column] = p.gramsPerMillilitre();
        }
        solubility = columns(tables.solubilities().stream()
                .filter(p -> p.solute().equals("NaOH"))
                .map(Figures::point)
                .toList());
        saltInLye = columns(tables.saltInLye().stream()
                .filter(p -> !p.outlier())
                .map(Figures::point)
                .toList());
    }

    private void readOil(int i, OilPart part) {
        Oil oil = part.parts().get(0).oil();
        saponificationValue[i] = part.saponificationValue();
        oilDensity[i] = oil.density().gramsPerMillilitre();
        oilDensityAt[i] = oil.density().atCelsius();
        oilDensitySlope[i] = oil.density().slopePerKelvin();
        lathers[i] = oil.lathersInSalt() ? 1 : 0;
        boolean fromTable = oil.reckoned().basis() != ReckonedValue.Basis.CERTIFICATE;
        wide[i] = fromTable && oil.reckoned().wide() ? 1 : 0;
        remembered[i] = fromTable && oil.reckoned().remembered() ? 1 : 0;
    }

    private void readAddition(int i, AdditionPart addition) {
        Additive material = addition.material();
        density[i] = material.gramsPerMillilitre();
        acid[i] = material.makeup().acidMolesPerGram();
        fat[i] = material.makeup().fat();
        fatSaponificationValue[i] = material.makeup().fatSaponificationValue();
        water[i] = material.makeup().water();
        salt[i] = material.makeup().salt();
        sugar[i] = material.makeup().sugar();
    }

    private static double usualMost(AdditionPart addition) {
        return addition.material().usualDose().orElseThrow().high();
    }

    private static double[] point(SolubilityPoint p) {
        return new double[] {p.celsius(), p.massPercent()};
    }

    private static double[] point(SaltInLyePoint p) {
        return new double[] {100 * p.naohPercent() / p.waterPercent(), 100 * p.naclPercent() / p.waterPercent()};
    }

    /** The points in order, as one array of what is known and one of what is looked up. */
    private static double[][] columns(List<double[]> points) {
        List<double[]> sorted =
                points.stream().sorted((a, b) -> Double.compare(a[0], b[0])).toList();
        return new double[][] {
            sorted.stream().mapToDouble(p -> p[0]).toArray(),
            sorted.stream().mapToDouble(p -> p[1]).toArray()
        };
    }
}
