package lyewright.records.csv;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.stock.StockRow;

/** A CSV file that could be read as rows and columns: how it was understood, and what its rows tell of. Immutable. */
public final class CsvFile {

    /** The largest file that is read, in bytes. */
    public static final int LARGEST = FileText.LARGEST;

    private static final Pattern NUMBER = Pattern.compile("[0-9]*[.,][0-9.,]*[0-9]");

    /** A number with decimals and perhaps a unit or a currency; days have two points. */
    private static final Pattern AMOUNT = Pattern.compile(
            "\\s*(?:\\p{Sc}|\\p{L}{1,3})?\\s*[0-9]{1,9}([.,][0-9]{1,6})\\s*(?:\\p{Sc}|\\p{L}{1,10}|%)?\\s*");

    private final CsvTable table;
    private final String encoding;

    private CsvFile(CsvTable table, String encoding) {
        this.table = table;
        this.encoding = encoding;
    }

    /**
     * Reads a file.
     *
     * @param bytes of the file
     * @param separator the one that was chosen, if one was
     * @return the file, or why it is none
     */
    public static Outcome<CsvFile> read(byte[] bytes, Optional<Separator> separator) {
        return FileText.of(bytes).then(text -> of(text, separator));
    }

    /** Reads text that was pasted. */
    public static Outcome<CsvFile> read(String text, Optional<Separator> separator) {
        return FileText.of(text).then(read -> of(read, separator));
    }

    private static Outcome<CsvFile> of(FileText text, Optional<Separator> separator) {
        return CsvTable.read(text.text(), separator)
                .then(table -> table.header().equals(LotSheets.MOVES)
                        ? Outcome.refused(
                                "this is the list of moves that Lyewright wrote; it is not read in",
                                "choose materials.csv, suppliers.csv or lots.csv; what moved stands in the ledger")
                        : Outcome.ok(new CsvFile(table, text.encoding())));
    }

    CsvTable table() {
        return table;
    }

    /** How its text was encoded, in words. */
    public String encoding() {
        return encoding;
    }

    /** What stands between its cells. */
    public Separator separator() {
        return table.separator();
    }

    /** The names of its columns. */
    public List<String> columns() {
        return table.header();
    }

    /** How many rows there are beneath them. */
    public int rows() {
        return table.rows().size();
    }

    /** The first cell of a column that has something in it, shortened. */
    public String example(int column) {
        return table.rows().stream()
                .map(row -> CellReader.shown(row.cell(column)))
                .filter(cell -> !cell.isEmpty())
                .findFirst()
                .orElse("");
    }

    // How it is understood

    /** How it is read when nobody says otherwise. */
    public CsvChoice guess() {
        return guess(kind());
    }

    /** The same for rows of a kind. */
    public CsvChoice guess(CsvKind kind) {
        Set<Meaning> taken = EnumSet.noneOf(Meaning.class);
        List<Meaning> meanings = new ArrayList<>();
        for (String name : table.header()) {
            int column = meanings.size();
            Optional<Meaning> meaning = Meaning.ofHeader(name)
                    .filter(it -> it != Meaning.CERTIFICATE || holdsFormulas(column))
                    .filter(it -> it.isOf(kind) && taken.add(it));
            meanings.add(meaning.orElse(Meaning.TOLD));
        }
        return new CsvChoice(kind, meanings, decimal(meanings), DayOrder.ASKED);
    }

    /** Whether a column has certificates as they were written out once; else it says something that nobody here reads. */
    private boolean holdsFormulas(int column) {
        return table.rows().stream().anyMatch(row -> row.cell(column).contains("materials:"));
    }

    private CsvKind kind() {
        Set<Meaning> named = EnumSet.noneOf(Meaning.class);
        table.header().forEach(name -> Meaning.ofHeader(name).ifPresent(named::add));
        if (named.stream().anyMatch(it -> it.isAmount() || it == Meaning.RECEIVED || it == Meaning.BEST_BEFORE)) {
            return CsvKind.LOTS;
        }
        return named.contains(Meaning.CONTACT) && !named.contains(Meaning.KIND) ? CsvKind.SUPPLIERS : CsvKind.MATERIALS;
    }

    /**
     * What stands before decimals, by what the columns say.
     *
     * @param meanings of the columns, in their order
     * @return the sign that fits the numbers in them
     */
    public DecimalSign decimal(List<Meaning> meanings) {
        return meanings.stream().anyMatch(CsvFile::isNumber) ? decimalOf(meanings) : decimalOfAll();
    }

    /** Where no column is known to hold numbers: a file with semicolons in which every number has a comma and one or two digits. */
    private DecimalSign decimalOfAll() {
        if (separator() != Separator.SEMICOLON) {
            return DecimalSign.POINT;
        }
        List<String> decimals = table.rows().stream()
                .flatMap(row -> row.cells().stream())
                .map(AMOUNT::matcher)
                .filter(Matcher::matches)
                .map(amount -> amount.group(1))
                .toList();
        return !decimals.isEmpty() && decimals.stream().allMatch(part -> part.matches(",[0-9]{1,2}"))
                ? DecimalSign.COMMA
                : DecimalSign.POINT;
    }

