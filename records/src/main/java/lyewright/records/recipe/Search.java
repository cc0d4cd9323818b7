package lyewright.records.recipe;

import java.util.List;
import java.util.stream.Stream;
import lyewright.records.store.NameOrder;

/**
 * What is looked for among the recipes.
 *
 * @param words all of which must be found in a recipe's name, its oils' keys or its notes; case and accents do not count;
 *     empty for every recipe
 * @param page which page, from 1
 * @param size recipes on a page, 1 to {@value #LARGEST_PAGE}
 */
public record Search(String words, int page, int size) {

    /** The most recipes on a page. */
    public static final int LARGEST_PAGE = 200;

    private static final int MOST_WORDS = 8;
    private static final int LONGEST_WORD = 60;

    /** Brings page and size within their bounds. */
    public Search {
        page = Math.max(1, page);
        size = Math.min(LARGEST_PAGE, Math.max(1, size));
    }

    /** Every recipe, by pages. */
    public static Search all(int page, int size) {
        return new Search("", page, size);
    }

    /** The words as they stand in what is looked through. */
    List<String> folded() {
        return Stream.of(NameOrder.folded(words).strip().split("\\s+"))
                .filter(word -> !word.isEmpty())
                .limit(MOST_WORDS)
                .map(word -> word.length() > LONGEST_WORD ? word.substring(0, LONGEST_WORD) : word)
                .toList();
    }

    /** How many recipes come before the page. */
    long before() {
        return (page - 1L) * size;
    }
}
