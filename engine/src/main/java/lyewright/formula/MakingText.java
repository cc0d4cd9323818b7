package lyewright.formula;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.measure.Decimal;
import lyewright.measure.Outcome;
import lyewright.measure.Temperature;
import lyewright.measure.TimeSpan;

/** Reads when and how: stages, the oven, the fading pour. */
final class MakingText {

    private static final String PORTION = "portion ";
    private static final String THEN_OFF = " then off";
    private static final String POUR_REMEDY = "write it as fade plain into kelp in 7";

    private MakingText() {}

    /** Reads {@code trace} or {@code portion kelp}. */
    static Outcome<Stage> stage(String text) {
        if (text.startsWith(PORTION)) {
            return Outcome.ok(Stage.portion(text.substring(PORTION.length())));
        }
        List<String> words = new ArrayList<>();
        for (Stage.Kind kind : Stage.Kind.values()) {
            if (kind != Stage.Kind.PORTION) {
                String word = Stage.of(kind).toString();
                if (word.equals(text)) {
                    return Outcome.ok(Stage.of(kind));
                }
                words.add(word);
            }
        }
        words.add("portion NAME");
        return text.equals("portion")
                ? Outcome.refused("'portion' does not say which", "write its name behind it")
                : Outcome.refused(Wording.quote(text) + " is not a stage", Wording.offer(text, words));
    }

    /** Reads {@code 55 C then off}, {@code 70 C for 2 h}, {@code 55 C}. */
    static Outcome<Process.Oven> oven(String text) {
        boolean thenOff = text.endsWith(THEN_OFF);
        String held = thenOff ? text.substring(0, text.length() - THEN_OFF.length()) : text;
        int hold = held.indexOf(" for ");
        if (hold < 0) {
            return Temperature.parse(held).then(at -> Outcome.ok(new Process.Oven(at, Optional.empty(), thenOff)));
        }
        return Temperature.parse(held.substring(0, hold))
                .then(at -> TimeSpan.parse(held.substring(hold + 5))
                        .then(time -> Outcome.ok(new Process.Oven(at, Optional.of(time), thenOff))));
    }

    /** Reads {@code fade plain into kelp in 7}. The rules keep the word into out of the names of portions that are poured so. */
    static Outcome<Process.Pour> pour(String text) {
        int in = text.lastIndexOf(" in ");
        if (!text.startsWith("fade ") || in < 5) {
            return Outcome.refused(Wording.quote(text) + " is not a way of pouring", POUR_REMEDY);
        }
        String both = text.substring(5, in);
        int into = both.indexOf(" into ");
        if (into < 0) {
            return Outcome.refused(Wording.quote(text) + " does not say into which portion", POUR_REMEDY);
        }
        String plain = both.substring(0, into);
        String coloured = both.substring(into + 6);
        return Decimal.parse(text.substring(in + 4))
                .then((BigDecimal layers) -> Outcome.ok(new Process.Pour(plain, coloured, layers)));
    }
}
