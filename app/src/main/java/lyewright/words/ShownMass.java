package lyewright.words;

import java.util.List;
import java.util.stream.Collectors;

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

    /** On one line: {@code 0.75 oz (21.26 g)}. */
    public String text() {
        return shown + also.stream().map(other -> " (" + other + ")").collect(Collectors.joining());
    }
}
