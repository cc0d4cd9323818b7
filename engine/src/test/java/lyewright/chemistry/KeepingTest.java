package lyewright.chemistry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lyewright.chemistry.OilPhaseAcids.Gap;
import lyewright.chemistry.OilPhaseAcids.Share;
import lyewright.formula.Purities;
import lyewright.formula.RandomFormulas;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.Stage;
import lyewright.material.MeasuredFat;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the acids mean for keeping, in words. */
class KeepingTest {

    private static Keeping of(Bench bench) {
        return Keeping.of(OilPhaseAcids.of(bench.lookedUp().orThrow())).orElseThrow();
    }

    private static Keeping alone(String key) {
        return of(Bench.aFormula().oil(key, "100").superfat("5"));
    }

    private static String said(double oleic, double linoleic, double linolenic) {
        OxidationIndices indices = new OxidationIndices(oleic, linoleic, linolenic, 0, 0, 0);
        return String.join(" ", new Keeping(indices, List.of(), List.of()).sentences());
    }

    /** Oxidisability of measured fats: tallow 3.88, poultry fat 20.80, canola 33.37, maize 59.31 (PMC4384276 Table 2). */
    @ParameterizedTest(name = "{0} % linoleic acid")
    @CsvSource({
        "3.8, 'under the lowest of 4 fats measured in one paper, tallow (3.9)'",
        "3.9, 'between tallow (3.9) and poultry fat (20.8)'",
        "20.7, 'between tallow (3.9) and poultry fat (20.8)'",
        "20.9, 'between poultry fat (20.8) and rapeseed (canola) oil (33.4)'",
        "59.3, 'between rapeseed (canola) oil (33.4) and maize oil (59.3)'",
        "59.4, 'not under the highest of 4 fats measured in one paper, maize oil (59.3)'"
    })
    void it_is_placed_among_fats_that_were_measured(double linoleic, String place) {
        assertThat(said(0, linoleic, 0)).contains("That " + (place.startsWith("between") ? "lies " : "is ") + place);
    }

    @Test
    void a_measured_fat_itself_is_never_placed_over_itself() {
        for (MeasuredFat fat : MeasuredFat.bundled()) {
            assertThat(said(fat.oleic(), fat.linoleic(), fat.linolenic()))
                    .as(fat.name())
                    .doesNotContain("and " + fat.name());
        }
    }

    @Test
    void each_sentence_says_that_an_index_is_no_judgement_and_what_is_usual() {
        String all = said(70, 12, 0.5);
        assertThat(all)
                .contains("0.5 and 12.0 % here): oxidisability 14.4.")
                .contains("peroxide values of 29 and 57 meq/kg")
                .contains("An index does not rank everything: rapeseed (canola) oil (33.4) then had more peroxide than"
                        + " maize oil (59.3), 239 against 151. [PMC4384276, Table 2]")
                .contains("superfat, goes first")
                .contains("[common practice; Auezova 2012, abstract]");
        assertThat(all).doesNotContainIgnoringCase("score", "grade", "good", "bad", "poor", "excellent", "limit");
    }

    @Test
    void both_linolenic_acids_count_alike() {
        Keeping keeping = alone("evening-primrose");
        OilPhaseAcids acids = OilPhaseAcids.of(Bench.aFormula()
                .oil("evening-primrose", "100")
                .superfat("5")
                .lookedUp()
                .orThrow());
        assertThat(acids.percent("C18:3n6")).isGreaterThan(5);
        assertThat(keeping.indices().linolenic())
                .isCloseTo(acids.percent("C18:3") + acids.percent("C18:3n6"), within(1e-12));
        assertThat(keeping.uncounted()).noneMatch(s -> s.acid().code().startsWith("C18:3"));
    }

    @Test
    void acids_of_four_double_bonds_count_in_the_peroxidisability() {
        Keeping keeping = alone("hempseed");
        assertThat(keeping.indices().tetraenoic()).isPositive();
        assertThat(keeping.indices().pentaenoic() + keeping.indices().hexaenoic())
                .isZero();
    }

