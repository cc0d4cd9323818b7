package lyewright.cli;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.function.Function;

/**
 * How oils and additives are looked up: no name lists them all, a name shows the cards of what it fits, or a list where
 * that is too much to read.
 *
 * @param <T> oils or additives
 * @param all where to look
 * @param key a material's key
 * @param names what else it is called
 */
record Lookup<T>(Collection<T> all, Function<T, String> key, Function<T, String> names) {

    /** So many cards are read; more are looked through as a list. */
    private static final int MOST_CARDS = 8;

    Answer answer(
            String name,
            Function<Collection<T>, String> list,
            BiConsumer<T, Page> card,
            Function<String, Answer> unknown) {
        if (name.isEmpty()) {
            return Answer.print(list.apply(all));
        }
        List<T> found = matching(name);
        if (found.isEmpty()) {
            return unknown.apply(name);
        }
        if (found.size() > MOST_CARDS) {
            return Answer.print(list.apply(found));
        }
        Page page = new Page();
        for (T material : found) {
            page.blank();
            card.accept(material, page);
        }
        return Answer.print(page.toString());
    }

    /** The one with exactly that key, else all whose key or name holds what was typed. */
    private List<T> matching(String typed) {
        List<T> exact = all.stream().filter(m -> key.apply(m).equals(typed)).toList();
        if (!exact.isEmpty()) {
            return exact;
        }
        String words = typed.toLowerCase(Locale.ROOT);
        return all.stream()
                .filter(m -> key.apply(m).contains(words)
                        || names.apply(m).toLowerCase(Locale.ROOT).contains(words))
                .toList();
    }
}
