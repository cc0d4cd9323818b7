package lyewright.makingsheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import lyewright.formula.AcidRule;
import lyewright.formula.AlkaliChoice;
import lyewright.material.Alkali;

/**
 * Formulas of every shape, of a seed: percent and masses, each way of saying alkali and water, additions of each kind at each
 * stage, portions. Most make a sheet; some ask for more water or oil than there is and are refused.
 */
final class SomeFormulas {

    private static final String[] OILS = {
        "coconut",
        "olive-virgin",
        "castor",
        "palm",
        "shea-butter",
        "cocoa-butter",
        "sunflower-high-oleic",
        "beeswax",
        "stearic-acid-50",
        "house-oil"
    };

    private static final List<AlkaliChoice.Basis> BASES = List.of(AlkaliChoice.Basis.values());

    private final Random random;
    private boolean masses;
    private boolean fixed;
    private double writtenOils;
    private List<String> portions = List.of();

    private SomeFormulas(long seed) {
        this.random = new Random(seed);
    }

    /** One formula; the same for the same seed. */
    static AFormula of(long seed) {
        return new SomeFormulas(seed).formula(true);
    }

    /** One formula in which nothing is fixed, so that all of it scales. */
    static AFormula withoutFixedAmounts(long seed) {
        return new SomeFormulas(seed).formula(false);
    }

    private AFormula formula(boolean fixedToo) {
        fixed = fixedToo;
        AFormula formula = oils();
        alkali(formula);
        water(formula);
        if (random.nextInt(3) == 0) {
            formula.forSale();
        }
        if (random.nextInt(3) == 0) {
            formula.acids(random.nextBoolean() ? AcidRule.COMPENSATE : AcidRule.AS_WRITTEN);
        }
        if (random.nextInt(4) == 0) {
            formula.curedWater(1 + random.nextInt(20) + " %");
        }
        if (random.nextInt(4) == 0) {
            formula.blendedAt(25 + random.nextInt(40) + " C", 25 + random.nextInt(40) + " C");
        }
        if (random.nextBoolean()) {
            formula.purities(random.nextBoolean() ? "naoh=97.5,koh=89" : "naoh=100,koh=86.5");
        }
        portions(formula);
        int additions = random.nextInt(6);
        for (int i = 0; i < additions; i++) {
            addition(formula);
        }
        return formula;
    }

    private AFormula oils() {
        masses = random.nextInt(3) == 0;
        int count = 1 + random.nextInt(5);
        List<String> chosen = new ArrayList<>();
        chosen.add(random.nextBoolean() ? "coconut" : "house-oil");
        while (chosen.size() < count) {
            String oil = OILS[random.nextInt(OILS.length)];
            if (!chosen.contains(oil)) {
                chosen.add(oil);
            }
        }
        String[] keysAndAmounts = new String[2 * count];
        int left = 1000;
        for (int i = 0; i < count; i++) {
            int tenths = i == count - 1 ? left : Math.max(1, (int) (left * (0.3 + 0.5 * random.nextDouble())));
            left -= tenths;
            keysAndAmounts[2 * i] = chosen.get(i);
            String figure = decimal(tenths / 10.0);
            keysAndAmounts[2 * i + 1] =
                    masses ? figure + " g" : i == count - 1 && random.nextBoolean() ? "rest" : figure + " %";
        }
        writtenOils = 100;
        return AFormula.ofOils(keysAndAmounts).own(HouseMaterials.oilOfFive("house-oil"));
    }

    private void alkali(AFormula formula) {
        int kind = random.nextInt(masses ? 8 : 6);
        switch (kind) {
            case 0, 1 -> {}
            case 2 -> formula.potassium();
            case 3, 4 -> {
                int sodium = 1 + random.nextInt(99);
                formula.mixed(sodium + " %", 100 - sodium + " %", BASES.get(random.nextInt(BASES.size())));
            }
            case 5 ->
                formula.own(HouseMaterials.stockLye("stock", "50 %", Alkali.SODIUM))
                        .stockLye("stock");
            case 6 -> formula.naohAsWeighed(decimal(writtenOils * (0.10 + 0.035 * random.nextDouble())) + " g");
            default ->
                formula.own(HouseMaterials.stockLye("stock", "45 %", Alkali.POTASSIUM))
                        .stockLye("stock", decimal(writtenOils * (0.3 + 0.1 * random.nextDouble())) + " g");
        }
        if (kind < 6) {
            formula.superfat(decimal(random.nextInt(250) / 10.0) + " %");
        }
    }

