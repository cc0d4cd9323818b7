package lyewright.formula;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/** Words as they may be misspelt: a letter too many, too few, another, or two the wrong way round. */
final class NearWords {

    private static final int LONG = 7;
    private static final int SHORT = 4;
    private static final int LONGEST = 24;

    private NearWords() {}

    /** The known words that one word may have been; none for very short ones, which are near to everything. */
    static List<String> of(String typed, Collection<String> known) {
        List<String> near = new ArrayList<>();
        if (typed.length() < SHORT || typed.length() > LONGEST) {
            return near;
        }
        int farthest = typed.length() < LONG ? 1 : 2;
        int best = farthest;
        for (String word : known) {
            if (word.length() >= SHORT && Math.abs(word.length() - typed.length()) <= best) {
                int changes = changes(typed, word);
                if (changes < best) {
                    near.clear();
                    best = changes;
                }
                if (changes == best) {
                    near.add(word);
                }
            }
        }
        return near;
    }

    /** Whether every word is known or nearly so. */
    static boolean areNear(Set<String> typed, Collection<String> known) {
        return !typed.isEmpty()
                && typed.stream()
                        .allMatch(
                                word -> known.contains(word) || !of(word, known).isEmpty());
    }

    /** Single letters changed, neighbours swapped being one change. */
    private static int changes(String a, String b) {
        int[][] far = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                far[i][j] = i == 0 || j == 0 ? i + j : step(far, a, b, i, j);
            }
        }
        return far[a.length()][b.length()];
    }

    private static int step(int[][] far, String a, String b, int i, int j) {
        int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(far[i - 1][j - 1] + same, 1 + Math.min(far[i - 1][j], far[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, far[i - 2][j - 2] + 1) : least;
    }
}
