package lyewright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import lyewright.fill.Fill;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** Papers are PDF/UA-1 by the rules of ISO 14289-1 that a machine can check, as the veraPDF validator reads them. */
class PaperForEveryoneTest {

    @BeforeAll
    static void begin() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    static Stream<Arguments> papers() {
        Stream<Arguments> examples = Sheets.examples().stream()
                .map(file -> Arguments.of(
                        file.getFileName().toString(), Sheets.of(file, Sheets.LOAF, Equipment.USUAL), PaperSize.A4));
        return Stream.concat(
                examples,
                Stream.of(
                        Arguments.of(
                                "not to be made",
                                Sheets.of(Sheets.CAUSTIC, Fill.AS_WRITTEN, Equipment.USUAL),
                                PaperSize.LETTER),
                        Arguments.of(
                                "in ounces",
                                Sheets.of(Sheets.examples().get(0), Sheets.LOAF, Sheets.OUNCES),
                                PaperSize.LETTER)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("papers")
    void a_paper_can_be_read_out_by_the_standard(String name, MakingSheet sheet, PaperSize size)
            throws VeraPDFException, IOException {
        assertThat(broken(SheetPaper.pdf(sheet, Sheets.order(size)))).as(name).isEmpty();
    }

    private static List<String> broken(byte[] pdf) throws VeraPDFException, IOException {
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            return validator.validate(parser).getTestAssertions().stream()
                    .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .map(assertion -> assertion.getRuleId().getClause() + " " + assertion.getMessage() + " "
                            + assertion.getLocation().getContext())
                    .distinct()
                    .toList();
        }
    }
}
