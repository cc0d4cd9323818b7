package lyewright.web.recipe;

import java.util.List;

/**
 * A line of what is in a recipe.
 *
 * @param name what it is called
 * @param how when and how it goes in; empty where that is plain
 * @param written how much, as the maker wrote it
 * @param masses how much that is, by portion where it goes into several
 */
public record Ingredient(String name, String how, String written, List<Part> masses) {

    /** Copies its list. */
    public Ingredient {
        masses = List.copyOf(masses);
    }

    /** Whether the mass says no more than what is written. */
    public boolean plain() {
        return masses.size() == 1 && masses.get(0).mass().equals(written);
    }

    /**
     * One mass of it.
     *
     * @param where the portion, or what that part of it is for; empty where it is all of it
     * @param mass as the balance shows it
     * @param why where it says why it is that; empty of a sum
     */
    public record Part(String where, String mass, String why) {}
}
