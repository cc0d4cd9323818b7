package lyewright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lyewright.makingsheet.MakingSheet;
import lyewright.why.Reason;
import lyewright.why.Spread;
import lyewright.words.Figures;

/** Reasons as a page of text, each read from top to bottom: the figure, its formula, what is put in, how sure, who says so. */
final class WhyText {

    private static final int DECIMALS = 6;

    private final Page page = new Page();
    private final MakingSheet sheet;

    private WhyText(MakingSheet sheet) {
        this.sheet = sheet;
    }

    /** Reasons, one after the other. */
    static String of(MakingSheet sheet, List<Reason> reasons) {
        WhyText text = new WhyText(sheet);
        text.title(CheckCommand.name(sheet.formula().formula()), "Why");
        reasons.forEach(text::reason);
        return text.end();
    }

    /** What can be asked, a line each; what comes in rows is one line that tells how to list them. */
    static String overview(MakingSheet sheet, List<Reason> reasons) {
        Map<String, Integer> rows = new LinkedHashMap<>();
        reasons.forEach(reason -> rows.merge(group(reason.path()), 1, Integer::sum));
        TextTable table = list();
        for (Reason reason : reasons) {
            if (!reason.path().contains("[")) {
                row(table, reason);
            }
        }
        TextTable more = new TextTable(0, TextTable.keys(""), TextTable.figures(""), TextTable.words("")).untitled();
        rows.forEach((group, count) -> {
            if (!group.isEmpty()) {
                more.row(group, Integer.toString(count), "figures");
            }
        });
        WhyText text = new WhyText(sheet);
        text.title(CheckCommand.name(sheet.formula().formula()), "What can be asked");
        text.page.table(table);
        text.page.heading("Further figures, listed when one of these is asked for");
        text.page.table(more);
        return text.end();
    }

    /** All figures given, a line each. */
    static String list(MakingSheet sheet, List<Reason> reasons) {
        TextTable table = list();
        reasons.forEach(reason -> row(table, reason));
        WhyText text = new WhyText(sheet);
        text.title(CheckCommand.name(sheet.formula().formula()), "What can be asked");
        text.page.table(table);
        return text.end();
    }

    private static TextTable list() {
        return new TextTable(0, TextTable.words(""), TextTable.figures(""), TextTable.keys(""), TextTable.keys(""))
                .untitled();
    }

    private static void row(TextTable table, Reason reason) {
        table.row(reason.title(), reason.value().isPresent() ? reason.text() : "none", reason.unit(), reason.path());
    }

    /** What a figure in rows is one of: all before the first bracket; empty for a figure that stands alone. */
    private static String group(String path) {
        return path.contains("[") ? path.substring(0, path.indexOf('[')) : "";
    }

    private String end() {
        page.blank();
        page.rule();
        page.ends("Lyewright", "tables of " + sheet.formula().tables().edition());
        return page.toString();
    }

    private void title(String left, String right) {
        page.blank();
        page.ends(left, right);
        page.rule();
    }

    private void reason(Reason reason) {
        title(reason.path(), reason.value().isPresent() ? figure(reason.text(), reason.unit()) : "none");
        page.paragraph(reason.title() + ".", 0);
        page.paragraph(reason.sentence(), 0);
        if (reason.value().isPresent()) {
            formula(reason);
            checks(reason.checks());
            inputs(reason);
            sure(reason);
            sources(reason.sources());
            notes(reason.notes());
        }
    }

    private static String figure(String text, String unit) {
        return unit.isEmpty() ? text : text + " " + unit;
    }

    private void formula(Reason reason) {
        page.heading("Formula");
        int width = width(reason.steps());
        for (int i = 0; i < reason.steps().size(); i++) {
            if (i == 1) {
                page.line("where");
            }
            step(reason.steps().get(i), width);
        }
    }

    private static int width(List<Reason.Step> steps) {
        return steps.stream().mapToInt(step -> Widths.of(step.name())).max().orElse(0) + 1;
    }

    private void step(Reason.Step step, int width) {
        page.hanging(Widths.left(step.name(), width) + "= ", step.formula());
        String meaning = step.meaning().isEmpty() ? "" : "   (" + step.meaning() + ")";
        page.hanging(" ".repeat(width) + "= ", figure(step.text(), step.unit()) + meaning);
    }

    private void checks(List<Reason.Check> checks) {
        for (Reason.Check check : checks) {
            page.heading("And so it fits");
            page.paragraph("The oils were tried until " + check.meaning() + ":", 0);
            List<Reason.Step> both = List.of(check.left(), check.right());
            both.forEach(side -> step(side, width(both)));
        }
    }

    private static TextTable numbers() {
        return new TextTable(0, TextTable.keys(""), TextTable.figures(""), TextTable.keys(""), TextTable.words(""))
                .untitled();
    }

    private void inputs(Reason reason) {
        if (reason.inputs().isEmpty()) {
            return;
        }
        page.heading("Put in");
        TextTable table = numbers();
        for (Reason.Input input : reason.inputs()) {
            table.row(input.name(), input.text(), input.unit(), input.meaning() + from(input, reason));
        }
        page.table(table);
    }

    private static String from(Reason.Input input, Reason reason) {
        return input.figure().map(path -> ": " + path).orElseGet(() -> mark(input.source(), reason));
    }

    private static String mark(String source, Reason reason) {
        int place = reason.sources().indexOf(source);
        return place < 0 ? "" : " [" + (place + 1) + "]";
    }

    private void sure(Reason reason) {
        if (reason.inputs().stream().noneMatch(input -> input.spread().isPresent())) {
            return;
        }
        page.heading("How sure");
        TextTable table = numbers();
        for (Reason.Input input : reason.inputs()) {
            input.spread()
                    .ifPresent(spread -> table.row(
                            input.name(), ends(spread), input.unit(), how(spread) + mark(spread.source(), reason)));
        }
        page.table(table);
    }

    private static String ends(Spread spread) {
        return upTo(spread.low()) + " to " + upTo(spread.high());
    }

    private static String upTo(double value) {
        return Figures.upTo(value, DECIMALS);
    }

    private static String how(Spread spread) {
        return switch (spread.kind()) {
            case RECTANGULAR -> "anywhere between";
            case NORMAL -> "in 19 cases of 20, as a certificate says";
            case TRAPEZOIDAL ->
                "evenly " + upTo(spread.evenLow()) + " to " + upTo(spread.evenHigh()) + ", rarer outside";
        };
    }

    private void sources(List<String> sources) {
        if (sources.isEmpty()) {
            return;
        }
        page.heading("Who says so");
        int width = sources.size() < 10 ? 4 : 5;
        for (int i = 0; i < sources.size(); i++) {
            page.hanging(Widths.left(String.format(Locale.ROOT, "[%d]", i + 1), width), sources.get(i));
        }
    }

    private void notes(List<String> notes) {
        if (notes.isEmpty()) {
            return;
        }
        page.blank();
        notes.forEach(note -> page.hanging(" note  ", note));
    }
}
