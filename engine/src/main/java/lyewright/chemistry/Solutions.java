package lyewright.chemistry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import lyewright.material.Alkali;
import lyewright.material.Tables;
import lyewright.material.Tables.LyeDensityPoint;
import lyewright.material.Tables.SaltInLyePoint;
import lyewright.material.Tables.SolubilityPoint;

/**
 * Densities of lye, and what dissolves in water and in lye, by straight lines between published points. Sources: see the
 * points. Immutable.
 */
public final class Solutions {

    /** Fall of a lye's density with temperature where none is published (KOH): the slope of 32 % NaOH, g/ml per K. */
    private static final double USUAL_SLOPE = -0.00064;

    /** The three series of published densities: hot NaOH, weak NaOH, and both alkalis at 20 °C. */
    private static final String HOT = "hot";

    private static final String WEAK = "molality";
    private static final String AT_20 = "crc20";

    private static final Map<Tables, Solutions> BY_TABLES = new ConcurrentHashMap<>();

    private final DensityGrid strongSodium;
    private final DensityGrid weakSodium;
    private final double[][] potassiumAt20;
    private final Map<String, double[][]> solubilities = new TreeMap<>();
    private final double[][] saltInLye;

    private Solutions(Tables tables) {
        strongSodium = DensityGrid.of(tables.lyeDensities(), HOT);
        weakSodium = DensityGrid.of(tables.lyeDensities(), WEAK);
        potassiumAt20 = points(tables.lyeDensities().stream()
                .filter(p -> p.alkali() == Alkali.POTASSIUM && p.series().equals(AT_20))
                .map(p -> new double[] {p.percent(), p.gramsPerMillilitre()})
                .toList());
        tables.solubilities().stream()
                .map(SolubilityPoint::solute)
                .distinct()
                .forEach(solute -> solubilities.put(solute, solubilityOf(solute, tables)));
        saltInLye = points(tables.saltInLye().stream()
                .filter(p -> !p.outlier())
                .map(Solutions::perWater)
                .toList());
    }

    /**
     * The solutions of an edition of the tables.
     *
     * @param tables the edition
     * @return always the same for the same tables
     */
    public static Solutions of(Tables tables) {
        return BY_TABLES.computeIfAbsent(tables, Solutions::new);
    }

    private static double[][] solubilityOf(String solute, Tables tables) {
        return points(tables.solubilities().stream()
                .filter(p -> p.solute().equals(solute))
                .map(p -> new double[] {p.celsius(), p.massPercent()})
                .toList());
    }

    /** Sodium hydroxide and salt, both in grams for each 100 g of water. */
    private static double[] perWater(SaltInLyePoint p) {
        return new double[] {100 * p.naohPercent() / p.waterPercent(), 100 * p.naclPercent() / p.waterPercent()};
    }

    private static double[][] points(List<double[]> points) {
        List<double[]> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparingDouble(p -> p[0]));
        return sorted.toArray(double[][]::new);
    }

    /**
     * Density of a lye.
     *
     * @param alkali which alkali
     * @param percent pure alkali, percent by mass, 0 to 100; over 50 % the last published step is carried on
     * @param celsius temperature, 0 to 100; carried on outside the published temperatures
     * @return g/ml
     */
    public double lyeDensity(Alkali alkali, double percent, double celsius) {
        if (alkali == Alkali.POTASSIUM) {
            return along(potassiumAt20, percent) + USUAL_SLOPE * (celsius - 20);
        }
        if (percent >= strongSodium.least()) {
            return strongSodium.at(percent, celsius);
        }
        if (percent <= weakSodium.most()) {
            return weakSodium.at(percent, celsius);
        }
        double low = weakSodium.at(weakSodium.most(), celsius);
        double high = strongSodium.at(strongSodium.least(), celsius);
        double between = (percent - weakSodium.most()) / (strongSodium.least() - weakSodium.most());
        return low + between * (high - low);
    }

    /**
     * How much dissolves in water.
     *
     * @param solute chemical formula, such as {@code NaOH}, {@code KOH}, {@code NaCl}
     * @param celsius temperature, 0 to 100
     * @return percent by mass of the saturated solution
     * @throws IllegalArgumentException for a solute the tables lack: our fault
     */
    public double solubilityPercent(String solute, double celsius) {
        double[][] points = solubilities.get(solute);
        if (points == null) {
            throw new IllegalArgumentException("no solubility of " + solute);
        }
        return along(points, Math.max(points[0][0], Math.min(points[points.length - 1][0], celsius)));
    }

    /**
     * How much common salt hot lye holds (measured at 90 °C and in sodium hydroxide only; potash is taken gram for gram).
     *
     * @param alkaliPerWater grams of sodium hydroxide for each gram of water
     * @return grams of salt for each gram of water
     */
    public double saltPerWater(double alkaliPerWater) {
        double clamped = Math.min(100 * alkaliPerWater, saltInLye[saltInLye.length - 1][0]);
        return along(saltInLye, clamped) / 100;
    }

    /** On the straight line between the two points around x, or carried on beyond the ends. */
    static double along(double[][] points, double x) {
        int i = 1;
        while (i < points.length - 1 && points[i][0] < x) {
            i++;
        }
        double[] a = points[i - 1];
        double[] b = points[i];
        return a[1] + (b[1] - a[1]) * (x - a[0]) / (b[0] - a[0]);
    }

    /** A published table of densities by strength and temperature, straight lines between. */
    private static final class DensityGrid {

        private final double[] percents;
        private final double[] celsius;
        private final double[][] densities;

        private DensityGrid(double[] percents, double[] celsius, double[][] densities) {
            this.percents = percents;
            this.celsius = celsius;
            this.densities = densities;
        }

        static DensityGrid of(List<LyeDensityPoint> all, String series) {
            List<LyeDensityPoint> points = all.stream()
                    .filter(p -> p.alkali() == Alkali.SODIUM && p.series().equals(series))
                    .toList();
            double[] percents = points.stream()
                    .mapToDouble(LyeDensityPoint::percent)
                    .distinct()
                    .sorted()
                    .toArray();
            double[] celsius = points.stream()
                    .mapToDouble(LyeDensityPoint::celsius)
                    .distinct()
                    .sorted()
                    .toArray();
            double[][] densities = new double[percents.length][celsius.length];
            for (LyeDensityPoint p : points) {
                densities[place(percents, p.percent())][place(celsius, p.celsius())] = p.gramsPerMillilitre();
            }
            return new DensityGrid(percents, celsius, densities);
        }

        private static int place(double[] sorted, double value) {
            return Arrays.binarySearch(sorted, value);
        }

        double least() {
            return percents[0];
        }

        double most() {
            return percents[percents.length - 1];
        }

        double at(double percent, double temperature) {
            int i = below(percents, percent);
            int j = below(celsius, temperature);
            double across = (percent - percents[i]) / (percents[i + 1] - percents[i]);
            double along = (temperature - celsius[j]) / (celsius[j + 1] - celsius[j]);
            double low = densities[i][j] + along * (densities[i][j + 1] - densities[i][j]);
            double high = densities[i + 1][j] + along * (densities[i + 1][j + 1] - densities[i + 1][j]);
            return low + across * (high - low);
        }

        private static int below(double[] sorted, double value) {
            int i = 0;
            while (i < sorted.length - 2 && sorted[i + 1] <= value) {
                i++;
            }
            return i;
        }
    }
}
