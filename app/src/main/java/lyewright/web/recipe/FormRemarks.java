package lyewright.web.recipe;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.formula.Comments;

/** The remarks of a form: as a field, and moved along with the rows of their additions. */
final class FormRemarks {

    private static final String ADDITIONS = "additions";

    private static final Pattern ADDITION = Pattern.compile("(additions\\.[0-9]+)(.*)");

    /** How the remark begins that a notebook's line leaves. */
    private static final String TYPED = "typed:";

    private static final ObjectMapper JSON = new ObjectMapper();

    private FormRemarks() {}

    /** Remarks as the text of one field; empty without any. */
    static String write(Comments remarks) {
        if (remarks.equals(Comments.NONE)) {
            return "";
        }
        ObjectNode root = JSON.createObjectNode();
        root.set("before", JSON.valueToTree(new TreeMap<>(remarks.before())));
        root.set("beside", JSON.valueToTree(new TreeMap<>(remarks.beside())));
        root.set("after", JSON.valueToTree(remarks.after()));
        return root.toString();
    }

    /** What {@link #write} wrote; no remarks where it is something else. */
    static Comments read(String text) {
        if (text.isBlank()) {
            return Comments.NONE;
        }
        try {
            JsonNode root = JSON.readTree(text);
            Map<String, List<String>> before = new HashMap<>();
            root.path("before").properties().forEach(entry -> before.put(entry.getKey(), list(entry.getValue())));
            Map<String, String> beside = new HashMap<>();
            root.path("beside")
                    .properties()
                    .forEach(
                            entry -> beside.put(entry.getKey(), entry.getValue().asText("")));
            return new Comments(before, beside, list(root.path("after")));
        } catch (JsonProcessingException e) {
            return Comments.NONE;
        }
    }

    private static List<String> list(JsonNode array) {
        List<String> list = new ArrayList<>();
        array.forEach(item -> list.add(item.asText("")));
        return list;
    }

    /**
     * The remarks but for those that say what was typed in a notebook for a line that is gone or names something else now.
     *
     * @param remarks as they were
     * @param stands whether the entry at a path still names what was typed
     */
    static Comments kept(Comments remarks, BiPredicate<String, String> stands) {
        Map<String, String> beside = new HashMap<>(remarks.beside());
        beside.entrySet()
                .removeIf(entry -> entry.getValue().strip().startsWith(TYPED)
                        && !stands.test(
                                entry.getKey(),
                                entry.getValue()
                                        .strip()
                                        .substring(TYPED.length())
                                        .strip()));
        return new Comments(remarks.before(), beside, remarks.after());
    }

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
