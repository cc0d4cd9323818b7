package lyewright.web.setting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.setting.Degrees;
import lyewright.records.setting.Market;
import lyewright.records.setting.Paper;
import lyewright.records.setting.Units;
import lyewright.records.setting.Workshop;

/**
 * What a workshop is set to, as typed and chosen. The fields are called as the records call them.
 *
 * @param name what it is called
 * @param units a word
 * @param degrees a word
 * @param currency a code
 * @param market a word
 * @param paper a word
 * @param sodiumPurity percent, or empty
 * @param potassiumPurity percent, or empty
 * @param holdBack percent
 */
record SettingForm(
        String name,
        String units,
        String degrees,
        String currency,
        String market,
        String paper,
        String sodiumPurity,
        String potassiumPurity,
        String holdBack) {

    static SettingForm of(Workshop workshop) {
        return new SettingForm(
                workshop.name(),
                word(workshop.units()),
                word(workshop.degrees()),
                workshop.currency(),
                word(workshop.market()),
                word(workshop.paper()),
                workshop.sodiumPurity().orElse(""),
                workshop.potassiumPurity().orElse(""),
                workshop.holdBack());
    }

    static SettingForm sent(UnaryOperator<String> field) {
        return new SettingForm(
                field.apply("name"),
                field.apply("units"),
                field.apply("degrees"),
                field.apply("currency"),
                field.apply("market"),
                field.apply("paper"),
                field.apply("sodiumPurity"),
                field.apply("potassiumPurity"),
                field.apply("holdBack"));
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    /** What is to be kept, or what was not chosen; the records judge the rest. */
    Outcome<Workshop> read() {
        List<Problem> problems = new ArrayList<>();
        Optional<Units> chosenUnits = chosen("units", units, Units.values(), problems);
        Optional<Degrees> chosenDegrees = chosen("degrees", degrees, Degrees.values(), problems);
        Optional<Market> chosenMarket = chosen("market", market, Market.values(), problems);
        Optional<Paper> chosenPaper = chosen("paper", paper, Paper.values(), problems);
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        return Outcome.ok(new Workshop(
                name.strip(),
                chosenUnits.orElseThrow(),
                chosenDegrees.orElseThrow(),
                currency.strip().toUpperCase(Locale.ROOT),
                chosenMarket.orElseThrow(),
                chosenPaper.orElseThrow(),
                purity(sodiumPurity),
                purity(potassiumPurity),
                percent(holdBack)));
    }

    private static <E extends Enum<E>> Optional<E> chosen(
            String field, String word, E[] values, List<Problem> problems) {
        Optional<E> value =
                Arrays.stream(values).filter(v -> word(v).equals(word)).findFirst();
        if (value.isEmpty()) {
            problems.add(new Problem(field, "nothing is chosen", "choose one"));
        }
        return value;
    }

    private static Optional<String> purity(String typed) {
        return typed.isBlank() ? Optional.empty() : Optional.of(typed.strip());
    }

    /** The label says percent. */
    private static String percent(String typed) {
        String text = typed.strip();
        return !text.isEmpty() && Character.isDigit(text.charAt(text.length() - 1)) ? text + " %" : text;
    }

    /** The same form gives the same word, in every run of the application. */
    String seen() {
        return Integer.toHexString(toString().hashCode());
    }
}
