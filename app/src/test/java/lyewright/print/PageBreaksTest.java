package lyewright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import lyewright.fill.Fill;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.words.WeighPlan;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where pages break, tried with notes of every length before what follows. */
class PageBreaksTest {

    private static final Set<String> HEADINGS =
            Set.of("Before the alkali is opened", "Weigh", "Make", "How sure, and more to know");

    private static final String OILS = "coconut olive-virgin castor sunflower lard tallow palm shea-butter cocoa-butter"
            + " rapeseed-low-erucic rice-bran almond-sweet avocado babassu";

    @ParameterizedTest
    @ValueSource(ints = {0, 3, 6, 9, 12, 15, 18, 21, 24, 27, 30, 33, 36, 39, 42, 45})
    void a_heading_is_never_the_last_line_of_a_page_nor_a_row_broken(int lines) {
        MakingSheet sheet = sheet(lines);
        WeighPlan plan = WeighPlan.of(sheet);
        String beforeTheTables = Paper.flat(plan.taring() + " " + plan.balances());
        for (String page : Paper.of(sheet, Sheets.order(PaperSize.A4)).pages()) {
            List<String> text = new ArrayList<>(page.lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty())
                    .toList());
            assertThat(text.remove(text.size() - 1)).contains("page ");
            String last = text.get(text.size() - 1);
            assertThat(beforeTheTables).doesNotContain(last);
            assertThat(HEADINGS).doesNotContain(last);
            assertThat(last)
                    .doesNotContain("balance reads")
                    .doesNotContain("g/kg")
                    .doesNotEndWith(":");
        }
    }

    /** Many oils, so that their pot is longer than what is kept together. */
    private static MakingSheet sheet(int lines) {
        String[] oils = OILS.split(" ");
        String all = Arrays.stream(oils).map(oil -> oil + ": 90 g").collect(Collectors.joining(", "));
        String notes = "line\\n".repeat(lines);
        return Sheets.of(
                "recipe: Many oils\nnotes: \"" + notes + "\"\noils: {" + all + "}\n" + """
                alkali: sodium
                superfat: 6 %
                water: 33 % lye
                portions: {plain: 60 %, dark: rest}
                process: {pour: fade plain into dark in 5}
                additions:
                  - {of: activated-charcoal, amount: 9 g per kg portion oils, stage: portion dark, disperse: {in: water, ratio: 4 to 1}}
                  - {of: lavender-oil, amount: 2 % of oils, stage: every portion}
                  - {of: rose-petals, amount: 4 g, stage: top}
                """,
                Fill.AS_WRITTEN,
                Equipment.USUAL);
    }
}