    @Test
    void what_no_index_counts_is_said_where_it_is_much() {
        Keeping castor = alone("castor");
        assertThat(castor.uncounted()).first().extracting(s -> s.acid().code()).isEqualTo("C18:1-OH");
        assertThat(castor.sentences())
                .anyMatch(s -> s.startsWith("Not in the index, though they have double bonds: ricinoleic acid ("));
        Keeping olive = alone("olive-virgin");
        assertThat(olive.uncounted()).isNotEmpty();
        assertThat(olive.uncounted().stream().mapToDouble(Share::percent).sum()).isLessThan(5);
        assertThat(olive.sentences()).noneMatch(s -> s.startsWith("Not in the index"));
    }

    @Test
    void what_nobody_knows_is_said() {
        Keeping keeping =
                of(Bench.aFormula().oil("coconut", "90").oil("lanolin", "10").superfat("5"));
        String lanolin = Tables.bundled().oil("lanolin").orElseThrow().name();
        assertThat(keeping.unknown()).containsExactly(new Gap(lanolin, 10));
        assertThat(keeping.sentences()).anyMatch(s -> s.contains(lanolin + " (10.0 % of the oils)"));
    }

    @Test
    void sentences_of_any_formula_are_whole() {
        int said = 0;
        for (long seed = 0; seed < 500; seed++) {
            if (ResolvedFormula.of(RandomFormulas.of(seed), Tables.bundled(), Purities.ASSUMED)
                    instanceof Outcome.Ok<ResolvedFormula> formula) {
                for (Keeping keeping :
                        Keeping.of(OilPhaseAcids.of(formula.value())).stream().toList()) {
                    said++;
                    assertThat(keeping.sentences())
                            .as("case %d", seed)
                            .hasSizeBetween(3, 5)
                            .allMatch(s -> s.endsWith(".") || s.endsWith("]"))
                            .noneMatch(s -> s.contains("NaN") || s.contains("null"));
                }
            }
        }
        assertThat(said).isGreaterThan(350);
    }

    /** Nobody here knows lanolin's acids: over a fifth of it and the rest is placed beside nothing. */
    @Test
    void with_over_a_fifth_unknown_that_comes_first_and_nothing_is_placed() {
        String lanolin = Tables.bundled().oil("lanolin").orElseThrow().name();
        Keeping much =
                of(Bench.aFormula().oil("coconut", "79").oil("lanolin", "21").superfat("5"));
        assertThat(much.patchy()).isTrue();
        assertThat(much.sentences().get(0))
                .startsWith("So much is of acids that are not known here, 21.0 % of the oils' mass")
                .contains(lanolin + " (21.0 %)");
        for (String said : List.of(String.join(" ", much.sentences()), much.brief())) {
            assertThat(said).doesNotContain("That lies", "That is", "measured", "Not in it either");
        }
        Keeping little =
                of(Bench.aFormula().oil("coconut", "80").oil("lanolin", "20").superfat("5"));
        assertThat(little.patchy()).isFalse();
        assertThat(little.sentences())
                .anyMatch(s -> s.startsWith("That "))
                .anyMatch(s -> s.startsWith("Not in the index, since their acids are not known here: " + lanolin));
    }

    /** Coconut milk with 21.33 % fat (additives.csv): 30 % of the oils' mass bring 6.4 %; rosin is all acid. */
    @Test
    void fat_and_fatty_acid_of_additions_are_named_with_their_share() {
        Keeping keeping = of(Bench.aFormula()
                .oil("olive-virgin", "100")
                .superfat("5")
                .add("coconut-milk", "30", Stage.of(Stage.Kind.TRACE))
                .add("rosin", "5", Stage.of(Stage.Kind.OILS))
                .add("citric-acid-anhydrous", "1", Stage.of(Stage.Kind.LYE)));
        assertThat(keeping.sentences())
                .anyMatch(s -> s.contains("known here:")
                        && s.contains("fat of coconut milk (tinned) (6.4 % of the oils)")
                        && s.contains("rosin (colophony), powder (5.0 % of the oils)")
                        && !s.contains("citric"));
    }

    @Test
    void on_a_page_there_is_one_index_its_place_and_one_caveat() {
        assertThat(alone("olive-virgin").brief())
                .contains("oxidisability 14.5. That lies between", "An index does not rank everything")
                .endsWith("[PMC4384276, Table 2]")
                .doesNotContain("Not in the index", "goes first");
        assertThat(alone("castor").brief())
                .contains(
                        "That lies between",
                        "[PMC4384276, Table 2] Not in the index, though they have double bonds: ricinoleic acid (")
                .doesNotContain("does not rank");
    }
}
