package lyewright.web.recipe;

import java.util.List;
import lyewright.web.Frame;

/**
 * The list of recipes.
 *
 * @param frame around it
 * @param words looked for, as typed
 * @param cards what was found, one page of it
 * @param drafts new recipes that are not saved yet
 * @param pager which page
 */
public record ListPage(Frame frame, String words, List<RecipeCard> cards, List<DraftCard> drafts, Pager pager) {

    /** Copies its lists. */
    public ListPage {
        cards = List.copyOf(cards);
        drafts = List.copyOf(drafts);
    }

    /**
     * A new recipe that is not saved yet.
     *
     * @param address where it goes on
     * @param name as far as it has one
     * @param changed when it was typed at last, as a date
     */
    public record DraftCard(String address, String name, String changed) {}

    /**
     * Which page of how many.
     *
     * @param number from 1
     * @param pages at least 1
     * @param total how many on all pages
     * @param address of a page, but for its number
     */
    public record Pager(int number, int pages, long total, String address) {

        /** The address of a page. */
        public String page(int of) {
            return address + (address.contains("?") ? "&" : "?") + "page=" + of;
        }
    }

    /** Whether there is nothing because nothing was ever kept, not because nothing was found. */
    public boolean isEmpty() {
        return words.isBlank() && pager.total() == 0 && drafts.isEmpty();
    }

    /** How many were found, in words. */
    public String found() {
        if (words.isBlank()) {
            return pager.total() == 1 ? "1 recipe" : pager.total() + " recipes";
        }
        return pager.total() == 1 ? "1 recipe found" : pager.total() + " recipes found";
    }
}
