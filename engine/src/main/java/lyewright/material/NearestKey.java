package lyewright.material;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Finds what somebody may have meant: the known words that need the fewest single-letter changes. */
public final class NearestKey {

    private static final int OFFERED = 3;
    private static final int LONGEST = 60;

    private NearestKey() {}

    /**
     * The nearest known words.
     *
     * @param word what was typed
     * @param known what is known
     * @return at most three, best first; none when nothing is near
     */
    public static List<String> among(String word, Collection<String> known) {
        if (word.length() > LONGEST) {
            return List.of();
        }
        int farthest = Math.max(2, word.length() / 3);
        record Near(String key, int distance) {}
        return known.stream()
                .map(key -> new Near(key, distance(word, key)))
                .filter(near -> near.distance() <= farthest)
                .sorted(Comparator.comparingInt(Near::distance).thenComparing(Near::key))
                .limit(OFFERED)
                .map(Near::key)
                .toList();
    }

    /** A word that holds the other, or is held by it, is one change away: {@code olive} and {@code olive-virgin}. */
    private static int distance(String typed, String key) {
        if (typed.length() >= 3
                && (key.startsWith(typed + "-") || key.endsWith("-" + typed) || typed.startsWith(key + "-"))) {
            return 1;
        }
        return changes(typed, key);
    }

    private static int changes(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int above = row[j];
                int replace = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(replace, 1 + Math.min(above, row[j - 1]));
                diagonal = above;
            }
        }
        return row[b.length()];
    }
}
