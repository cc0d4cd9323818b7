package lyewright.web.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lyewright.records.csv.CsvChoice;
import lyewright.records.csv.CsvFile;
import lyewright.records.csv.CsvKind;
import lyewright.records.csv.DayOrder;
import lyewright.records.csv.DecimalSign;
import lyewright.records.csv.Meaning;
import lyewright.records.csv.Separator;
import org.jspecify.annotations.Nullable;

/** How a file is read, as the fields of a form say it; what they do not say is guessed. */
final class ChoiceFields {

    static final String KIND = "kind";
    static final String WAS_KIND = "was-kind";
    static final String SEPARATOR = "separator";
    static final String WAS_SEPARATOR = "was-separator";
    static final String DECIMAL = "decimal";
    static final String WAS_DECIMAL = "was-decimal";
    static final String DAYS = "days";
    static final String COLUMN = "column-";

    private ChoiceFields() {}

    /** A field with its value. */
    record Field(String name, String value) {}

    /** Where the values of fields come from. */
    interface Values extends UnaryOperator<@Nullable String> {}

    static Optional<Separator> separator(Values fields) {
        return said(fields, SEPARATOR).flatMap(Separator::ofWord);
    }

    /**
     * How a file is read. The columns of another kind or of another separator are guessed anew, and so is the decimal sign by what the
     * columns say, unless another was chosen than the one that was guessed.
     */
    static CsvChoice choice(Values fields, CsvFile file) {
        Optional<CsvKind> kind = said(fields, KIND).flatMap(CsvKind::ofWord);
        CsvChoice guess = kind.map(file::guess).orElseGet(file::guess);
        boolean same = kind.isPresent()
                && said(fields, WAS_KIND).equals(said(fields, KIND))
                && said(fields, WAS_SEPARATOR).equals(said(fields, SEPARATOR));
        List<Meaning> meanings = new ArrayList<>(guess.meanings());
        for (int i = 0; same && i < meanings.size(); i++) {
            Optional<Meaning> said = said(fields, COLUMN + i).flatMap(Meaning::ofWord);
            meanings.set(i, said.filter(it -> it.isOf(guess.kind())).orElse(meanings.get(i)));
        }
        return new CsvChoice(
                guess.kind(),
                meanings,
                said(fields, DECIMAL)
                        .filter(it -> same && !said(fields, WAS_DECIMAL).equals(Optional.of(it)))
                        .flatMap(DecimalSign::ofWord)
                        .orElseGet(() -> file.decimal(meanings)),
                said(fields, DAYS).flatMap(DayOrder::ofWord).orElse(DayOrder.ASKED));
    }

    private static Optional<String> said(Values fields, String name) {
        return Optional.ofNullable(fields.apply(name));
    }

    /** The fields that say a choice. */
    static List<Field> of(CsvChoice choice, CsvFile file) {
        List<Field> fields = new ArrayList<>();
        fields.add(new Field(KIND, choice.kind().word()));
        fields.add(new Field(WAS_KIND, choice.kind().word()));
        fields.add(new Field(SEPARATOR, file.separator().word()));
        fields.add(new Field(WAS_SEPARATOR, file.separator().word()));
        fields.add(new Field(DECIMAL, choice.decimal().word()));
        fields.add(new Field(WAS_DECIMAL, file.decimal(choice.meanings()).word()));
        fields.add(new Field(DAYS, choice.days().word()));
        for (int i = 0; i < choice.meanings().size(); i++) {
            fields.add(new Field(COLUMN + i, choice.meanings().get(i).word()));
        }
        return fields;
    }
}
