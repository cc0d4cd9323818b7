package lyewright.records.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipInputStream;
import lyewright.measure.WrittenMass;
import lyewright.records.OnBoth;
import lyewright.records.Records;
import lyewright.records.Workbench;
import lyewright.records.stock.Counting;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.StockItem;
import lyewright.records.stock.StockMove;
import lyewright.records.stock.Supplier;
import lyewright.records.stock.Taking;
import lyewright.records.store.Author;
import org.junit.jupiter.api.Test;

/** Files into the cupboard and out of it again, on both databases. */
@OnBoth
class CsvRoundTest extends Workbench {

    private static final String STOCK = """
            material,kind,supplier,supplier lot,received,best before,amount,price
            Coconut oil,oil,Northquay Oils,NQ-118,2026-11-25,2027-11-25,5 kg,18.95
            Olive oil,oil,Northquay Oils,,2026-11-25,,2.5 kg,
            Boxes,packaging,,,2026-11-20,,200,
            Moon oil,,Northquay Oils,,2026-11-25,,1 kg,
            Olive oil,oil,,,03/04/2026,,1 kg,
            """;

    private CsvImport.Result take(String text) {
        CsvFile file = CsvFile.read(text.getBytes(StandardCharsets.UTF_8), Optional.empty())
                .orThrow();
        return CsvImport.take(records, maker(), file, file.guess(), "GBP");
    }

    private Author maker() {
        return records.author();
    }

    private CsvImport.Result look(byte[] bytes) {
        CsvFile file = CsvFile.read(bytes, Optional.empty()).orThrow();
        return CsvImport.look(records, file, file.guess(), "GBP");
    }

    @Test
    void good_rows_go_in_and_the_same_file_again_is_there_already() {
        assertThat(look(STOCK.getBytes(StandardCharsets.UTF_8)).told())
                .isEqualTo("3 new, 0 already there, 2 with problems");
        assertThat(records.items().list()).isEmpty();
        assertThat(take(STOCK).told()).isEqualTo("3 new, 0 already there, 2 with problems");
        assertThat(records.items().list())
                .extracting(StockItem::name)
                .containsExactly("Boxes", "Coconut oil", "Olive oil");
        assertThat(records.suppliers().list()).extracting(Supplier::name).containsExactly("Northquay Oils");
        assertThat(records.lots().held())
                .extracting(lot -> lot.said().ownCode() + " " + lot.left())
                .containsExactly("26-0003 200", "26-0001 5000000", "26-0002 2500000");
        assertThat(take(STOCK).told()).isEqualTo("0 new, 3 already there, 2 with problems");
        assertThat(records.lots().held()).hasSize(3);
        assertThat(records.ledger().verify(Optional.empty()).isWhole()).isTrue();
        assertThat(records.lots()
                        .moves(records.lots().held().get(0).id())
                        .get(0)
                        .author())
                .isEqualTo(maker());
    }

    @Test
    void what_was_left_out_comes_back_as_a_file_that_can_be_mended_and_sent_again() {
        CsvFile file = CsvFile.read(STOCK.getBytes(StandardCharsets.UTF_8), Optional.empty())
                .orThrow();
        CsvImport.Result result = CsvImport.take(records, maker(), file, file.guess(), "GBP");
        String back = new String(CsvImport.leftOut(file, result), StandardCharsets.UTF_8);
        assertThat(back.lines().toList()).hasSize(3);
        assertThat(back)
                .contains("\"what is wrong\"")
                .contains("there is no 'Moon oil' in the cupboard, and nothing says what kind of thing it is")
                .contains("received: '03/04/2026' may be day and month");
        assertThat(take(back).told()).isEqualTo("0 new, 0 already there, 2 with problems");
        String mended =
                back.replace("\"Moon oil\",\"\"", "\"Moon oil\",\"oil\"").replace("03/04/2026", "2026-04-03");
        assertThat(take(mended).told()).isEqualTo("2 new, 0 already there");
        assertThat(records.lots().held()).hasSize(5);
    }

