package lyewright.formula;

import java.util.List;
import lyewright.formula.Places.Place;
import org.jspecify.annotations.Nullable;

/**
 * A formula file taken apart into text, maps and lists, each with its place. Nothing is interpreted: every value is the
 * text that was typed.
 *
 * @param root what the file holds; null when it holds nothing
 * @param remarks its comments, in order
 */
record YamlTree(YamlTree.@Nullable Node root, List<YamlTree.Remark> remarks) {

    /** A piece of the file. */
    sealed interface Node {
        Place start();

        /** Where it ends; of a map or list in lines of its own, where its last piece ends. */
        Place end();
    }

    /** A value. Absent means that nothing at all stands there. */
    record Text(String text, boolean absent, Place start, Place end) implements Node {}

    /** Names with values. Flow means inside braces. */
    record Entries(List<Entry> entries, boolean flow, Place start, Place end) implements Node {}

    /** A list. Flow means inside brackets. */
    record Items(List<Node> items, boolean flow, Place start, Place end) implements Node {}

    /** A name and its value. */
    record Entry(String key, Place place, Node value) {}

    /** A comment: its text without the number sign, and whether it has its line to itself. */
    record Remark(String text, Place place, boolean ownLine) {}
}