    private DecimalSign decimalOf(List<Meaning> meanings) {
        int points = 0;
        int commas = 0;
        int unclear = 0;
        for (int i = 0; i < meanings.size(); i++) {
            if (isNumber(meanings.get(i))) {
                for (CsvTable.Row row : table.rows()) {
                    Matcher number = NUMBER.matcher(row.cell(i));
                    if (number.find()) {
                        points += DecimalSign.POINT.isSureOf(number.group()) ? 1 : 0;
                        commas += DecimalSign.COMMA.isSureOf(number.group()) ? 1 : 0;
                        unclear += number.group().indexOf(',') >= 0 ? 1 : 0;
                    }
                }
            }
        }
        boolean bySeparator = separator() == Separator.SEMICOLON && commas == points && unclear > 0;
        return commas > points || bySeparator ? DecimalSign.COMMA : DecimalSign.POINT;
    }

    private static boolean isNumber(Meaning meaning) {
        return meaning.isAmount()
                || meaning.isFigure()
                || meaning == Meaning.PRICE
                || meaning == Meaning.REORDER
                || meaning == Meaning.REORDER_G
                || meaning == Meaning.SPOONS;
    }

    /** What is worth a word, though it stands in nobody's way. */
    public List<String> remarks(CsvChoice choice) {
        List<String> remarks = new ArrayList<>();
        for (int i = 0; i < table.header().size(); i++) {
            Optional<Meaning> named = Meaning.ofHeader(table.header().get(i));
            if (choice.meanings().get(i) == Meaning.TOLD
                    && named.filter(it -> it == Meaning.TOLD).isEmpty()) {
                boolean twice = named.filter(choice.meanings()::contains).isPresent();
                remarks.add("Column " + (i + 1) + ", '"
                        + CellReader.shown(table.header().get(i)) + "', is left out"
                        + (twice ? ": another one says the same." : "."));
            }
        }
        if (table.header().contains(LotSheets.LEFT)) {
            remarks.add("Lots begin as full as they came: '" + LotSheets.LEFT + "' is told and not read.");
        }
        long shorter = table.rows().stream()
                .filter(row -> row.cells().size() < table.header().size())
                .count();
        if (shorter > 0) {
            remarks.add((shorter == 1 ? "One row has" : shorter + " rows have")
                    + " fewer cells than there are columns; what is missing counts as empty.");
        }
        return remarks;
    }

    /** Why no row can be read with a choice; empty where they can. */
    public List<Problem> standsInTheWay(CsvChoice choice) {
        List<Problem> problems = new ArrayList<>();
        Set<Meaning> seen = EnumSet.noneOf(Meaning.class);
        for (Meaning meaning : choice.meanings()) {
            if (meaning != Meaning.TOLD && !seen.add(meaning)) {
                problems.add(new Problem(
                        meaning.word(),
                        "two columns say '" + meaning.label() + "'",
                        "choose one of them, and leave the other out"));
            }
        }
        if (!seen.contains(Meaning.NAME) && !seen.contains(Meaning.RECIPE_NAME)) {
            missing(problems, "what " + choice.kind().one() + " is called");
        }
        if (choice.kind() == CsvKind.LOTS && seen.stream().noneMatch(Meaning::isAmount)) {
            missing(problems, "how much came");
        }
        if (choice.kind() == CsvKind.LOTS && !seen.contains(Meaning.RECEIVED)) {
            missing(problems, "the day it came");
        }
        return problems;
    }

    private static void missing(List<Problem> problems, String what) {
        problems.add(new Problem("", "no column says " + what, "choose it below, or add a column to the file"));
    }

    /**
     * What the rows tell of.
     *
     * @param read rows that could be read
     * @param troubles what is wrong with the others, in their order
     * @param notes what is worth a look in those that could be read
     */
    public record Rows(List<StockRow> read, List<CellTrouble> troubles, List<CellTrouble> notes) {

        /** Copies its lists. */
        public Rows {
            read = List.copyOf(read);
            troubles = List.copyOf(troubles);
            notes = List.copyOf(notes);
        }
    }

    /**
     * Reads the rows.
     *
     * @param choice how
     * @param currency the workshop's, for prices that name none
     * @return what they tell of; none where something stands in the way of them all
     */
    public Rows rows(CsvChoice choice, String currency) {
        if (!standsInTheWay(choice).isEmpty()) {
            return new Rows(List.of(), List.of(), List.of());
        }
        List<StockRow> read = new ArrayList<>();
        List<CellTrouble> troubles = new ArrayList<>();
        List<CellTrouble> notes = new ArrayList<>();
        for (CsvTable.Row row : table.rows()) {
            CellReader cells = new CellReader(row, choice.meanings(), table.header());
            new RowReader(cells, choice, currency.toUpperCase(Locale.ROOT))
                    .read(row.number())
                    .ifPresent(read::add);
            troubles.addAll(cells.troubles());
            notes.addAll(cells.troubles().isEmpty() ? cells.notes() : List.of());
        }
        return new Rows(read, troubles, notes);
    }
}
