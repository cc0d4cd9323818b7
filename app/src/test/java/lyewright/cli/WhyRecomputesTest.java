package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every number of a sheet has a reason, and the printed formula gives it again from the printed inputs. */
class WhyRecomputesTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** Half a unit of the sixth decimal, and what two ways of adding doubles may differ by. */
    private static final double LAST_DIGIT = 0.5e-6 + 1e-8;

    @TempDir
    Path folder;

    static Stream<String> ways() {
        return Stream.of(
                "--total 1500g",
                "--total 3.3lb --balances counter:25lb:0.05oz",
                "--oils 1kg --purity naoh=98.5,koh=88±1 --vessels lye_jug:312.5g,oil_pot:3.1lb",
                "--bars 10x110g --cured --hold-back 2% --balances shop:30kg:5g,kitchen:5kg:1g,fine:200g:0.01g:II",
                "--box 300x80x65mm --cut 25mm --blade 1mm --ends 5mm --trim 3mm",
                "--box 300x240x30mm --cut 60x80mm --hold-back 1.5%",
                "--tube 300x76mm --cut 25mm",
                "--cavities 12x95ml --purity naoh=97_to_99",
                "--water-fill 1450g",
                "--usual 1520g=PLAIN");
    }

    private List<Path> formulas() {
        List<Path> formulas = new ArrayList<>(Recipes.examples());
        formulas.add(Recipes.write(folder, "salt.yaml", Recipes.SALT_BAR));
        formulas.add(Recipes.write(folder, "notebook.yaml", Recipes.NOTEBOOK));
        for (int i = 0; i < WhyRecipes.ODD.size(); i++) {
            formulas.add(Recipes.write(folder, "odd" + i + ".yaml", WhyRecipes.ODD.get(i)));
        }
        return formulas;
    }

    @ParameterizedTest
    @MethodSource("ways")
    void every_number_of_a_sheet_is_what_its_printed_formula_gives(String way) throws IOException {
        Path plain = Recipes.write(folder, "plain.yaml", Recipes.PLAIN);
        int sheets = 0;
        for (Path formula : formulas()) {
            List<String> words = new ArrayList<>(List.of(formula.toString()));
            for (String word : way.split(" ", -1)) {
                words.add(word.replace("PLAIN", plain.toString()).replace('_', ' '));
            }
            Run sheet = run("sheet", words, List.of("--json"));
            assertThat(sheet.exit()).as(formula + " " + sheet.err()).isIn(0, 3);
            Map<String, BigDecimal> figures = new LinkedHashMap<>();
            gather("", JSON.readTree(sheet.out()), figures);
            Run why = run("why", words, List.copyOf(figures.keySet()));
            assertThat(why.exit()).as(formula + " " + why.err()).isEqualTo(sheet.exit());
            assertThat(why.lines()).allMatch(line -> line.length() <= Page.WIDTH / 2 || Widths.of(line) <= Page.WIDTH);
            Map<String, WhyPage> pages = WhyPage.of(why.out());
            assertThat(pages.keySet()).as("%s", formula).containsExactlyElementsOf(figures.keySet());
            figures.forEach((path, figure) -> recompute(formula + " " + path, path, WhyPage.in(pages, path), figure));
            sheets++;
        }
        assertThat(sheets).isGreaterThanOrEqualTo(14);
    }

    private Run run(String command, List<String> words, List<String> more) {
        List<String> args = new ArrayList<>(List.of(command));
        args.addAll(words);
        args.addAll(more);
        return Run.in(folder, args.toArray(String[]::new));
    }

    /** Every number of the sheet, by its path. */
    private static void gather(String path, JsonNode node, Map<String, BigDecimal> figures) {
        if (node.isNumber()) {
            figures.put(path, node.decimalValue());
        } else if (node.isObject()) {
            node.properties()
                    .forEach(field -> gather(
                            path.isEmpty() ? field.getKey() : path + "." + field.getKey(), field.getValue(), figures));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                gather(path + "[" + i + "]", node.get(i), figures);
            }
        }
    }

    private static void recompute(String as, String path, WhyPage page, BigDecimal figure) {
        List<WhyPage.Step> steps = page.steps("FORMULA");
        Map<String, Double> reckoned = page.reckoned();
        String name = path.substring(path.lastIndexOf('.') + 1);
        assertThat(steps.get(0).name()).as(as).isEqualTo(name);
        assertThat(new BigDecimal(page.figure().split(" ", -1)[0])).as(as).isEqualByComparingTo(figure);
        if (!page.isDrawn()) {
            assertThat(WhyPage.in(reckoned, name)).as(as).isCloseTo(figure.doubleValue(), within(LAST_DIGIT));
        }
        for (WhyPage.Step step : steps.subList(1, steps.size())) {
            double value = WhyPage.in(reckoned, step.name());
            assertThat(value).as(as + " " + step).isCloseTo(printed(step), within(halfUnit(step.value())));
        }
        List<WhyPage.Step> sides = page.steps("AND SO IT FITS");
        if (!sides.isEmpty()) {
            double left = WhyPage.in(reckoned, sides.get(0).name());
            double right = WhyPage.in(reckoned, sides.get(1).name());
            assertThat(left).as(as + " " + sides).isCloseTo(right, within(1e-8 * right));
        }
    }

    private static double printed(WhyPage.Step step) {
        return Double.parseDouble(step.value());
    }

    /** Half a unit of the last digit that a step may have: the sixth decimal, or the sixth digit of what is under one. */
    private static double halfUnit(String value) {
        double size = Math.abs(Double.parseDouble(value));
        double unit = size >= 1 || size == 0 ? 1e-6 : Math.pow(10, Math.floor(Math.log10(size)) - 5);
        return 0.5 * unit + 1e-8 * Math.max(unit * 1e6, size);
    }
}
