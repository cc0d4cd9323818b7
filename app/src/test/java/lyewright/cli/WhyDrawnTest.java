package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What was drawn is drawn again, from nothing but the printed page: its formula, and how the numbers put in are spread. The
 * random numbers are others, so it agrees within what two drawings may differ by.
 */
class WhyDrawnTest {

    private static final int PARTS = 10;
    private static final int DRAWS_OF_A_PART = 4000;

    /** Deviations of a mean that hardly any drawing is off by: 1 in 15 000. */
    private static final double FAR = 4;

    /** What the sheet's own ends may still move by, points of superfat. */
    private static final double SETTLED = 0.02;

    private static final Pattern PATH = Pattern.compile("(?m)^    \"figure\" : \"([^\"]+)\"");

    @TempDir
    Path folder;

    private List<Path> formulas() {
        List<Path> formulas = new ArrayList<>(Recipes.examples());
        for (int i = 0; i < WhyRecipes.ODD.size(); i++) {
            formulas.add(Recipes.write(folder, "odd" + i + ".yaml", WhyRecipes.ODD.get(i)));
        }
        return formulas;
    }

    @Test
    void every_band_and_every_chance_comes_out_again() {
        int drawn = 0;
        for (Path formula : formulas()) {
            List<String> figures = PATH.matcher(why(formula, "--json").out())
                    .results()
                    .map(found -> found.group(1))
                    .filter(path -> path.matches(".*(low95Percent|high95Percent|freeAlkaliProbability)"))
                    .toList();
            assertThat(figures).as("%s", formula).contains("superfat.low95Percent", "superfat.freeAlkaliProbability");
            pages(formula, figures.toArray(String[]::new))
                    .forEach((path, page) -> assertComesOutAgain(formula + " " + path, page));
            drawn += figures.size();
        }
        assertThat(drawn).as("portions and certificates too").isGreaterThan(50);
    }

    private static void assertComesOutAgain(String as, WhyPage page) {
        String formula = page.steps("FORMULA").get(0).formula();
        if (formula.startsWith("chance(superfat")) {
            assertChance(as, draw(page), page);
        } else {
            assertThat(formula).as(as).matches("below\\(superfat, 0\\.(025|975)(, draws)?\\)");
            assertAgrees(as, draw(page), formula.contains("0.025") ? 0.025 : 0.975, page);
        }
    }

    private Run why(Path formula, String... figures) {
        List<String> args = new ArrayList<>(List.of("why", formula.toString(), "--total", "1500g"));
        args.addAll(List.of(figures));
        Run run = Run.in(folder, args.toArray(String[]::new));
        assertThat(run.exit()).as(formula + run.err()).isIn(0, 3);
        return run;
    }

    private Map<String, WhyPage> pages(Path formula, String... figures) {
        Map<String, WhyPage> pages = WhyPage.of(why(formula, figures).out());
        assertThat(pages).containsOnlyKeys(figures);
        return pages;
    }

    /** The superfat, drawn in parts, each in order. */
    private static double[][] draw(WhyPage page) {
        Random random = new Random(20261128);
        Map<String, Double> names = new HashMap<>();
        page.inputs().forEach((name, text) -> names.put(name, Double.parseDouble(text)));
        Map<String, double[]> spreads = page.spreads();
        List<WhyPage.Step> steps = page.steps("FORMULA");
        List<PocketCalculator.Formula> formulas = steps.stream()
                .skip(1)
                .map(step -> PocketCalculator.read(step.formula()))
                .toList();
        double[][] drawn = new double[PARTS][DRAWS_OF_A_PART];
        for (double[] part : drawn) {
            for (int d = 0; d < part.length; d++) {
                spreads.forEach((name, spread) -> names.put(name, draw(spread, random)));
                for (int i = steps.size() - 1; i > 0; i--) {
                    names.put(steps.get(i).name(), formulas.get(i - 1).of(names));
                }
                part[d] = WhyPage.in(names, "superfat");
            }
            Arrays.sort(part);
        }
        return drawn;
    }

    private static double draw(double[] spread, Random random) {
        double middle = (spread[0] + spread[1]) / 2;
        double half = (spread[1] - spread[0]) / 2;
        if (spread.length == 2) {
            return middle + half / 1.95996 * random.nextGaussian();
        }
        double even = (spread[3] - spread[2]) / 2;
        // two rectangular ones, as wide together as the whole and apart as what is even
        double one = (half + even) / 2;
        double other = (half - even) / 2;
        return middle + one * (2 * random.nextDouble() - 1) + other * (2 * random.nextDouble() - 1);
    }

    private static void assertAgrees(String as, double[][] drawn, double share, WhyPage page) {
        double[] ends = Arrays.stream(drawn)
                .mapToDouble(part -> part[(int) (share * part.length)])
                .toArray();
        double mean = Arrays.stream(ends).average().orElseThrow();
        double squares = Arrays.stream(ends).map(e -> (e - mean) * (e - mean)).sum();
        double off = SETTLED + FAR * Math.sqrt(squares / (PARTS - 1) / PARTS);
        assertThat(off).as(as + ": the check bites").isLessThan(0.3);
        assertThat(mean).as(as).isCloseTo(figure(page), within(off));
    }

    private static double figure(WhyPage page) {
        return Double.parseDouble(page.figure().split(" ", -1)[0]);
    }

    private static void assertChance(String as, double[][] drawn, WhyPage page) {
        long below = Arrays.stream(drawn)
                .flatMapToDouble(Arrays::stream)
                .filter(superfat -> superfat < 0)
                .count();
        double all = PARTS * DRAWS_OF_A_PART;
        double chance = below / all;
        double often = Double.parseDouble(page.inputs().getOrDefault("draws", "40000"));
        double off = FAR * Math.sqrt(Math.max(chance, 1 / all) * (1 / all + 1 / often)) + 1e-4;
        assertThat(chance).as(as).isCloseTo(figure(page), within(off));
    }
}
