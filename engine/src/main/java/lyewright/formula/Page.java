package lyewright.formula;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The lines of a formula file as it will be written, and where on them each comment goes. */
final class Page {

    private static final String INDENT = "  ";

    private final List<Line> lines = new ArrayList<>();

    /**
     * One line.
     *
     * @param above the path whose comments stand on the lines above
     * @param beside the path whose comment stands at its end
     * @param depth how far it is indented
     * @param text what it says
     * @param block the lines of a text that follow it
     */
    private record Line(String above, String beside, int depth, String text, List<String> block) {}

    void line(String path, int depth, String text) {
        lines.add(new Line(path, path, depth, text, List.of()));
    }

    void block(String path, int depth, String text, List<String> block) {
        lines.add(new Line(path, path, depth, text, block));
    }

    /** The first line of a list's item, which stands for the item and for its first entry. */
    void item(String item, String first, int depth, String text) {
        lines.add(new Line(item, first, depth, text, List.of()));
    }

    /**
     * Moves each comment to an entry that has a line. A comment on something that has none goes to the entry around it, or to
     * the end of the file; of two beside one line the second goes above it.
     */
    Comments settle(Comments comments) {
        return new Settling().settle(comments);
    }

    private final class Settling {
        private final Map<String, String> homesAbove = new HashMap<>();
        private final Map<String, String> homesBeside = new HashMap<>();
        private final Map<String, List<String>> before = new HashMap<>();
        private final Map<String, String> beside = new HashMap<>();
        private final List<String> after = new ArrayList<>();

        Settling() {
            homesAbove.put("", "");
            for (Line line : lines) {
                homesAbove.put(line.above(), line.above());
                homesAbove.put(line.beside(), line.above());
                homesBeside.put(line.beside(), line.beside());
                homesBeside.put(line.above(), line.beside());
            }
        }

        Comments settle(Comments comments) {
            // those already at home first, so that they keep their place; the others in the order of their names
            for (String path : inOrder(comments.before().keySet(), homesAbove)) {
                String home = home(path, homesAbove);
                comments.before().getOrDefault(path, List.of()).forEach(text -> putAbove(home, text));
            }
            for (String path : inOrder(comments.beside().keySet(), homesBeside)) {
                String home = home(path, homesBeside);
                String text = tidy(comments.beside().getOrDefault(path, ""));
                if (home == null || beside.putIfAbsent(home, text) != null) {
                    putAbove(home == null ? null : homesAbove.get(home), text);
                }
            }
            comments.after().forEach(text -> after.add(tidy(text)));
            return new Comments(before, beside, after);
        }

        private void putAbove(@Nullable String home, String text) {
            if (home == null) {
                after.add(tidy(text));
            } else {
                before.computeIfAbsent(home, h -> new ArrayList<>(1)).add(tidy(text));
            }
        }

        private static List<String> inOrder(Set<String> paths, Map<String, String> homes) {
            List<String> settled = new ArrayList<>();
            List<String> others = new ArrayList<>();
            for (String path : new TreeSet<>(paths)) {
                (path.equals(homes.get(path)) ? settled : others).add(path);
            }
            settled.addAll(others);
            return settled;
        }

        private static @Nullable String home(String path, Map<String, String> homes) {
            String at = path;
            while (!at.isEmpty() && !homes.containsKey(at)) {
                at = Places.enclosing(at);
            }
            return at.isEmpty() && !path.isEmpty() ? null : homes.get(at);
        }

        /** One line, no control characters, nothing but text at its end. */
        private static String tidy(String text) {
            StringBuilder tidy = new StringBuilder(text.length());
            text.codePoints()
                    .forEach(c -> tidy.appendCodePoint(
                            c == '\t' || (Characters.isText(c) && !Characters.isLineEnd(c)) ? c : ' '));
            return tidy.toString().stripTrailing();
        }
    }

    /** The whole text, with comments that are settled. */
    String text(Comments comments) {
        StringBuilder out = new StringBuilder();
        Set<String> told = new HashSet<>();
        if (comments.before().containsKey("")) {
            comments.before().getOrDefault("", List.of()).forEach(text -> comment(out, 0, text));
            out.append('\n');
        }
        for (Line line : lines) {
            if (told.add("above " + line.above())) {
                comments.before()
                        .getOrDefault(line.above(), List.of())
                        .forEach(text -> comment(out, line.depth(), text));
            }
            out.append(INDENT.repeat(line.depth())).append(line.text());
            String beside = comments.beside().get(line.beside());
            if (beside != null && told.add("beside " + line.beside())) {
                out.append("  #").append(beside);
            }
            out.append('\n');
            for (String text : line.block()) {
                out.append(text.isEmpty() ? "" : INDENT.repeat(line.depth() + 1) + text)
                        .append('\n');
            }
        }
        comments.after().forEach(text -> comment(out, 0, text));
        return out.toString();
    }

    private static void comment(StringBuilder out, int depth, String text) {
        out.append(INDENT.repeat(depth)).append('#').append(text).append('\n');
    }
}
