package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.fill.Fill;
import lyewright.formula.ResolvedFormula.AdditionPart;
import lyewright.formula.Stage;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;

/** A percent that a caution tells of a line is the one that the list tells of it. */
class CautionPercentTest {

    private static final int CASES = 400;

    /** Steps so coarse that what is weighed is another percent than what is meant. */
    private static final Equipment COARSE =
            new Equipment(List.of(Balance.parse("bench:5kg:5g").orThrow()), Map.of());

    @Test
    void a_dose_is_told_as_the_list_tells_it() {
        int told = 0;
        for (long seed = 0; seed < CASES; seed++) {
            for (Equipment equipment : List.of(Equipment.USUAL, COARSE)) {
                if (SomeFormulas.of(seed).trySheet(Fill.mouldMass(777), equipment)
                        instanceof Outcome.Ok<MakingSheet> ok) {
                    for (Caution caution : ok.value().cautions()) {
                        if (caution.id().equals("over-usual-dose")) {
                            told++;
                            assertThat(asListed(ok.value(), caution.figures().get(0)))
                                    .as("case %d: %s", seed, caution.text())
                                    .contains(caution.figures().get(1).toString());
                        }
                    }
                }
            }
        }
        assertThat(told).as("doses told").isGreaterThan(20);
    }

    @Test
    void all_fragrance_is_told_as_the_lines_of_the_list_add_up() {
        AFormula formula = AFormula.ofOils("olive-virgin", "100 %")
                .superfat("5 %")
                .add("lavender-oil", "1.73 % of oils", "trace")
                .add("rosemary-oil", "1.73 % of oils", "trace");
        MakingSheet sheet = formula.trySheet(Fill.mouldMass(777), COARSE).orThrow();
        double listed = Sheets.weighings(sheet).stream()
                .filter(w -> w.line().kind() == Kind.ADDITION)
                .mapToDouble(Weighing::percentOfOils)
                .sum();

        assertThat(listed).isBetween(3.459, 3.461);
        assertThat(sheet.cautions())
                .filteredOn(caution -> caution.id().equals("fragrance-much"))
                .singleElement()
                .satisfies(caution -> assertThat(caution.text()).contains(" 3.5 % "));
    }

    /** Of each line of that name, what the list tells; of a portion's, as much of the portion's own oils. */
    private static List<String> asListed(MakingSheet sheet, Object name) {
        return sheet.formula().additions().stream()
                .filter(addition -> addition.nameInSentence().equals(name))
                .map(addition -> hundredths(listed(sheet, addition) / share(sheet, addition)))
                .toList();
    }

    private static double listed(MakingSheet sheet, AdditionPart addition) {
        return Sheets.weighings(sheet).stream()
                .filter(w -> w.line().kind() == Kind.ADDITION && w.line().place() == addition.place())
                .mapToDouble(Weighing::percentOfOils)
                .sum();
    }

    private static double share(MakingSheet sheet, AdditionPart addition) {
        return addition.stage() != Stage.Kind.PORTION
                ? 1
                : sheet.formula().portions().stream()
                        .filter(portion ->
                                portion.name().equals(addition.written().stage().portion()))
                        .mapToDouble(portion -> portion.fraction())
                        .sum();
    }

    private static String hundredths(double value) {
        return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).toPlainString();
    }
}