    @Test
    void used_up_lots_are_known_again_and_codes_of_ones_own_are_not_given_twice() {
        take(STOCK);
        KeptLot lot = records.lots().findCode("26-0001").orElseThrow();
        records.lots()
                .take(maker(), "", List.of(new Taking(lot.id(), 5_000_000, "")), StockMove.Told.of(MoveKind.USE, 0))
                .orThrow();
        assertThat(take(STOCK).there()).isEqualTo(3);
        CsvImport.Result more = take("""
                own code,material,received,amount
                ,Olive oil,2026-11-26,1 kg
                26-0004,Olive oil,2026-11-26,2 kg
                26-0001,Olive oil,2026-11-26,2 kg
                26-0002,olive  OIL,2026-01-01,9 kg
                """);
        assertThat(more.told()).isEqualTo("2 new, 1 already there, 1 with a problem");
        assertThat(more.verdicts().get(0).as()).isEqualTo("26-0005");
        assertThat(more.troubles().get(0).problem().what())
                .isEqualTo("there is a lot 26-0001 already, of 'Coconut oil'");
    }

    @Test
    void a_material_is_found_by_what_recipes_call_it_too() {
        records.items()
                .add(ItemSaid.of("Kokosfett", ItemKind.OIL, Identity.ofKey("coconut")))
                .orThrow();
        assertThat(take("material,received,amount\ncoconut,2026-11-25,1 kg\n").told())
                .isEqualTo("1 new, 0 already there");
        assertThat(take("name,recipe name,kind\nCoconut oil,coconut,oil\n").told())
                .isEqualTo("0 new, 1 already there");
    }

    // Out and in again

    private void hostile() {
        String supplier = records.suppliers()
                .add("=cmd|' /C calc'!A0", "+44 20\nby the \"harbour\"", "@home")
                .orThrow()
                .id();
        records.items()
                .add(new ItemSaid(
                        "-Clay, \"pink\"",
                        ItemKind.COLOURANT,
                        Counting.MASS,
                        new Identity(Optional.empty(), "=1+1", "@1", "", "", Optional.of(supplier), "+7", "'=x"),
                        Optional.of(WrittenMass.parse("0.7 oz").orThrow()),
                        Optional.empty(),
                        Map.of("teaspoon", 2_100L, "ladle", 40_000L),
                        "\t=tab\n<script>alert(1)</script>; \u00e9"))
                .orThrow();
        take("""
                own code,material,kind,supplier,supplier lot,received,amount,price,notes,status
                -7,"-Clay, ""pink""\",,'=cmd|' /C calc'!A0,=A1,2026-11-25,1.5 kg,£4.50,"@x
                y",quarantine
                ,Boxes,,,,2026-11-25,12,,,
                """);
        assertThat(records.lots().held()).hasSize(5);
        assertThat(records.suppliers().list()).hasSize(2);
    }

    @Test
    void all_that_is_written_out_is_there_already_when_it_is_read_in() throws IOException {
        take(STOCK);
        hostile();
        for (boolean mark : new boolean[] {false, true}) {
            Map<String, byte[]> files = files(mark);
            assertThat(look(of(files, "materials.csv")).told()).isEqualTo("0 new, 4 already there");
            assertThat(look(of(files, "suppliers.csv")).told()).isEqualTo("0 new, 2 already there");
            assertThat(look(of(files, "lots.csv")).told()).isEqualTo("0 new, 5 already there");
        }
    }

    @Test
    void an_empty_cupboard_takes_in_what_another_wrote_out() throws IOException {
        take(STOCK);
        hostile();
        Map<String, byte[]> files = files(true);
        List<String> before = told();
        records.close();
        place = kind.prepared(folder.resolve("other"));
        records = Records.open(place, clock).orThrow();
        for (String name : List.of("suppliers.csv", "materials.csv", "lots.csv")) {
            CsvFile file = CsvFile.read(of(files, name), Optional.empty()).orThrow();
            CsvImport.Result result = CsvImport.take(records, maker(), file, file.guess(), "GBP");
            assertThat(result.troubles()).isEmpty();
        }
        assertThat(told()).isEqualTo(before);
    }

