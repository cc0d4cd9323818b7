package lyewright.web.start;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lyewright.material.Additive;
import lyewright.material.Oil;
import lyewright.material.Tables;
import lyewright.measure.Problem;
import lyewright.words.Sentences;

/**
 * Something that a line may have meant, to be taken with one click.
 *
 * @param label its name
 * @param line the whole line with it
 */
public record Choice(String label, String line) {

    /** How the reader says what a name may have meant. */
    private static final Pattern MAY_BE = Pattern.compile("^'(.*)' may (?:be|mean) (.*)$");

    private static final Pattern UNKNOWN = Pattern.compile("^'(.*)' is not known$");
    private static final Pattern DID_YOU_MEAN = Pattern.compile("^did you mean (.*)\\?$");
    private static final Pattern BETWEEN = Pattern.compile(", | or ");

    /** What a problem offers for its line; none where it offers nothing, or not all that there is. */
    static List<Choice> of(Problem problem, String line) {
        Matcher mayBe = MAY_BE.matcher(problem.what());
        if (mayBe.matches()) {
            return choices(mayBe.group(1), mayBe.group(2), line);
        }
        Matcher unknown = UNKNOWN.matcher(problem.what());
        Matcher meant = DID_YOU_MEAN.matcher(problem.remedy());
        return unknown.matches() && meant.matches() ? choices(unknown.group(1), meant.group(1), line) : List.of();
    }

    /** Where the choices stand beneath, their names need not stand in the sentence too. */
    static String question(Problem problem) {
        Matcher mayBe = MAY_BE.matcher(problem.what());
        return mayBe.matches() && !mayBe.group(2).endsWith(" more")
                ? "Which '" + mayBe.group(1) + "' is it?"
                : Sentences.two(problem);
    }

    private static List<Choice> choices(String typed, String offered, String line) {
        Optional<Matcher> there = place(typed, line);
        if (there.isEmpty()) {
            return List.of();
        }
        return Arrays.stream(BETWEEN.split(offered))
                .filter(word -> !word.startsWith("one of "))
                .map(word -> new Choice(label(word), there.get().replaceFirst(Matcher.quoteReplacement(word))))
                .toList();
    }

    /** Where the name stands in its line, however it is spaced. */
    private static Optional<Matcher> place(String typed, String line) {
        String spaced = Arrays.stream(typed.strip().split(" "))
                .filter(word -> !word.isEmpty())
                .map(Pattern::quote)
                .collect(Collectors.joining("[\\s\u00a0\u202f]+"));
        Matcher matcher = Pattern.compile(spaced).matcher(line);
        return !spaced.isEmpty() && matcher.find() ? Optional.of(matcher) : Optional.empty();
    }

    private static String label(String word) {
        Tables tables = Tables.bundled();
        return tables.oil(word)
                .map(Oil::name)
                .or(() -> tables.additive(word).map(Additive::name))
                .orElse(word);
    }
}
