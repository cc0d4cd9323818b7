package lyewright.web.csv;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import lyewright.records.csv.CellTrouble;
import lyewright.records.csv.CsvChoice;
import lyewright.records.csv.CsvFile;
import lyewright.records.csv.CsvImport;
import lyewright.records.csv.CsvKind;
import lyewright.records.csv.DayOrder;
import lyewright.records.csv.DecimalSign;
import lyewright.records.csv.Meaning;
import lyewright.records.csv.Separator;
import lyewright.web.Frame;
import lyewright.web.csv.PreviewPage.Found;
import lyewright.web.csv.PreviewPage.Line;
import lyewright.web.csv.PreviewPage.Option;
import lyewright.web.csv.PreviewPage.Problems;
import lyewright.web.csv.PreviewPage.Select;
import lyewright.words.Sentences;

/** Shows how a file was understood. */
final class PreviewView {

    private static final int MOST_TOLD = 100;

    private PreviewView() {}

    static PreviewPage page(
            Frame frame,
            String address,
            String leftOut,
            String name,
            CsvFile file,
            CsvChoice choice,
            CsvImport.Result result) {
        return new PreviewPage(
                frame,
                address,
                result.wrong() == 0 ? "" : leftOut,
                name,
                understood(file, choice),
                result.told(),
                result.fresh(),
                file.standsInTheWay(choice).stream().map(Sentences::whole).toList(),
                file.remarks(choice),
                selects(file, choice),
                columns(file, choice),
                ChoiceFields.of(choice, file),
                problems(result.troubles()),
                problems(result.notes()),
                result.found().entrySet().stream()
                        .map(found -> new Found(found.getKey(), found.getValue()))
                        .toList(),
                SampleRows.of(choice.kind(), result));
    }

    private static String understood(CsvFile file, CsvChoice choice) {
        return "Read as " + file.encoding() + " with a " + file.separator().word() + " between cells and a decimal "
                + choice.decimal().word() + ": " + file.rows() + (file.rows() == 1 ? " row" : " rows") + " in "
                + file.columns().size() + (file.columns().size() == 1 ? " column." : " columns.");
    }

    static Problems problems(List<CellTrouble> all) {
        List<Line> told = all.stream().limit(MOST_TOLD).map(PreviewView::line).toList();
        return new Problems(told, all.size() - told.size());
    }

    private static Line line(CellTrouble trouble) {
        return new Line(trouble.row(), trouble.column(), trouble.cell(), Sentences.whole(trouble.problem()));
    }

    private static List<Select> selects(CsvFile file, CsvChoice choice) {
        return List.of(
                select(
                        ChoiceFields.KIND,
                        "Each row is",
                        CsvKind.values(),
                        CsvKind::word,
                        CsvKind::one,
                        it -> it == choice.kind()),
                select(
                        ChoiceFields.SEPARATOR,
                        "Between cells",
                        Separator.values(),
                        Separator::word,
                        Separator::word,
                        it -> it == file.separator()),
                select(
                        ChoiceFields.DECIMAL,
                        "Decimal sign",
                        DecimalSign.values(),
                        DecimalSign::word,
                        it -> it == DecimalSign.POINT ? "point: 2.5" : "comma: 2,5",
                        it -> it == choice.decimal()),
                select(
                        ChoiceFields.DAYS,
                        "First in days with strokes",
                        DayOrder.values(),
                        DayOrder::word,
                        DayOrder::label,
                        it -> it == choice.days()));
    }

    private static <T> Select select(
            String name,
            String label,
            T[] all,
            Function<T, String> word,
            Function<T, String> shown,
            Predicate<T> chosen) {
        return new Select(
                name,
                label,
                "",
                Arrays.stream(all)
                        .map(it -> new Option(word.apply(it), shown.apply(it), chosen.test(it)))
                        .toList());
    }

    private static List<Select> columns(CsvFile file, CsvChoice choice) {
        List<Select> columns = new ArrayList<>();
        for (int i = 0; i < file.columns().size(); i++) {
            Meaning says = choice.meanings().get(i);
            List<Option> options = new ArrayList<>();
            options.add(new Option(Meaning.TOLD.word(), Meaning.TOLD.label(), says == Meaning.TOLD));
            for (Meaning meaning : Meaning.values()) {
                if (meaning != Meaning.TOLD && meaning.isOf(choice.kind())) {
                    options.add(new Option(meaning.word(), meaning.label(), says == meaning));
                }
            }
            String label = file.columns().get(i).isEmpty()
                    ? "Column " + (i + 1)
                    : file.columns().get(i);
            String example = file.example(i);
            columns.add(new Select(
                    ChoiceFields.COLUMN + i, label, example.isEmpty() ? "nothing in it" : "as in " + example, options));
        }
        return columns;
    }
}
