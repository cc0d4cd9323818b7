package lyewright.records.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.formula.OwnMaterial.BlendPart;
import lyewright.formula.OwnMaterial.Certified;
import lyewright.formula.OwnMaterial.Strength;
import lyewright.formula.WrittenFigure;
import lyewright.material.Alkali;
import lyewright.measure.Share;
import lyewright.records.OnBoth;
import lyewright.records.Records;
import lyewright.records.Workbench;
import lyewright.records.material.MaterialText;
import lyewright.records.stock.KeptLot;
import org.junit.jupiter.api.Test;

/** What certificates say, in columns of their own: out, and in again. */
@OnBoth
class CertificateColumnsTest extends Workbench {

    private static final String LOTS = """
            own code,material,recipe name,kind,received,amount
            C,Coconut oil,coconut,oil,2026-11-25,5 kg
            S,Soda,naoh,alkali,2026-11-25,1 kg
            L,Stock lye,my-lye,alkali,2026-11-25,2 kg
            P,Base,my-base,oil,2026-11-25,3 kg
            N,Castor oil,castor,oil,2026-11-25,1 kg
            """;

    private static Optional<WrittenFigure> figure(String text) {
        return Optional.of(WrittenFigure.parse(text).orThrow().figure());
    }

    private static final Map<String, OwnMaterial> SAID = Map.of(
            "C",
            OwnMaterial.certified(
                    "coconut",
                    "",
                    new Certified(
                            figure("257.50 ± 1.5"), figure("0.2"), figure("9 to 10"), figure("0.1"), Optional.empty()),
                    "NQ-118, 20 November"),
            "S",
            OwnMaterial.certified(
                    "naoh",
                    OwnMaterial.LYE,
                    new Certified(
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.of(new Strength(figure("98.6 ± 0.4").orElseThrow(), Alkali.SODIUM))),
                    "77-A"),
            "L",
            OwnMaterial.made(
                    "my-lye",
                    OwnMaterial.LYE,
                    Optional.of(new Strength(figure("49.3 to 49.7").orElseThrow(), Alkali.SODIUM)),
                    List.of(),
                    "made here"),
            "P",
            OwnMaterial.made(
                    "my-base",
                    OwnMaterial.OILS,
                    Optional.empty(),
                    List.of(
                            new BlendPart("olive-virgin", Share.ofPercent("62.5"), figure("189.6 ± 0.8")),
                            new BlendPart("coconut", Share.ofPercent("37.5"))),
                    "made here"));

    private CsvImport.Result take(String text) {
        CsvFile file = CsvFile.read(text.getBytes(StandardCharsets.UTF_8), Optional.empty())
                .orThrow();
        return CsvImport.take(records, records.author(), file, file.guess(), "GBP");
    }

    private void certified() {
        assertThat(take(LOTS).told()).isEqualTo("5 new, 0 already there");
        SAID.forEach((code, own) -> {
            KeptLot lot = lot(code);
            records.lots()
                    .change(records.author(), lot.id(), lot.said().withCertificate(Optional.of(own)))
                    .orThrow();
        });
    }

    private KeptLot lot(String code) {
        return records.lots().findCode(code).orElseThrow();
    }

    private Map<String, OwnMaterial> there() {
        Map<String, OwnMaterial> there = new LinkedHashMap<>();
        records.lots()
                .held()
                .forEach(lot -> lot.said()
                        .certificate()
                        .ifPresent(own -> there.put(lot.said().ownCode(), own)));
        return there;
    }

    private String file(String name) {
        return new String(new StockFiles(records.stockBook(), false).file(name).orElseThrow(), StandardCharsets.UTF_8);
    }

    private void elsewhere() {
        records.close();
        place = kind.prepared(folder.resolve("other"));
        records = Records.open(place, clock).orThrow();
    }

    @Test
    void what_certificates_say_goes_out_and_comes_in_as_it_was() {
        certified();
        String lots = file("lots.csv");
        assertThat(lots)
                .contains("\"sv_mg_koh_g\",\"sv_uncertainty\",\"av_mg_koh_g\"")
                .contains(",257.50,1.5,0.2,\"\",\"9 to 10\",\"\",0.1,\"\",")
                .contains(",98.6,0.4,\"naoh\",\"77-A\",")
                .doesNotContain("materials:");
        assertThat(file("data-dictionary.csv"))
                .contains("\"lots.csv\",\"sv_mg_koh_g\"")
                .contains("\"mg KOH/g\"")
                .contains("\"g/100 g\"");
        assertThat(take(lots).told()).isEqualTo("0 new, 5 already there");
        elsewhere();
        CsvImport.Result result = take(lots);
        assertThat(result.troubles()).isEmpty();
        assertThat(result.told()).isEqualTo("5 new, 0 already there");
        assertThat(there()).isEqualTo(SAID);
        assertThat(take(lots).told()).isEqualTo("0 new, 5 already there");
        assertThat(records.ledger().verify(Optional.empty()).isWhole()).isTrue();
    }

