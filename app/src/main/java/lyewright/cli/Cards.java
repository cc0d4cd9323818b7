package lyewright.cli;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import lyewright.material.Names;

/** What the cards of oils and additives have in common. */
final class Cards {

    private Cards() {}

    /** A line of a card, if there is anything to say. */
    static void optional(String label, String what, String source, int labelWidth, Page page) {
        if (!what.isBlank()) {
            page.pair(label, what + OilCard.source(source), labelWidth);
        }
    }

    /** What it is called on paper. */
    static void names(Names names, int labelWidth, Page page) {
        optional("INCI", names.inci(), names.inciSource(), labelWidth, page);
        optional("CAS", names.cas(), names.casSource(), labelWidth, page);
        optional("EC", names.ec(), "", labelWidth, page);
    }

    /**
     * What a typed name stands for: the one with exactly that key, else all whose key or name holds it.
     *
     * @param <T> oils or additives
     * @param all where to look
     * @param typed what was typed
     * @param key a material's key
     * @param name a material's name
     * @return none if nothing fits
     */
    static <T> List<T> matching(Collection<T> all, String typed, Function<T, String> key, Function<T, String> name) {
        List<T> exact = all.stream().filter(m -> key.apply(m).equals(typed)).toList();
        if (!exact.isEmpty()) {
            return exact;
        }
        String words = typed.toLowerCase(Locale.ROOT);
        return all.stream()
                .filter(m -> key.apply(m).contains(words)
                        || name.apply(m).toLowerCase(Locale.ROOT).contains(words))
                .toList();
    }
}
