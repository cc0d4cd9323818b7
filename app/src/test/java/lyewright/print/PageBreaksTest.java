package lyewright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
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

    /** Of a portion whose name takes several lines of its row. */
    private static final String FIRST_WORD = "alpha";

    private static final String LAST_WORD = "golf";

    private static final List<String> OILS = List.of(
            "coconut",
            "olive-virgin",
            "castor",
            "sunflower",
            "lard",
            "tallow",
            "palm",
            "shea-butter",
            "cocoa-butter",
            "rapeseed-low-erucic",
            "rice-bran",
            "almond-sweet",
            "avocado",
            "babassu");

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
            // a picture has room for the beginning of it only
            String whole = page.replaceAll("of " + FIRST_WORD + "[^\\n]*…", "");
            assertThat(count(whole, FIRST_WORD)).as(page).isEqualTo(count(whole, LAST_WORD));
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

    /** Nobody turns a sheet with wet gloves between one step and the next. */
    @ParameterizedTest
    @ValueSource(ints = {0, 4, 8, 12, 16, 20, 24, 28, 32})
    void the_steps_of_a_plain_bar_stand_on_one_page(int lines) {
        String notes = "line\\n".repeat(lines);
        MakingSheet sheet =
                Sheets.of("recipe: Plain bar\nnotes: \"" + notes + "\"\n" + """
                oils: {olive-virgin: 600 g, coconut: 300 g, castor: 100 g}
                alkali: sodium
                superfat: 6 %
                water: 33 % lye
                additions:
                  - {of: lavender-oil, amount: 2 % of oils, stage: trace}
                """, Fill.AS_WRITTEN, Equipment.USUAL);

        assertThat(Paper.of(sheet, Sheets.order(PaperSize.A4)).pages())
                .filteredOn(page -> page.lines().anyMatch(line -> line.strip().equals("Make")))
                .singleElement()
                .satisfies(page -> assertThat(page).contains("Melt the oils").contains("Cure on a rack"));
    }

    private static int count(String text, String word) {
        return text.split(word, -1).length - 1;
    }

    /** Many oils, so that their pot takes most of a page. */
    private static MakingSheet sheet(int lines) {
        String all = OILS.stream().map(oil -> oil + ": 90 g").collect(Collectors.joining(", "));
        String notes = "line\\n".repeat(lines);
        return Sheets.of(
                "recipe: Many oils\nnotes: \"" + notes + "\"\noils: {" + all + "}\n" + """
                alkali: sodium
                superfat: 6 %
                water: 33 % lye
                portions: {plain: 60 %, alpha bravo charlie delta echo foxtrot golf: rest}
                process: {pour: fade plain into alpha bravo charlie delta echo foxtrot golf in 5}
                additions:
                  - {of: activated-charcoal, amount: 9 g per kg portion oils, stage: portion alpha bravo charlie delta echo foxtrot golf, disperse: {in: water, ratio: 4 to 1}}
                  - {of: lavender-oil, amount: 2 % of oils, stage: every portion}
                  - {of: rose-petals, amount: 4 g, stage: top}
                """,
                Fill.AS_WRITTEN,
                Equipment.USUAL);
    }
}
