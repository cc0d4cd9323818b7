package lyewright.cli;

import java.util.ArrayList;
import java.util.List;
import lyewright.makingsheet.MakingSheet;
import lyewright.words.RoomLeft;
import lyewright.words.WeighPlan;
import lyewright.words.WeighRow;
import lyewright.words.WeighVessel;

/** The part of a sheet that is ticked off at the balance. */
final class WeighText {

    private static final String TICK = "[ ]";

    private final MakingSheet sheet;
    private final WeighPlan plan;
    private final Page page;

    private WeighText(MakingSheet sheet, Page page) {
        this.sheet = sheet;
        this.plan = WeighPlan.of(sheet);
        this.page = page;
    }

    static void write(MakingSheet sheet, Page page) {
        new WeighText(sheet, page).write();
    }

    private void write() {
        page.heading("Weigh");
        notToBeMade(sheet, page);
        TextTable table = new TextTable(0, columns());
        for (WeighVessel vessel : plan.vessels()) {
            table.across("");
            table.across(vessel.heading());
            vessel.rows().forEach(row -> table.row(cells(row)));
        }
        page.table(table);
        page.blank();
        page.paragraph(plan.taring(), 0);
        page.paragraph(plan.balances(), 0);
        plan.room().forEach(this::room);
    }

    /** A sheet that is stopped says so wherever somebody might begin to follow it. */
    static void notToBeMade(MakingSheet sheet, Page page) {
        if (sheet.stopped()) {
            page.line("*** NOT TO BE MADE AS IT STANDS: see STOP at the head ***");
            page.blank();
        }
    }

    private TextTable.Column[] columns() {
        List<TextTable.Column> columns = new ArrayList<>();
        columns.add(TextTable.words(""));
        columns.add(TextTable.words(""));
        if (plan.portions()) {
            columns.add(TextTable.words("for"));
        }
        columns.add(TextTable.figures("weigh"));
        columns.add(TextTable.figures("balance reads"));
        columns.add(TextTable.words("balance"));
        columns.add(TextTable.figures("% of oils"));
        return columns.toArray(TextTable.Column[]::new);
    }

    private String[] cells(WeighRow row) {
        List<String> cells = new ArrayList<>(List.of(TICK, row.name()));
        if (plan.portions()) {
            cells.add(row.portion());
        }
        cells.addAll(List.of(row.weigh().text(), row.reads().text(), row.balance(), row.percentOfOils()));
        return cells.toArray(String[]::new);
    }

    private void room(RoomLeft room) {
        page.paragraph(
                room.text() + " If it is heavier, give its weight, as in --vessels \"" + room.vessel()
                        + ":312g\", and the sheet takes another balance.",
                0);
    }
}
