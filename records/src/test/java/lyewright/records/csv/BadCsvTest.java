package lyewright.records.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import lyewright.measure.Outcome;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Files with something wrong in them: each is told where and what, in a sentence, and none is kept by half. */
class BadCsvTest {

    @TempDir
    private static Path home;

    private static Records records;

    @BeforeAll
    static void a_cupboard_with_coconut_oil_and_boxes() {
        records = Records.open(new Place.Folder(home), Clock.systemUTC()).orThrow();
        records.items()
                .add(ItemSaid.of("Coconut oil", ItemKind.OIL, Identity.ofKey("coconut")))
                .orThrow();
        records.items()
                .add(ItemSaid.of("Boxes", ItemKind.PACKAGING, Identity.none()))
                .orThrow();
    }

    @AfterAll
    static void close() {
        records.close();
    }

    private static final String LOT = "material,amount,received\n";

    private static Arguments whole(String what, String file, String finding) {
        return Arguments.of(what, file.getBytes(StandardCharsets.UTF_8), finding);
    }

    private static Arguments bytes(String what, byte[] file, String finding) {
        return Arguments.of(what, file, finding);
    }

    private static Arguments lot(String row, String finding) {
        return whole(row, LOT + row + "\n", finding);
    }

    private static Arguments lot(String columns, String row, String finding) {
        return whole(
                row, "material,amount,received," + columns + "\nCoconut oil,5 kg,2026-11-25," + row + "\n", finding);
    }

    private static Arguments material(String columns, String row, String finding) {
        return whole(row, columns + "\n" + row + "\n", finding);
    }

    private static byte[] of(int... bytes) {
        byte[] made = new byte[bytes.length];
        for (int i = 0; i < bytes.length; i++) {
            made[i] = (byte) bytes[i];
        }
        return made;
    }

    private static byte[] rows(int count) {
        StringBuilder file = new StringBuilder("name,kind\n");
        for (int i = 0; i < count; i++) {
            file.append("Oil ").append(i).append(",oil\n");
        }
        return file.toString().getBytes(StandardCharsets.UTF_8);
    }

