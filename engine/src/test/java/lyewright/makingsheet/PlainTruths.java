package lyewright.makingsheet;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import lyewright.chemistry.BatchLine;

/**
 * What a batch's superfat may really be, by plain loops over the figures that the documentation gives, told here once more by
 * whoever asks: nothing of the engine's own model, distributions or random numbers. Only what is to be weighed on which
 * balance is read off the sheet.
 */
final class PlainTruths {

    private static final double MILLIGRAMS_KOH_PER_MOLE = 56_105;
    private static final double GRAMS_NAOH_PER_MOLE = 39.997;
    private static final double GRAMS_KOH_PER_MOLE = 56.105;

    private final MakingSheet sheet;
    private final Map<String, ToDoubleFunction<SplittableRandom>> values = new HashMap<>();
    private final Map<String, Double> acids = new HashMap<>();
    private final Map<String, Double> parts = new HashMap<>();
    private String portion = "";

    PlainTruths(MakingSheet sheet) {
        this.sheet = sheet;
    }

    /** A saponification value or, of naoh and koh, a purity in percent: anywhere between. */
    PlainTruths range(String key, double low, double high) {
        values.put(key, random -> low + (high - low) * random.nextDouble());
        return this;
    }

    /** One that a certificate gives, the half width of its 95 % interval behind it. */
    PlainTruths certificate(String key, double value, double plusMinus) {
        values.put(key, random -> value + plusMinus / 1.959964 * random.nextGaussian());
        return this;
    }

    /** A natural acid among the additions, mol of alkali that a gram takes: a fifth more or less of it, anywhere between. */
    PlainTruths acid(String key, double molesPerGram) {
        acids.put(key, molesPerGram);
        values.put("acid of " + key, random -> 0.8 + 0.4 * random.nextDouble());
        return this;
    }

    /** Of one portion instead of the whole batch: its share of all portions. */
    PlainTruths portion(String name, double share) {
        portion = name;
        parts.put(name, share);
        return this;
    }

    /** As many superfats as asked, in percent, lowest first. */
    double[] superfats(int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Weighing> weighings = Sheets.weighings(sheet);
        double[] superfats = new double[count];
        for (int i = 0; i < count; i++) {
            superfats[i] = superfat(random, weighings);
        }
        Arrays.sort(superfats);
        return superfats;
    }

    private double superfat(SplittableRandom random, List<Weighing> weighings) {
        Map<String, Double> drawn = new HashMap<>();
        values.forEach((key, value) -> drawn.put(key, value.applyAsDouble(random)));
        double oils = 0;
        double alkali = 0;
        for (Weighing weighing : weighings) {
            BatchLine line = weighing.line();
            double grams = share(weighing) * weighed(random, weighing);
            if (line.kind() == BatchLine.Kind.ALKALI) {
                double molar = line.key().equals("koh") ? GRAMS_KOH_PER_MOLE : GRAMS_NAOH_PER_MOLE;
                alkali += grams * valueOf(drawn, line.key()) / 100 / molar;
            } else if (drawn.containsKey(line.key())) {
                oils += grams * valueOf(drawn, line.key()) / MILLIGRAMS_KOH_PER_MOLE;
            } else if (acids.containsKey(line.key())) {
                alkali -= grams
                        * valueOf(drawn, "acid of " + line.key())
                        * Optional.ofNullable(acids.get(line.key())).orElseThrow();
            }
        }
        return 100 * (1 - alkali / oils);
    }

    private static double valueOf(Map<String, Double> drawn, String key) {
        return Optional.ofNullable(drawn.get(key))
                .orElseThrow(() -> new IllegalStateException("nothing said of " + key));
    }

    private double share(Weighing weighing) {
        if (portion.isEmpty() || weighing.portion().equals(portion)) {
            return 1;
        }
        return weighing.portion().isEmpty()
                ? Optional.ofNullable(parts.get(portion)).orElseThrow()
                : 0;
    }

    /** What is really in the pot when the balance shows the mass: what the balance errs, and what its step hides. */
    private static double weighed(SplittableRandom random, Weighing weighing) {
        double step = weighing.balance().stepGrams();
        double error = steps(weighing.reading().grams() / step) * step;
        return weighing.weigh().grams() + error * (2 * random.nextDouble() - 1) + step * (random.nextDouble() - 0.5);
    }

    /** Errors in service of a class III balance, in steps (OIML R 76-1, from memory: twice those of a first verification). */
    private static double steps(double load) {
        if (load <= 500) {
            return 1;
        }
        return load <= 2000 ? 2 : 3;
    }

    /** The share of values in an interval. */
    static double held(double[] values, double low, double high) {
        return (double) Arrays.stream(values).filter(v -> v >= low && v <= high).count() / values.length;
    }

    /** The value that a share of the sorted ones lies below. */
    static double quantile(double[] sorted, double share) {
        return sorted[(int) (share * sorted.length)];
    }
}