    @Test
    void a_file_that_was_written_out_before_there_were_columns_is_read_too() {
        StringBuilder old = new StringBuilder("own code,material,recipe name,kind,received,amount,certificate\n");
        LOTS.lines().skip(1).forEach(row -> {
            OwnMaterial own = SAID.get(row.substring(0, 1));
            String text = own == null ? "" : MaterialText.of(own).replace("\"", "\"\"");
            old.append(row).append(",\"").append(text).append("\"\n");
        });
        assertThat(take(old.toString()).troubles()).isEmpty();
        assertThat(there()).isEqualTo(SAID);
    }

    @Test
    void a_column_of_certificates_that_holds_no_formula_is_left_out_as_before() {
        CsvFile file = CsvFile.read(
                        "material,kind,received,amount,certificate\nCastor oil,oil,2026-11-25,1 kg,CoA-118\n",
                        Optional.empty())
                .orThrow();
        assertThat(file.remarks(file.guess())).containsExactly("Column 5, 'certificate', is left out.");
        assertThat(CsvImport.look(records, file, file.guess(), "GBP").told()).isEqualTo("1 new, 0 already there");
    }

    @Test
    void decimal_commas_signs_and_units_are_read_in_figures_too() {
        assertThat(take("""
                        own code;material;kind;received;amount;SV;SV uncertainty;iodine value;water
                        A;Castor oil;oil;25.11.2026;2,5 kg;180,5 mg KOH/g;± 1,0;82,5 to 90;0,25 %
                        """).troubles()).isEmpty();
        OwnMaterial own = Optional.ofNullable(there().get("A")).orElseThrow();
        assertThat(own.saponificationValue()).isEqualTo(figure("180.5 ± 1.0"));
        assertThat(own.iodineValue()).isEqualTo(figure("82.5 to 90"));
        assertThat(own.water()).isEqualTo(figure("0.25"));
        assertThat(own.source()).isEqualTo("certificate of lot A");
    }

    private String wrong(String columns, String row) {
        CsvFile file = CsvFile.read("material,kind,received,amount," + columns + "\n" + row + "\n", Optional.empty())
                .orThrow();
        CsvImport.Result result = CsvImport.look(records, file, file.guess(), "GBP");
        List<CellTrouble> told = result.troubles().isEmpty() ? result.notes() : result.troubles();
        return told.get(0).column() + ": " + told.get(0).problem().what();
    }

    @Test
    void a_figure_that_cannot_be_is_told_at_its_column() {
        String castor = "Castor oil,oil,2026-11-25,1 kg,";
        assertThat(wrong("sv", castor + "high")).isEqualTo("sv: 'high' does not begin with a number");
        assertThat(wrong("sv", castor + "180 g")).isEqualTo("sv: 'g' is not the unit used here");
        assertThat(wrong("sv", castor + "5000")).startsWith("sv: a saponification value of 5000 mg KOH/g");
        assertThat(wrong("purity", castor + "98")).isEqualTo("purity: 'Castor oil' is no alkali");
        assertThat(wrong("sv uncertainty", castor + "1"))
                .isEqualTo("sv uncertainty: nothing says of which figure that is");
        assertThat(wrong("sv,sv uncertainty", castor + "180 ± 1,1"))
                .isEqualTo("sv uncertainty: how sure it is stands beside the figure already");
        assertThat(wrong("sv,sv uncertainty", castor + "180,190"))
                .isEqualTo("sv uncertainty: it is more than the figure itself");
        assertThat(wrong("made of", castor + "olive-virgin 60 %")).contains("does not say which oil");
        assertThat(wrong("sv,made of", castor + "180,olive-virgin: 100 %"))
                .isEqualTo("made of: figures of a certificate stand beside what it was made of");
        assertThat(wrong("sv", "Moon oil,oil,2026-11-25,1 kg,180"))
                .isEqualTo("sv: no recipe names 'Moon oil', so no sheet could reckon with its certificate");
        assertThat(wrong("sv", "Caustic soda,alkali,2026-11-25,1 kg,180")).isEqualTo("sv: 'Caustic soda' is an alkali");
        assertThat(wrong("purity,purity of", "Caustic soda,alkali,2026-11-25,1 kg,98,koh"))
                .startsWith("purity: 'Caustic soda' is the other alkali");
        assertThat(wrong("water", "Sea salt,additive,2026-11-25,1 kg,2"))
                .isEqualTo("water: 'Sea salt' is neither an oil nor an alkali");
        assertThat(wrong("purity of", "Caustic soda,alkali,2026-11-25,1 kg,soda"))
                .isEqualTo("purity of: 'soda' is no alkali");
    }

    @Test
    void a_figure_outside_what_was_published_goes_in_with_a_word_beside_it() {
        assertThat(wrong("sv", "Castor oil,oil,2026-11-25,1 kg,257"))
                .startsWith("sv: that is outside what was published, ");
        assertThat(wrong("certificate source", "Castor oil,oil,2026-11-25,1 kg,NQ-1"))
                .isEqualTo("certificate source: it stands beside no figure of a certificate, so it is not kept");
    }
}
