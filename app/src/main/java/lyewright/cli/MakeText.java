package lyewright.cli;

import java.util.List;
import lyewright.makingsheet.MakingSheet;
import lyewright.words.MakingStep;
import lyewright.words.MakingSteps;
import lyewright.words.Practices;
import lyewright.words.StepTable;

/** The part of a sheet that is followed step by step once everything is weighed. */
final class MakeText {

    private static final int INDENT = 5;

    private MakeText() {}

    static void write(MakingSheet sheet, Page page) {
        page.heading("Make");
        WeighText.notToBeMade(sheet, page);
        for (MakingStep step : MakingSteps.of(sheet)) {
            page.hanging(Widths.right(step.number() + ".", 3) + "  ", step.text());
            step.table().ifPresent(table -> page.table(table(table)));
        }
        page.line(" ".repeat(INDENT) + Practices.MEANING);
    }

    private static TextTable table(StepTable said) {
        TextTable table = new TextTable(
                INDENT, said.columns().stream().map(MakeText::column).toArray(TextTable.Column[]::new));
        if (!said.titled()) {
            table.untitled();
        }
        for (StepTable.Group group : said.groups()) {
            if (!group.heading().isEmpty()) {
                table.across("");
                table.across(group.heading());
            }
            for (List<String> row : group.rows()) {
                table.row(row.toArray(String[]::new));
            }
        }
        return table;
    }

    private static TextTable.Column column(StepTable.Column column) {
        return column.figures() ? TextTable.figures(column.title()) : TextTable.words(column.title());
    }
}