    private void water(AFormula formula) {
        switch (random.nextInt(4)) {
            case 0 -> formula.water(22 + random.nextInt(14) + " % lye" + (random.nextBoolean() ? " as weighed" : ""));
            case 1 -> formula.water(30 + random.nextInt(25) + " % of oils");
            case 2 -> formula.water(decimal(2 + random.nextInt(15) / 10.0) + " to 1");
            default -> formula.water(masses ? 30 + random.nextInt(25) + " g" : 30 + random.nextInt(25) + " % of oils");
        }
    }

    private void portions(AFormula formula) {
        switch (random.nextInt(4)) {
            case 0 -> {
                portions = List.of("plain", "kelp");
                formula.portions("plain", 20 + random.nextInt(60) + " %", "kelp", "rest");
            }
            case 1 -> {
                portions = List.of("plain", "kelp", "sand");
                formula.portions("plain", "50 %", "kelp", "30 %", "sand", "20 %");
            }
            default -> portions = List.of();
        }
    }

    private void addition(AFormula formula) {
        switch (random.nextInt(13)) {
            case 0 -> wet(formula, "green-clay", "water", 1 + random.nextInt(3));
            case 1 -> wet(formula, "activated-charcoal", "oil", 3 + random.nextInt(3));
            case 2 -> wet(formula, "mica-white", "glycerin", 2 + random.nextInt(3));
            case 3 ->
                formula.add("lavender-oil", decimal((1 + random.nextInt(40)) / 10.0) + " % of oils", batterStage());
            case 4 -> formula.add("sea-salt", 1 + random.nextInt(120) + " % of oils", batterStage());
            case 5 -> formula.add("sugar", 1 + random.nextInt(40) + " g per kg oils", "lye");
            case 6 -> formula.add("citric-acid-anhydrous", 1 + random.nextInt(30) + " g per kg oils", "lye");
            case 7 ->
                formula.add("goat-milk", 5 + random.nextInt(20) + " % of oils", "lye")
                        .replacingWater();
            case 8 -> formula.add("vinegar-5", 1 + random.nextInt(10) + " % of oils", "lye");
            case 9 -> formula.add("rose-petals", 1 + random.nextInt(20) + " g per kg oils", "top");
            case 10 -> formula.add("kaolin", 1 + random.nextInt(5) + " % of batch", batterStage());
            case 11 -> formula.add("sodium-bicarbonate", 1 + random.nextInt(10) + " g per kg oils", "trace");
            default -> ownSize(formula);
        }
    }

    private void ownSize(AFormula formula) {
        String size = 1 + random.nextInt(9) + (random.nextBoolean() ? " g" : " ml");
        if (fixed) {
            formula.add("honey", size + (random.nextBoolean() ? " fixed" : ""), batterStage());
        } else {
            formula.add("honey", masses ? size : "8 g per kg oils", batterStage());
        }
    }

    private void wet(AFormula formula, String key, String in, int ratio) {
        String stage = batterStage();
        String base = stage.startsWith("portion") && random.nextBoolean() ? "portion oils" : "oils";
        formula.add(key, 1 + random.nextInt(20) + " g per kg " + base, stage).dispersed(in, ratio + " to 1");
    }

    private String batterStage() {
        int which = random.nextInt(4);
        if (which == 0) {
            return "trace";
        }
        if (which == 1 || portions.isEmpty()) {
            return "every portion";
        }
        return "portion " + portions.get(random.nextInt(portions.size()));
    }

    private static String decimal(double value) {
        return new BigDecimal(String.format(Locale.ROOT, "%.2f", value)).toPlainString();
    }
}
