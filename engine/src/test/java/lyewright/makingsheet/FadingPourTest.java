package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.makingsheet.FadingPour.Layer;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;

class FadingPourTest {

    @Test
    void the_designs_pour_of_750_g_with_250_g_in_five_layers() {
        List<Layer> layers = FadingPour.of(750, 250, 5).orThrow();

        // a layer is 1000 / 5 = 200 g, and 250 / 4 = 62.5 g of plain go in after each of the first four.
        // jug 750 → 612.5 → 475 → 337.5 → 200 g. Colour: 750/750; (750 − 200)/612.5 = 550/612.5; × (1 − 200/612.5) ×
        // 612.5
        // / 475; and so on.
        assertThat(layers).hasSize(5);
        assertThat(layers).allSatisfy(layer -> assertThat(layer.pourGrams()).isEqualTo(200));
        assertThat(layers).extracting(Layer::jugBeforeGrams).containsExactly(750.0, 612.5, 475.0, 337.5, 200.0);
        assertThat(layers).extracting(Layer::addPlainGrams).containsExactly(62.5, 62.5, 62.5, 62.5, 0.0);
        assertThat(layers)
                .extracting(layer -> Math.round(layer.colourPercent() * 10) / 10.0)
                .containsExactly(100.0, 89.8, 78.0, 63.5, 43.7);
    }

    @Test
    void two_layers_are_pure_colour_and_then_all_the_rest() {
        List<Layer> layers = FadingPour.of(600, 400, 2).orThrow();

        // pour 500, add 400 to the 100 left: 100 / 500 = 20 % colour
        assertThat(layers).containsExactly(new Layer(1, 500, 100, 400, 600), new Layer(2, 500, 20, 0, 500));
    }

    @Test
    void a_jug_that_holds_just_one_layer_is_enough() {
        // 250 g of 1000 g in four: the jug is emptied by the first layer and refilled with plain
        List<Layer> layers = FadingPour.of(250, 750, 4).orThrow();

        assertThat(layers).extracting(Layer::colourPercent).containsExactly(100.0, 0.0, 0.0, 0.0);
        assertThat(layers).extracting(Layer::jugBeforeGrams).containsExactly(250.0, 250.0, 250.0, 250.0);
    }

    @Test
    void a_jug_that_would_run_dry_is_refused_with_layers_enough() {
        // a layer of 1000 / 3 = 333 g is more than 300 g; 1 + 700 / 300 = 3.33, so four
        Outcome<List<Layer>> refused = FadingPour.of(300, 700, 3);

        assertThat(refused.problems()).hasSize(1);
        assertThat(refused.problems().get(0).what()).contains("runs dry");
        assertThat(refused.problems().get(0).remedy()).contains("at least 4 layers");
        assertThat(FadingPour.of(300, 700, 4).problems()).isEmpty();
    }

    @Test
    void colour_and_mass_are_all_used_up_and_the_jug_never_runs_dry() {
        Random random = new Random(750250);
        for (int i = 0; i < 5000; i++) {
            double coloured = 1 + random.nextInt(300_000) / 100.0;
            double plain = random.nextInt(300_000) / 100.0;
            int layers = 2 + random.nextInt(12);
            Outcome<List<Layer>> outcome = FadingPour.of(coloured, plain, layers);
            if (outcome instanceof Outcome.Ok<List<Layer>> ok) {
                assertUsedUp(i, coloured, plain, ok.value());
            } else {
                assertThat(coloured * layers).as("case %d", i).isLessThan(coloured + plain);
                assertEnough(
                        i, coloured, plain, layers, outcome.problems().get(0).remedy());
            }
        }
    }

    private static void assertUsedUp(int i, double coloured, double plain, List<Layer> layers) {
        double poured = 0;
        double colour = 0;
        double added = 0;
        double percentBefore = 100;
        for (Layer layer : layers) {
            poured += layer.pourGrams();
            colour += layer.pourGrams() * layer.colourPercent() / 100;
            added += layer.addPlainGrams();
            assertThat(layer.jugBeforeGrams())
                    .as("case %d, layer %d", i, layer.layer())
                    .isGreaterThanOrEqualTo(layer.pourGrams() * (1 - 1e-9));
            assertThat(layer.colourPercent())
                    .as("case %d, layer %d", i, layer.layer())
                    .isBetween(-1e-9, percentBefore + 1e-9);
            percentBefore = layer.colourPercent();
        }
        double size = coloured + plain;
        assertThat(poured).as("case %d", i).isEqualTo(size, within(1e-9 * size));
        assertThat(colour).as("case %d", i).isEqualTo(coloured, within(1e-9 * size));
        assertThat(added).as("case %d", i).isEqualTo(plain, within(1e-9 * size));
    }

    /** As many layers as the refusal names work, and one fewer do not. */
    private static void assertEnough(int i, double coloured, double plain, int layers, String remedy) {
        Matcher number = Pattern.compile("at least (\\d+) layers").matcher(remedy);
        assertThat(number.find()).as("case %d: %s", i, remedy).isTrue();
        int enough = Integer.parseInt(number.group(1));
        assertThat(enough).as("case %d", i).isGreaterThan(layers);
        assertThat(FadingPour.of(coloured, plain, enough).problems())
                .as("case %d", i)
                .isEmpty();
        assertThat(FadingPour.of(coloured, plain, enough - 1).problems())
                .as("case %d", i)
                .isNotEmpty();
    }
}
