package lyewright.formula;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lyewright.formula.NotebookLine.Quantity;
import lyewright.formula.NotebookReader.Spot;
import lyewright.formula.NotebookText.Offer;

/** What the lines of a notebook may have meant, as whole lines that stand in their place. */
final class NotebookOffers {

    private static final Pattern EMPTY_BRACKETS = Pattern.compile("\\(\\s*\\)|\\[\\s*]");

    private final Map<Integer, List<Offer>> byLine = new HashMap<>();
    private final Map<Integer, String> unknown = new HashMap<>();

    void add(Spot spot, String label, String line) {
        byLine.computeIfAbsent(spot.number(), number -> new ArrayList<>()).add(new Offer(label, line));
    }

    /** Another amount in place of one. */
    void amount(Spot spot, Quantity old, String label, String amount) {
        add(
                spot,
                label,
                spot.text().substring(0, old.start()) + amount + spot.text().substring(old.end()));
    }

    /** The line without one of its amounts. */
    void without(Spot spot, Quantity gone, String label) {
        String rest = spot.text().substring(0, gone.start()) + spot.text().substring(gone.end());
        add(spot, label, Wording.tidy(EMPTY_BRACKETS.matcher(rest).replaceAll(" ")));
    }

    /** Another name in place of what was typed. */
    void name(Spot spot, NotebookLine line, Quantity amount, String typed, String label, String name) {
        Optional<Matcher> there = place(typed, spot.text());
        add(
                spot,
                label,
                there.isPresent()
                        ? there.get().replaceFirst(Matcher.quoteReplacement(name))
                        : Wording.tidy(
                                name + " " + spot.text().substring(amount.start(), amount.end()) + line.stageText()));
    }

    /** More words at the end of the line. */
    void end(Spot spot, String label, String words) {
        add(spot, label, spot.text().stripTrailing() + " " + words);
    }

    void unknown(Spot spot, String name) {
        unknown.put(spot.number(), name);
    }

    List<Offer> of(int line) {
        return byLine.getOrDefault(line, List.of());
    }

    Optional<String> unknown(int line) {
        return Optional.ofNullable(unknown.get(line));
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
}
