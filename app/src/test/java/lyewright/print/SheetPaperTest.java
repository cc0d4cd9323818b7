package lyewright.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lyewright.fill.Fill;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.words.MakingStep;
import lyewright.words.MakingSteps;
import lyewright.words.Safety;
import lyewright.words.UnitsShown;
import lyewright.words.WeighPlan;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class SheetPaperTest {

    private static final String NOT_TO_BE_MADE = "Not to be made as it stands";

    /** Little alkali on a balance of 5 g, too much fragrance, strong lye, much salt. */
    private static final String MANY_CARES = """
            recipe: Reckless
            oils: {coconut: 1000 g}
            alkali: sodium
            superfat: 1 %
            water: 48 % lye
            process: {make: cold, oils: 70 C, lye: 20 C}
            additions:
              - {of: clove-bud-oil, amount: 6 % of oils, stage: trace}
              - {of: sea-salt, amount: 120 % of oils, stage: trace}
            """;

    // What it shows

    static Stream<Arguments> everySheet() {
        List<Arguments> sheets = new ArrayList<>();
        for (Path file : Sheets.examples()) {
            String name = file.getFileName().toString();
            sheets.add(Arguments.of(name + ", 1500 g", Sheets.of(file, Fill.mouldMass(1500), Equipment.USUAL)));
            sheets.add(Arguments.of(name + ", a loaf in ounces", Sheets.of(file, Sheets.LOAF, Sheets.OUNCES)));
            sheets.add(Arguments.of(name + ", 12 kg", Sheets.of(file, Fill.mouldMass(12_000), Equipment.USUAL)));
        }
        return sheets.stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everySheet")
    void every_mass_of_weighing_and_of_the_steps_is_on_the_paper(String name, MakingSheet sheet) {
        all_of_it_is_on_the_paper(sheet, UnitsShown.METRIC);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everySheet")
    void for_a_workshop_in_ounces_every_mass_is_there_in_ounces_too(String name, MakingSheet sheet) {
        UnitsShown ounces = new UnitsShown(true, true);
        assertThat(WeighPlan.of(sheet, ounces).vessels().stream()
                        .flatMap(vessel -> vessel.rows().stream())
                        .map(row -> row.weigh().text()))
                .allMatch(text -> text.matches("[0-9.]+ g \\([0-9.]+ oz\\)|[0-9.]+ oz \\([0-9.]+ g\\)"));
        all_of_it_is_on_the_paper(sheet, ounces);
    }

    private static void all_of_it_is_on_the_paper(MakingSheet sheet, UnitsShown units) {
        Words words =
                new Words(Paper.of(sheet, Sheets.order(PaperSize.A4, units)).text());
        WeighPlan.of(sheet, units).vessels().stream()
                .flatMap(vessel -> vessel.rows().stream())
                .forEach(row -> {
                    words.take(row.weigh().shown());
                    row.weigh().also().forEach(words::take);
                    words.take(row.reads().shown());
                });
        for (MakingStep step : MakingSteps.of(sheet, units)) {
            words.has(step.text());
            step.table()
                    .ifPresent(table -> table.groups().forEach(group -> {
                        group.rows().forEach(row -> row.forEach(cell -> words.has(cell.replaceAll(" \\(.*", ""))));
                        words.has(group.heading());
                    }));
        }
    }

    /** Text from which what was found once is taken away, so that two equal masses have to be there twice. */
    private static final class Words {

        private final String all;
        private final StringBuilder left;

        Words(String text) {
            all = text;
            left = new StringBuilder(text);
        }

        void has(String text) {
            assertThat(all).contains(Paper.flat(text));
        }

        void take(String text) {
            int at = left.indexOf(text);
            assertThat(at).as("'%s' in %s", text, left).isNotNegative();
            left.replace(at, at + text.length(), "|");
        }
    }

    @Test
    void what_it_makes_how_sure_it_is_and_the_usual_cautions_are_on_the_paper() {
        MakingSheet sheet = Sheets.example("tideline");
        String text = Paper.of(sheet, Sheets.order(PaperSize.A4)).text();
        assertThat(text)
                .contains("Tideline", "version 3", "Gannet Stair Soap", "for the ten-inch loaf", "25 Nov 2026")
                .contains(Paper.flat(sheet.howSure()))
                .contains("It hangs on");
        Safety.LINES.stream()
                .filter(line -> !line.equals(Safety.SELLING))
                .forEach(line -> assertThat(text).contains(line.label() + " "));
        assertThat(text)
                .containsOnlyOnce("The tool computes; it does not assess.")
                .doesNotContain("Selling");
    }

    @Test
    void what_is_grave_is_on_the_face_and_what_is_good_to_know_stands_under_more_to_know() {
        MakingSheet sheet = Sheets.caustic();
        List<Caution> grave = sheet.cautions().stream()
                .filter(caution -> caution.level() != Caution.Level.NOTE)
                .toList();
        assertThat(grave).isNotEmpty().hasSizeLessThan(sheet.cautions().size());
        String text = Paper.of(sheet, Sheets.order(PaperSize.A4)).text();
        int more = text.indexOf("How sure, and more to know");
        List<Integer> places = sheet.cautions().stream()
                .map(caution -> text.indexOf(Paper.flat(caution.text())))
                .toList();
        assertThat(places).isSorted();
        assertThat(places.subList(0, grave.size()))
                .allSatisfy(place -> assertThat(place).isBetween(0, text.indexOf("Into the mould")));
        assertThat(places.subList(grave.size(), places.size()))
                .allSatisfy(place -> assertThat(place).isGreaterThan(more));
    }

    @Test
    void of_many_cautions_that_do_not_stop_it_three_are_on_the_face() {
        MakingSheet sheet = Sheets.of(MANY_CARES, Fill.AS_WRITTEN, Sheets.COARSE);
        assertThat(sheet.stopped()).isFalse();
        assertThat(sheet.cautions().stream().filter(caution -> caution.level() == Caution.Level.CARE))
                .hasSizeGreaterThan(3);
        String text = Paper.of(sheet, Sheets.order(PaperSize.A4)).text();
        int more = text.indexOf("How sure, and more to know");
        List<Integer> places = sheet.cautions().stream()
                .map(caution -> text.indexOf(Paper.flat(caution.text())))
                .toList();
        assertThat(places.subList(0, 3))
                .isSorted()
                .allSatisfy(place -> assertThat(place).isBetween(0, more));
        assertThat(places.subList(3, places.size()))
                .isSorted()
                .allSatisfy(place -> assertThat(place).isGreaterThan(more));
        assertThat(text).containsPattern("\\d more cautions? and \\d+ notes? from page \\d");
    }

    @Test
    void the_rack_card_has_room_for_two_days_and_says_how_long_to_cure_and_how_many_bars() {
        MakingSheet sheet = Sheets.of(Sheets.examples().get(0), Sheets.LOAF, Equipment.USUAL);
        String text = Paper.of(sheet, Sheets.order(PaperSize.A4)).text();
        String card = text.substring(text.indexOf("cut out for the rack"));
        assertThat(text).containsPattern("cure \\d+ to \\d+ weeks \\(common practice\\) · cut out for the rack");
        assertThat(card)
                .contains("Poured Ready Bars " + sheet.bars().orElseThrow().count());
    }

    // Where it is not to be made

    @Test
    void a_stopped_sheet_says_so_and_is_crossed_on_every_page_and_gives_all_its_reasons_first() {
        MakingSheet sheet = Sheets.caustic();
        assertThat(sheet.stopped()).isTrue();
        Paper paper = Paper.of(sheet, Sheets.order(PaperSize.LETTER));
        assertThat(paper.pages())
                .hasSizeGreaterThan(1)
                .allSatisfy(page -> assertThat(page).contains(NOT_TO_BE_MADE));
        for (int page = 0; page < paper.pages().size(); page++) {
            assertThat(greyInTheCorners(paper, page)).as("page %d", page + 1).isEqualTo(4);
        }
        String face = Paper.flat(paper.pages().get(0));
        sheet.cautions().stream()
                .filter(caution -> caution.level() == Caution.Level.STOP)
                .forEach(stop -> assertThat(face).contains(Paper.flat(stop.text()), Paper.flat(stop.remedy())));
        assertThat(paper.text()).doesNotContain("for the rack");
    }

    @Test
    void a_sheet_that_can_be_made_is_neither_crossed_nor_called_stopped() {
        Paper paper = Paper.of(Sheets.example("plain-castile"), Sheets.order(PaperSize.A4));
        assertThat(paper.text()).doesNotContainIgnoringCase(NOT_TO_BE_MADE);
        assertThat(greyInTheCorners(paper, 0)).isZero();
    }

    /** How many of the four corners, outside all text, have a stroke running into them. */
    private static int greyInTheCorners(Paper paper, int page) {
        var image = paper.drawn(page);
        int in = 28;
        int right = image.getWidth() - in;
        int bottom = image.getHeight() - in;
        int grey = 0;
        for (int[] at : new int[][] {{in, in}, {right, in}, {in, bottom}, {right, bottom}}) {
            int shade = new Color(image.getRGB(at[0], at[1])).getRed();
            grey += shade > 100 && shade < 220 ? 1 : 0;
        }
        return grey;
    }

    // The paper itself

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void pages_are_as_large_as_the_paper(PaperSize size) {
        Paper paper = Paper.of(Sheets.example("plain-castile"), Sheets.order(size));
        float width = size == PaperSize.A4 ? 210 / 25.4f * 72 : 612;
        float height = size == PaperSize.A4 ? 297 / 25.4f * 72 : 792;
        List<PDRectangle> found = paper.look(document -> {
            List<PDRectangle> boxes = new ArrayList<>();
            document.getPages().forEach(page -> boxes.add(page.getMediaBox()));
            return boxes;
        });
        assertThat(found).isNotEmpty().allSatisfy(box -> {
            assertThat(box.getWidth()).isCloseTo(width, within(0.5f));
            assertThat(box.getHeight()).isCloseTo(height, within(0.5f));
        });
    }

    @Test
    void every_page_has_its_number_and_all_but_the_first_the_recipe_at_the_head() {
        List<String> pages =
                Paper.of(Sheets.example("tideline"), Sheets.order(PaperSize.A4)).pages();
        assertThat(pages).hasSizeGreaterThan(2);
        for (int page = 0; page < pages.size(); page++) {
            assertThat(pages.get(page)).contains("page " + (page + 1) + " of " + pages.size());
            assertThat(pages.get(page).lines().limit(4)).anyMatch(line -> line.contains("Tideline"));
        }
    }

    @Test
    void every_letter_is_embedded_and_nothing_is_looked_for_on_the_machine(@TempDir Path cache) {
        System.setProperty("pdfbox.fontcache", cache.toString());
        Paper paper = Paper.of(Sheets.example("tideline"), Sheets.order(PaperSize.A4));
        List<PDFont> fonts = paper.look(document -> {
            List<PDFont> found = new ArrayList<>();
            for (PDPage page : document.getPages()) {
                PDResources resources = page.getResources();
                for (COSName name : resources.getFontNames()) {
                    found.add(resources.getFont(name));
                }
            }
            return found;
        });
        assertThat(fonts).hasSizeGreaterThan(1).allSatisfy(font -> {
            assertThat(font.isEmbedded()).isTrue();
            assertThat(font.getName()).contains("IBMPlexSans");
        });
        assertThat(cache).isEmptyDirectory();
    }

    @Test
    void it_has_tags_a_language_and_a_title_for_those_who_listen_to_it() {
        Paper paper = Paper.of(Sheets.example("tideline"), Sheets.order(PaperSize.A4));
        assertThat(paper.<Boolean>look(
                        document -> document.getDocumentCatalog().getMarkInfo().isMarked()))
                .isTrue();
        assertThat(paper.<Boolean>look(document -> document.getDocumentCatalog().getStructureTreeRoot() != null))
                .isTrue();
        assertThat(paper.<String>look(document -> document.getDocumentCatalog().getLanguage()))
                .isEqualTo("en-GB");
        assertThat(paper.<String>look(
                        document -> document.getDocumentInformation().getTitle()))
                .isEqualTo("Making sheet: Tideline");
    }

    // Whatever people call their soap

    @Test
    void names_in_greek_and_cyrillic_come_back_as_text() {
        String formula = """
                recipe: Ελαιόλαδο и Мыло
                notes: Łąka, çiçek, Đại, ñandú, Ωμέγα, хозяйственное
                oils: {olive-virgin: 700 g, coconut: 300 g}
                alkali: sodium
                superfat: 6 %
                water: 33 % lye
                """;
        String text = Paper.of(Sheets.of(formula, Fill.AS_WRITTEN, Equipment.USUAL), Sheets.order(PaperSize.A4))
                .text();
        assertThat(text)
                .contains("Ελαιόλαδο и Мыло", "Łąka, çiçek, Đại, ñandú, Ωμέγα, хозяйственное")
                .doesNotContain("\uFFFD");
    }

    @Test
    void a_name_that_looks_like_markup_is_printed_as_it_is_written() {
        String title = "<script>alert(\"x\")</script> & <b>'soap'</b> ]]> <!-- &amp; ${x} %PDF";
        assertThat(Paper.of(Sheets.example("plain-castile"), Sheets.titled(title))
                        .text())
                .contains(title);
    }

    @Test
    void letters_that_the_typeface_has_not_are_seen_to_be_missing_and_it_says_so() {
        List<String> pages = Paper.of(
                        Sheets.example("plain-castile"),
                        Sheets.titled("Olive \u05e9\u05de\u05df \u0632\u064a\u062a \uD83E\uDDFC 7"))
                .pages();
        String text = Paper.flat(pages.get(0));
        assertThat(text).contains("Olive \uFFFD\uFFFD\uFFFD \uFFFD\uFFFD\uFFFD \uFFFD 7");
        assertThat(text).contains("\uFFFD stands for a letter that this paper's typeface has not.");
    }

    @Test
    void what_xml_cannot_hold_does_not_stop_the_press() {
        String text = Paper.of(Sheets.example("plain-castile"), Sheets.titled("a\u0000b\u0008c\uD800d\uFFFEe"))
                .text();
        assertThat(text).contains("a\uFFFDb\uFFFDc\uFFFDd\uFFFDe");
    }

    @Test
    void a_name_without_end_stays_on_the_paper() {
        Paper paper = Paper.of(Sheets.example("plain-castile"), Sheets.titled("Long".repeat(100)));
        assertThat(paper.text().replace(" ", "")).contains("Long".repeat(100));
        assertThat(paper.drawn(0)).satisfies(image -> {
            for (int y = 0; y < image.getHeight(); y++) {
                assertThat(new Color(image.getRGB(image.getWidth() - 20, y)))
                        .as("right margin at %d", y)
                        .isEqualTo(Color.WHITE);
            }
        });
    }

    @Test
    void an_order_without_names_prints_too() {
        PaperOrder order = new PaperOrder(
                PaperSize.A4, "", "", "", Sheets.order(PaperSize.A4).printedOn(), UnitsShown.METRIC, "");
        assertThat(Paper.of(Sheets.example("plain-castile"), order).text())
                .contains("Plain Castile Version 1, own use Into the mould", "printed 25 Nov 2026 page 1 of");
    }

    @Test
    void the_same_sheet_gives_the_same_text() {
        List<String> once =
                Paper.of(Sheets.example("tideline"), Sheets.order(PaperSize.A4)).pages();
        List<String> again =
                Paper.of(Sheets.example("tideline"), Sheets.order(PaperSize.A4)).pages();
        assertThat(again).isEqualTo(once);
    }
}