    static Stream<Arguments> files() {
        return Stream.of(
                // the whole file
                whole("nothing", "", "the file is empty"),
                whole("blank lines", "\n \n\t\n", "the file is empty"),
                whole("separators alone", ",,,\n,,,\n", "the file is empty"),
                whole("a header alone", LOT, "there is one row only"),
                whole("a header and empty rows", LOT + ",,\n,,\n", "there is one row only"),
                whole("a NUL", "name,kind\nOil\0,oil\n", "line 2 has a NUL character in it"),
                bytes("a new spreadsheet", of('P', 'K', 3, 4, 20, 0), "a spreadsheet's own file or a zip, not CSV"),
                bytes("an old spreadsheet", of(0xd0, 0xcf, 0x11, 0xe0, 0xa1), "an old spreadsheet's own file"),
                bytes("a PDF", of('%', 'P', 'D', 'F', '-'), "the file is a PDF, not CSV"),
                bytes("a picture", of(0xff, 0xd8, 0xff, 0xe0), "the file is a picture, not CSV"),
                bytes("another picture", of(0x89, 'P', 'N', 'G'), "the file is a picture, not CSV"),
                bytes("a packed file", of(0x1f, 0x8b, 8), "the file is a packed file, not CSV"),
                bytes(
                        "UTF-16 without its mark",
                        "name,kind\nOil,oil\n".getBytes(StandardCharsets.UTF_16LE),
                        "NUL character"),
                bytes("half a UTF-16", of(0xff, 0xfe, 'n'), "begins as UTF-16LE does, and is not"),
                bytes(
                        "a mark of UTF-8 and then none",
                        of(0xef, 0xbb, 0xbf, 0xe9, ','),
                        "begins as UTF-8 does, and is not"),
                bytes("a byte of no Western text", of('n', 0x81, ','), "neither UTF-8 nor Western European text"),
                bytes("more than 5 MB", new byte[(5 << 20) + 1], "the file is larger than 5 MB"),
                bytes("more than 20,000 rows", rows(20_001), "the file has more than 20,000 rows"),
                whole("a hundred and one columns", "name" + ",x".repeat(100) + "\nOil\n", "the file has 101 columns"),
                whole(
                        "a quotation mark never closed",
                        "name,kind\n\"Oil,oil\nOther,oil\n",
                        "a quotation mark is opened"),
                whole("more after a closing mark", "name,kind\n\"Oil\" and,oil\n", "from line 2 on a quotation mark"),
                // the columns
                whole("columns that nobody knows", "a,b\n1,2\n", "no column says what a material is called"),
                whole(
                        "lots without an amount",
                        "material,received\nCoconut oil,2026-11-25\n",
                        "no column says how much came"),
                whole("lots without a day", "material,amount\nCoconut oil,5 kg\n", "no column says the day it came"),
                whole(
                        "an empty name of a column",
                        "material,,amount,received\nCoconut oil,?,5 kg,2026-11-25\n",
                        "Column 2, '', is left out."),
                whole(
                        "two columns of one name",
                        "name,kind,name\nOlive oil,oil,Other\n",
                        "Column 3, 'name', is left out: another one says the same."),
                whole("a short row", "name,kind,notes\nOlive oil,oil\n", "One row has fewer cells"),
                // rows and cells
                lot(
                        "Coconut oil,5 kg,2026-11-25,blue,lid",
                        "row 2: there are 5 cells in this row and 3 columns have names"),
                lot(",5 kg,2026-11-25", "row 2, material: nothing says which material this is"),
                lot("Coconut oil,,2026-11-25", "row 2, amount: nothing says how much came"),
                lot("Coconut oil,5 kg,", "row 2, received: nothing says when it came"),
                lot("Coconut oil,0 g,2026-11-25", "row 2, amount: that is nothing"),
                lot("Coconut oil,-5 kg,2026-11-25", "row 2, amount: '-5 kg' is less than nothing"),
                lot("Coconut oil,a lot,2026-11-25", "row 2, amount: 'a lot' does not begin with a number"),
                lot(
                        "Coconut oil,500,2026-11-25",
                        "row 2, amount: 'Coconut oil' is weighed, and this number has no unit"),
                lot("Boxes,500 g,2026-11-25", "row 2, amount: 'Boxes' is counted, not weighed"),
                lot("Boxes,2.5,2026-11-25", "row 2, amount: '2.5' has no unit, and is no whole number of pieces"),
                lot("Coconut oil,5 litres,2026-11-25", "row 2, amount: '5 litres' is a volume"),
                lot("Coconut oil,5 fl oz,2026-11-25", "row 2, amount: 'fl oz' is a volume"),
                lot("Coconut oil,5 stone,2026-11-25", "row 2, amount: 'stone' is not a unit used here"),
                lot("Coconut oil,0.0001 g,2026-11-25", "is less than a milligram"),
                lot("Coconut oil,100.001 t,2026-11-25", "'t' is not a unit used here"),
                lot("Coconut oil,100000.001 kg,2026-11-25", "row 2, amount: that is more than anybody has"),
                lot("Coconut oil,9999999999999 kg,2026-11-25", "row 2, amount: that is more than anybody has"),
                lot("Boxes,1000000000,2026-11-25", "row 2, amount: that is more than anybody has"),
                lot("Coconut oil,5 kg,2036-11-25", "row 2, received: that day has not come yet"),
                lot("Coconut oil,5 kg,2099-01-01", "row 2, received: that day has not come yet"),
                lot("opened", "2036-11-25", "row 2, opened: that day has not come yet"),
                lot("Coconut oil,1e3 g,2026-11-25", "row 2, amount: '1e3 g' is written as a power of ten"),
                lot("Coconut oil,\"1,000 g\",2026-11-25", "'1,000' may be a thousand or more, or a small number"),
                whole(
                        "a comma among points",
                        LOT + "Coconut oil,\"2,5 kg\",2026-11-25\nCoconut oil,2.5 kg,2026-11-25\n"
                                + "Coconut oil,1.5 kg,2026-11-25\n",
                        "'2,5' has a comma where this file's decimal sign is the point"),
                lot("Coconut oil,1.2.3 g,2026-11-25", "'1.2.3' is no number"),
                lot(
                        "Coconut oil,5 kg,03/04/2026",
                        "row 2, received: '03/04/2026' may be day and month, or month and day"),
                lot("Coconut oil,5 kg,31/31/2026", "there is no day '31/31/2026'"),
                lot("Coconut oil,5 kg,2026-02-30", "there is no day '2026-02-30'"),
                lot("Coconut oil,5 kg,25.11.26", "the year of '25.11.26' has two figures"),
                lot("Coconut oil,5 kg,46351", "'46351' is a spreadsheet's own number for a day"),
                lot("Coconut oil,5 kg,last week", "'last week' is no day"),
                lot("Coconut oil,5 kg,1026-11-25", "the year of '1026-11-25' cannot be meant"),
                lot("Moon oil,5 kg,2026-11-25", "there is no 'Moon oil' in the cupboard, and nothing says what kind"),
                whole(
                        "two things wrong at once",
                        "material,kind,amount,received\nMoon oil,oil,950,03/04/2026\n",
                        "row 2, amount: it is weighed, and this number has no unit of mass"),
                lot(
                        "kind",
                        "alkali",
                        "row 2, kind: 'Coconut oil' is in the cupboard as something else, and this is an alkali"),
                lot("kind", "soap", "row 2, kind: 'soap' is no kind of material"),
                whole(
                        "moves as they were written out",
                        "\"number\",\"at\",\"by\",\"own_code\",\"material\",\"kind\",\"change_g\",\"change_pieces\",\"corrects\","
                                + "\"purpose\",\"words\",\"why\"\n1,2026-11-25T09:00:00Z,M,26-0001,Oil,receipt,5,,,,,\n",
                        "this is the list of moves that Lyewright wrote; it is not read in"),
                lot("opened", "2026-11-24", "row 2, opened: it was opened before it came"),
                lot("status", "maybe", "row 2, status: 'maybe' is no status"),
                lot("price", "cheap", "row 2, price: 'cheap' is no price"),
                lot("price", "-4", "row 2, price: '-4' is no price"),
                lot("price", "4.505", "'4.505' has more decimals than GBP has"),
                lot("price", "4 shillings", "'4 shillings' is no price"),
                lot("price", "4 QQQ", "'QQQ' is no currency"),
                lot("price", "4 XXX", "nobody pays in 'XXX'"),
                lot("price,currency", "£4,EUR", "the price is in 'GBP' and the column beside it says 'EUR'"),
                lot("amount g", "5000", "row 2, amount g: how much came is said twice"),
                lot("own code", "x".repeat(61), "its own code is longer than 60 characters"),
                lot("supplier lot", "x".repeat(201), "the supplier's lot is longer than 200 characters"),
                lot("supplier", "x".repeat(201), "the supplier's name"),
                lot("supplier lot", "NQ\u202E811", "has a hidden sign in it that turns the writing round"),
                lot(
                        "supplier",
                        "Nor\u0007th",
                        "row 2, supplier: this cell has a line break or a control character in it"),
                lot("supplier", "\u200b\u200b", "has nothing in it that can be seen"),
                material("name,kind", "Oli\u202Eve,oil", "row 2, name: this cell has a hidden sign in it that turns"),
                material("name,kind", "\"Olive\noil\",oil", "row 2, name: this cell"),
                material(
                        "name,kind",
                        "x".repeat(2_001) + ",oil",
                        "row 2, name: the cell is longer than 2000 characters"),
                material(
                        "name,kind,notes",
                        "Olive,oil," + "x".repeat(10_001),
                        "the cell is longer than 10000 characters"),
                material(
                        "name,kind",
                        "Moon oil,",
                        "row 2, kind: there is no 'Moon oil' in the cupboard, and nothing says what kind of thing it is"),
                material("name,kind,counting", "Olive oil,oil,pieces", "row 2, counting: only packaging is counted"),
                material("name,kind,counting", "Olive oil,oil,often", "'often' says neither weighed nor counted"),
                material("name,kind,reorder", "Olive oil,oil,500", "row 2, reorder: '500' has no unit"),
                material("name,kind,reorder", "Olive oil,oil,0 g", "row 2, reorder: that is nothing"),
                material("name,kind,reorder pieces", "Olive oil,oil,5", "it is weighed, not counted"),
                material("name,kind,reorder", "Bands,packaging,5 g", "it is counted, not weighed"),
                material("name,kind,reorder g", "Bands,packaging,5", "it is counted, not weighed"),
                material("name,kind,spoons", "Clay,colourant,teaspoon 2 g", "does not say what the spoon holds"),
                material("name,kind,spoons", "Clay,colourant,: 2 g", "a spoon has a name and holds something"),
                material(
                        "name,kind,inci",
                        "Olive oil,oil," + "x".repeat(501),
                        "its INCI name is longer than 500 characters"),
                whole(
                        "a material named twice",
                        "name,kind\nOlive oil,oil\nOLIVE  oil,oil\n",
                        "row 3, name: row 2 has this name already"),
                whole(
                        "two names for one of recipes",
                        "name,kind,recipe name\nBoxes,packaging,coconut\n",
                        "'coconut' is what recipes call 'Coconut oil', which is another material than 'Boxes'"),
                whole(
                        "a lot written twice",
                        LOT + "Coconut oil,5 kg,2026-11-25\nCoconut oil,5000 g,25.11.2026\n",
                        "row 3: row 2 says the same of the same material"),
                whole(
                        "a code given twice",
                        "own code," + LOT + "A1,Coconut oil,5 kg,2026-11-25\nA1,Coconut oil,6 kg,2026-11-25\n",
                        "row 3, own code: row 2 has this code already"),
                whole(
                        "a supplier without a name",
                        "name,contact\n,by the harbour\n",
                        "row 2, name: nothing says who this is"),
                whole(
                        "a supplier named twice",
                        "name,contact\nNorth,a\nnorth,b\n",
                        "row 3, name: row 2 has this name already"));
    }

