package lyewright.cli;

import java.util.List;
import java.util.Locale;
import lyewright.formula.Formula;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Figure;
import lyewright.why.Reason;

/** Reasons as pages of text, each read from top to bottom: the figure, its formula, what is put in, how sure, who says so. */
final class WhyText {

    private static final int WIDEST_NAME = 32;

    private final Page page = new Page();
    private final MakingSheet sheet;

    private WhyText(MakingSheet sheet) {
        this.sheet = sheet;
    }

    static String of(MakingSheet sheet, List<Reason> reasons) {
        WhyText text = new WhyText(sheet);
        reasons.forEach(text::reason);
        text.page.blank();
        text.page.rule();
        text.page.ends("Lyewright", "tables of " + sheet.formula().tables().edition());
        return text.page.toString();
    }

    private void reason(Reason reason) {
        Formula formula = sheet.formula().formula();
        page.blank();
        page.ends(reason.path(), formula.recipe() + ", version " + formula.version());
        page.rule();
        page.line(reason.title() + (reason.value().isPresent() ? ": " + figure(reason.text(), reason.unit()) : ""));
        page.paragraph(reason.sentence(), 0);
        if (reason.value().isEmpty()) {
            return;
        }
        formula(reason);
        inputs(reason.inputs());
        sure(reason.inputs());
        sources(reason);
        notes(reason.notes());
    }

    private static String figure(String text, String unit) {
        return unit.isEmpty() ? text : text + " " + unit;
    }

    private void formula(Reason reason) {
        page.heading("Formula");
        int width = reason.steps().stream()
                        .mapToInt(step -> Widths.of(step.name()))
                        .max()
                        .orElse(0)
                + 1;
        for (int i = 0; i < reason.steps().size(); i++) {
            Reason.Step step = reason.steps().get(i);
            if (i == 1) {
                page.line("where");
            }
            page.hanging(Widths.left(step.name(), width) + "= ", step.formula());
            String meaning = step.meaning().isEmpty() ? "" : "   (" + step.meaning() + ")";
            page.line(" ".repeat(width) + "= " + figure(step.text(), step.unit()) + meaning);
        }
    }

    private void inputs(List<Reason.Input> inputs) {
        if (inputs.isEmpty()) {
            return;
        }
        page.heading("Put in");
        TextTable table = new TextTable(
                        0, TextTable.keys(""), TextTable.figures(""), TextTable.keys(""), TextTable.words(""))
                .untitled();
        List<String> sources = inputs.stream()
                .map(Reason.Input::source)
                .filter(s -> !s.isBlank())
                .distinct()
                .toList();
        for (Reason.Input input : inputs) {
            table.row(input.name(), input.text(), input.unit(), input.meaning() + from(input, sources));
        }
        page.table(table);
    }

    private static String from(Reason.Input input, List<String> sources) {
        if (input.figure().isPresent()) {
            return " (" + input.figure().get() + ")";
        }
        return " [" + (sources.indexOf(input.source()) + 1) + "]";
    }

    private void sure(List<Reason.Input> inputs) {
        if (inputs.stream().noneMatch(i -> i.spread().isPresent())) {
            return;
        }
        page.heading("How sure");
        TextTable table = new TextTable(
                        0, TextTable.keys(""), TextTable.figures(""), TextTable.keys(""), TextTable.words(""))
                .untitled();
        for (Reason.Input input : inputs) {
            input.spread().ifPresent(s -> table.row(input.name(), ends(s), input.unit(), how(s)));
        }
        page.table(table);
    }

    private static String ends(Figure spread) {
        return Figures.upTo(spread.low(), 4) + " to " + Figures.upTo(spread.high(), 4);
    }

    private static String how(Figure spread) {
        return switch (spread.spread()) {
            case EXACT -> "exact";
            case RECTANGULAR -> "anywhere between; " + spread.source();
            case NORMAL -> "95 % of a certificate's; " + spread.source();
        };
    }

    private void sources(Reason reason) {
        List<String> sources = reason.inputs().stream()
                .map(Reason.Input::source)
                .filter(s -> !s.isBlank())
                .distinct()
                .toList();
        if (sources.isEmpty()) {
            return;
        }
        page.heading("Who says so");
        for (int i = 0; i < sources.size(); i++) {
            page.hanging(String.format(Locale.ROOT, "[%d] ", i + 1), sources.get(i));
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
