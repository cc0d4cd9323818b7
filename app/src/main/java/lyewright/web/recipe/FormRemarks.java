package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.formula.Comments;

/** Moves the remarks of additions along with their rows. */
final class FormRemarks {

    private static final String ADDITIONS = "additions";

    private static final Pattern ADDITION = Pattern.compile("(additions\\.[0-9]+)(.*)");

    private FormRemarks() {}

    /** The remarks at their new places; those of an addition that is gone stand above all additions. */
    static Comments moved(Comments remarks, Map<String, String> additions) {
        if (remarks.equals(Comments.NONE)) {
            return remarks;
        }
        Map<String, List<String>> before = new HashMap<>();
        Map<String, String> beside = new HashMap<>();
        new TreeMap<>(remarks.before()).forEach((path, texts) -> above(before, moved(path, additions), texts));
        new TreeMap<>(remarks.beside()).forEach((path, text) -> {
            String to = moved(path, additions);
            if (to.equals(ADDITIONS) && !path.equals(ADDITIONS)) {
                above(before, to, List.of(text));
            } else {
                beside.put(to, text);
            }
        });
        return new Comments(before, beside, remarks.after());
    }

    private static void above(Map<String, List<String>> before, String path, List<String> texts) {
        before.computeIfAbsent(path, at -> new ArrayList<>()).addAll(texts);
    }

    private static String moved(String path, Map<String, String> additions) {
        Matcher addition = ADDITION.matcher(path);
        if (!addition.matches()) {
            return path;
        }
        String to = additions.get(addition.group(1));
        return to == null ? ADDITIONS : to + addition.group(2);
    }
}