    @ParameterizedTest(name = "{index} {0}")
    @MethodSource("files")
    void what_is_wrong_is_told_where_it_is(String what, byte[] file, String finding) {
        assertThat(findings(file)).as(what).anySatisfy(told -> assertThat(told).contains(finding));
        assertThat(records.lots().held()).isEmpty();
        assertThat(records.items().list()).hasSize(2);
    }

    private static List<String> findings(byte[] bytes) {
        Outcome<CsvFile> read = CsvFile.read(bytes, Optional.empty());
        List<String> found = new ArrayList<>();
        read.problems().forEach(problem -> found.add(problem.sentence()));
        if (read instanceof Outcome.Ok<CsvFile> ok) {
            CsvFile file = ok.value();
            CsvChoice choice = file.guess();
            found.addAll(file.remarks(choice));
            file.standsInTheWay(choice).forEach(problem -> found.add(problem.sentence()));
            CsvImport.look(records, file, choice, "GBP")
                    .troubles()
                    .forEach(it -> found.add("row " + it.row() + (it.column().isEmpty() ? "" : ", " + it.column())
                            + ": " + it.problem().sentence()));
        }
        return found;
    }

    @Test
    void random_bytes_are_refused_or_told_of_and_never_an_exception() {
        Random random = new Random(20261128);
        int refused = 0;
        for (int i = 0; i < 300; i++) {
            byte[] bytes = new byte[random.nextInt(400) + 1];
            random.nextBytes(bytes);
            refused += findings(bytes).isEmpty() ? 0 : 1;
        }
        assertThat(refused).isEqualTo(300);
    }
}