    /** The cupboard without ids and numbers. */
    private List<String> told() {
        List<String> told = new ArrayList<>();
        records.suppliers().list().forEach(it -> told.add(it.name() + it.contact() + it.notes()));
        records.stockBook().items().forEach(item -> {
            Identity id = item.said().identity();
            told.add(item.name()
                    + item.said().kind()
                    + item.said().counting()
                    + id.inci()
                    + id.cas()
                    + id.productCode()
                    + id.certificateVersion()
                    + item.said().spoons()
                    + item.said().notes().strip()
                    + records.stockBook().name(id.supplierId()));
        });
        records.stockBook()
                .lots()
                .forEach(lot -> told.add(lot.lot().said().ownCode()
                        + lot.material().name()
                        + lot.lot().came()
                        + lot.lot().said().received()
                        + lot.lot().said().bestBefore()
                        + lot.lot().said().price()
                        + lot.lot().said().status()
                        + lot.lot().said().supplierLot()
                        + lot.lot().said().notes()));
        return told;
    }

    private Map<String, byte[]> files(boolean mark) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        StockFiles written = new StockFiles(records.stockBook(), mark);
        written.zip(out);
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(out.toByteArray()))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), zip.readAllBytes());
            }
        }
        assertThat(files.keySet()).containsExactlyElementsOf(written.names());
        return files;
    }

    private static byte[] of(Map<String, byte[]> files, String name) {
        return Optional.ofNullable(files.get(name)).orElseThrow();
    }

    @Test
    void no_cell_that_is_written_out_is_run_and_every_column_is_in_the_dictionary() throws IOException {
        take(STOCK);
        hostile();
        Map<String, byte[]> files = files(false);
        CsvTable dictionary = table(of(files, "data-dictionary.csv"));
        List<String> explained = dictionary.rows().stream()
                .map(row -> row.cell(0) + " " + row.cell(1))
                .toList();
        List<String> there = new ArrayList<>();
        files.forEach((name, bytes) -> {
            CsvTable table = table(bytes);
            if (!name.equals("data-dictionary.csv")) {
                table.header().forEach(column -> there.add(name + " " + column));
            }
            for (CsvTable.Row row : table.rows()) {
                for (int i = 0; i < table.header().size(); i++) {
                    boolean number = row.cell(i).matches("-?[0-9]+(\\.[0-9]+)?");
                    assertThat(number || !row.cell(i).matches("(?s)[=+\\-@\t\r].*"))
                            .as("%s, %s: %s", name, table.header().get(i), row.cell(i))
                            .isTrue();
                }
            }
        });
        assertThat(explained).isEqualTo(there);
        assertThat(new String(of(files, "lots.csv"), StandardCharsets.UTF_8))
                .contains(",1500,\"\",1500,\"\",4.50,\"GBP\",");
        assertThat(new String(of(files, "moves.csv"), StandardCharsets.UTF_8))
                .contains("\"The maker\"")
                .contains("\"read in from a file\"");
    }

    private static CsvTable table(byte[] bytes) {
        return CsvTable.read(new String(bytes, StandardCharsets.UTF_8), Optional.of(Separator.COMMA))
                .orThrow();
    }

    @Test
    void two_thousand_lots_go_in_at_once_and_the_ledger_is_whole() {
        StringBuilder file = new StringBuilder("material,kind,supplier,supplier lot,received,amount\n");
        for (int i = 0; i < 2_000; i++) {
            file.append("Oil ")
                    .append(i % 300)
                    .append(",oil,Northquay Oils,L")
                    .append(i)
                    .append(",2026-11-25,5 kg\n");
        }
        assertThat(take(file.toString()).told()).isEqualTo("2000 new, 0 already there");
        assertThat(records.items().list()).hasSize(300);
        assertThat(records.lots().findCode("26-2000")).isPresent();
        assertThat(take(file.toString()).told()).isEqualTo("0 new, 2000 already there");
        assertThat(records.ledger().verify(Optional.empty()).isWhole()).isTrue();
        assertThat(records.ledger().head().number()).isEqualTo(4_000);
    }
}
