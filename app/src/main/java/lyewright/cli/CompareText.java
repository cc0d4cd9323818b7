package lyewright.cli;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lyewright.formula.MaterialChange;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.CautionChange;
import lyewright.makingsheet.CautionChange.Change;
import lyewright.makingsheet.Comparison;
import lyewright.makingsheet.Comparison.Group;
import lyewright.makingsheet.Comparison.Row;
import lyewright.makingsheet.MakingSheet;
import lyewright.words.CompareWords;
import lyewright.words.Figures;
import lyewright.words.MaterialChangeWords;

/** A comparison as a page of text: the change in a sentence, the figures that differ, the cautions that come or go. */
final class CompareText {

    private static final String NONE = "-";

    private final Comparison comparison;
    private final CompareWords words;
    private final Page page = new Page();

    private CompareText(Comparison comparison) {
        this.comparison = comparison;
        this.words = CompareWords.asAsked(comparison);
    }

    /**
     * The page.
     *
     * @param comparison what changes
     * @param fileA the first file's name as it was typed
     * @param fileB the second's
     * @param said whether it was said how much to make
     */
    static String of(Comparison comparison, String fileA, String fileB, boolean said) {
        return new CompareText(comparison).write(fileA, fileB, said);
    }

    private String write(String fileA, String fileB, boolean said) {
        page.ends("What changes from A to B", said ? "each filled as asked" : howMuch());
        page.rule();
        title("A", comparison.a(), fileA);
        title("B", comparison.b(), fileB);
        if (!comparison.premixes().isEmpty()) {
            page.paragraph(
                    "Of a premix each oil counts with the others: " + String.join(", ", comparison.premixes()) + ".",
                    0);
        }
        page.blank();
        if (comparison.differs()) {
            words.summary().forEach(sentence -> page.paragraph(sentence, 0));
            figures();
            page.blank();
            words.same().ifPresent(same -> page.paragraph(same, 0));
        } else {
            page.paragraph(words.nothing(), 0);
        }
        materials();
        cautions();
        page.blank();
        page.rule();
        page.ends("Lyewright", "tables of " + comparison.b().formula().tables().edition());
        return page.toString();
    }

    /** Why the same oils may take another alkali: whose figures they have. */
    private void materials() {
        List<MaterialChange> changes = comparison.materials();
        if (!changes.isEmpty()) {
            page.heading("Figures of the materials");
            changes.forEach(change -> page.hanging(" ", MaterialChangeWords.fromTo(change)));
        }
    }

    private String howMuch() {
        boolean a = comparison.a().formula().formula().inMasses();
        boolean b = comparison.b().formula().formula().inMasses();
        if (a == b) {
            return a ? "each as written" : "each for 1000 g of oils";
        }
        return (a ? "A" : "B") + " as written, " + (a ? "B" : "A") + " for 1000 g of oils";
    }

    private void title(String letter, MakingSheet sheet, String file) {
        page.hanging(
                letter + "  ",
                CheckCommand.name(sheet.formula().formula()) + " (" + file + ")"
                        + (sheet.stopped() ? ", not to be made as it stands" : ""));
    }

    private void figures() {
        TextTable table = new TextTable(
                0,
                TextTable.words("what"),
                TextTable.figures("A"),
                TextTable.figures("B"),
                TextTable.figures("change"),
                TextTable.keys(""));
        boolean any = false;
        for (Group group : Group.values()) {
            List<Row> rows = comparison.of(group).stream().filter(Row::differs).toList();
            if (!rows.isEmpty() && any) {
                table.across("");
            }
            for (Row row : rows) {
                table.row(row.label(), value(row.a(), row), value(row.b(), row), change(row), row.unit());
                any = true;
            }
        }
        if (any) {
            page.blank();
            page.table(table);
        }
    }

    private static String value(Optional<Double> value, Row row) {
        return value.map(v -> Figures.fixed(v, row.decimals())).orElse(NONE);
    }

    private static String change(Row row) {
        return row.shownDifference().map(CompareText::signed).orElse(NONE);
    }

    private static String signed(BigDecimal change) {
        return (change.signum() > 0 ? "+" : "") + change.toPlainString();
    }

    /** Notes that stay are only counted; whatever asks for care is told each time. */
    private void cautions() {
        List<CautionChange> told =
                comparison.cautions().stream().filter(CompareText::told).toList();
        if (!told.isEmpty()) {
            page.heading("Cautions");
            told.forEach(this::caution);
        }
        int staying = comparison.cautions().size() - told.size();
        if (staying > 0 && comparison.differs()) {
            page.blank();
            page.line(staying == 1 ? "One note is raised by both." : staying + " notes are raised by both.");
        }
    }

    private static boolean told(CautionChange change) {
        return change.change() != Change.STAYS || change.caution().level() != Caution.Level.NOTE;
    }

    private void caution(CautionChange change) {
        Caution caution = change.caution();
        String text = change.change() == Change.GOES || keepsCare(change)
                ? caution.text()
                : caution.text() + " " + caution.remedy() + " [" + caution.source() + "]";
        page.hanging(" " + Widths.left(verb(change), 8) + Widths.left(level(caution), 6), text);
    }

    /** What both say alike is in either's sheet, with what to do. */
    private static boolean keepsCare(CautionChange change) {
        return change.change() == Change.STAYS && change.caution().level() == Caution.Level.CARE;
    }

    private static String verb(CautionChange change) {
        return switch (change.change()) {
            case COMES -> "comes";
            case GOES -> "goes";
            case GRAVER -> "graver";
            case MILDER -> "milder";
            case CHANGES -> "differs";
            case STAYS -> "stays";
        };
    }

    private static String level(Caution caution) {
        String word = caution.level().word();
        return caution.level() == Caution.Level.NOTE ? word : word.toUpperCase(Locale.ROOT);
    }
}
