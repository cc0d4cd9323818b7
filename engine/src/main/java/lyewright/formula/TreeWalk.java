package lyewright.formula;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lyewright.formula.Places.Place;
import lyewright.formula.YamlTree.Entries;
import lyewright.formula.YamlTree.Entry;
import lyewright.formula.YamlTree.Items;
import lyewright.formula.YamlTree.Node;
import lyewright.formula.YamlTree.Text;
import org.jspecify.annotations.Nullable;

/** Names every entry of a tree by its path, in the order of the file. */
final class TreeWalk {

    private final Map<String, Place> places = new HashMap<>();
    private final List<Spot> spots = new ArrayList<>();

    /**
     * One entry of the file.
     *
     * @param path its path
     * @param start where its name or, in a list, the item begins
     * @param end where its value ends
     * @param flowEnd where the innermost brackets around it close, null outside brackets
     */
    record Spot(
            String path, Place start, Place end, @Nullable Place flowEnd) {

        /** Whether the brackets that hold it are shut before a place. */
        boolean shutBefore(Place place) {
            return flowEnd != null && flowEnd.isBefore(place);
        }
    }

    TreeWalk(Node root) {
        walk(root, "", null);
    }

    /** Every entry's place. */
    Map<String, Place> places() {
        return places;
    }

    /** Every entry in the order of the file, the outer before the inner. */
    List<Spot> spots() {
        return spots;
    }

    private void walk(Node node, String path, @Nullable Place flowEnd) {
        if (node instanceof Entries map) {
            for (Entry entry : map.entries()) {
                boolean shown = entry.value() instanceof Text text && !text.absent();
                visit(
                        Places.join(path, entry.key()),
                        entry.value(),
                        entry.place(),
                        shown ? entry.value().start() : entry.place(),
                        map.flow() ? map.end() : flowEnd);
            }
        } else if (node instanceof Items list) {
            for (int i = 0; i < list.items().size(); i++) {
                Node item = list.items().get(i);
                visit(
                        Places.join(path, Integer.toString(i)),
                        item,
                        item.start(),
                        item.start(),
                        list.flow() ? list.end() : flowEnd);
            }
        }
    }

    private void visit(String path, Node value, Place start, Place shown, @Nullable Place flowEnd) {
        places.putIfAbsent(path, shown);
        spots.add(new Spot(path, start, value.end(), flowEnd));
        walk(value, path, flowEnd);
    }
}
