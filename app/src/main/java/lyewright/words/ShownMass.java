package lyewright.words;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A mass as a balance shows it, and the same in other units for whoever reads those.
 *
 * @param shown what the balance shows, with its unit, such as {@code 0.75 oz}
 * @param also the same in other units, such as {@code 21.26 g}; often none
 */
public record ShownMass(String shown, List<String> also) {

    /** Copies its list. */
    public ShownMass {
        also = List.copyOf(also);
    }

    /** The same with one more way of saying it. */
    ShownMass and(String other) {
        return new ShownMass(
                shown, Stream.concat(also.stream(), Stream.of(other)).toList());
    }

    /** On one line: {@code 0.75 oz (21.26 g)}. */
    public String text() {
        return shown + also.stream().map(other -> " (" + other + ")").collect(Collectors.joining());
    }
}
