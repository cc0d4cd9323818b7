package lyewright.formula;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import lyewright.formula.Places.Place;
import lyewright.formula.YamlTree.Entries;
import lyewright.formula.YamlTree.Entry;
import lyewright.formula.YamlTree.Items;
import lyewright.formula.YamlTree.Node;
import lyewright.formula.YamlTree.Text;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Walks the library's events into a tree, and refuses what a formula has no use for. The library is not asked for comments:
 * collecting them takes it minutes on a file of blank lines. {@link RemarkScanner} finds them between the values instead.
 */
final class YamlParser {

    static final int DEEPEST = 20;
    private static final int MOST_NODES = 20_000;

    private final Iterator<Event> events;
    private final RemarkScanner remarks;
    private int nodes;

    private YamlParser(String text) {
        this.remarks = new RemarkScanner(text);
        LoadSettings settings = LoadSettings.builder()
                .setParseComments(false)
                .setCodePointLimit(text.length() + 1)
                // read in one go: in parts, the library (2.10) fails on a character of two UTF-16 units across their
                // border
                .setBufferSize(text.length() + 2)
                .build();
        this.events = new Parse(settings).parseString(text).iterator();
    }

    /**
     * Takes a text apart.
     *
     * @throws Unreadable when it is not the YAML of a formula file
     */
    static YamlTree parse(String text) {
        YamlParser parser = new YamlParser(text);
        try {
            return parser.document();
        } catch (MarkedYamlEngineException e) {
            throw YamlTrouble.unreadable(e);
        } catch (YamlEngineException e) {
            throw YamlTrouble.unreadable(e);
        }
    }

    private YamlTree document() {
        Node root = null;
        while (events.hasNext()) {
            Event event = events.next();
            if (event instanceof DocumentStartEvent && root != null) {
                throw new Unreadable(
                        start(event), "the file holds more than one document", "keep one formula in a file");
            }
            if (event instanceof NodeEvent) {
                root = node(event, 1);
            }
        }
        return new YamlTree(root, remarks.finish());
    }

    private Node node(Event event, int depth) {
        refuseWhatIsNotNeeded(event);
        if (event instanceof ScalarEvent scalar) {
            return text(scalar);
        }
        if (depth > DEEPEST) {
            throw new Unreadable(
                    start(event),
                    "the file is nested deeper than " + DEEPEST + " levels",
                    "a formula needs four: take brackets or indents out");
        }
        return event instanceof MappingStartEvent map
                ? entries(map, depth)
                : items((CollectionStartEvent) event, depth);
    }

    private void refuseWhatIsNotNeeded(Event event) {
        if (event instanceof AliasEvent) {
            throw new Unreadable(
                    start(event), "'*' refers to another part of the file", "write it out, or put the text in quotes");
        }
        if (((NodeEvent) event).getAnchor().isPresent()) {
            throw new Unreadable(
                    start(event), "'&' marks a part of the file", "take the mark out, or put the text in quotes");
        }
        Optional<?> tag =
                event instanceof ScalarEvent scalar ? scalar.getTag() : ((CollectionStartEvent) event).getTag();
        if (tag.isPresent()) {
            throw new Unreadable(
                    start(event), "'!' gives a value a type", "take the type out, or put the text in quotes");
        }
        nodes++;
        if (nodes > MOST_NODES) {
            throw new Unreadable(
                    start(event), "the file has more than " + MOST_NODES + " entries", "keep one formula in a file");
        }
    }

    private Text text(ScalarEvent scalar) {
        Mark from = scalar.getStartMark().orElseThrow();
        Mark to = scalar.getEndMark().orElseThrow();
        boolean block = scalar.getScalarStyle() == ScalarStyle.LITERAL || scalar.getScalarStyle() == ScalarStyle.FOLDED;
        remarks.skip(from.getIndex(), to.getIndex(), block);
        boolean absent = scalar.isPlain() && scalar.getValue().isEmpty();
        return new Text(scalar.getValue(), absent, place(from), place(to));
    }

    private Entries entries(MappingStartEvent map, int depth) {
        List<Entry> entries = new ArrayList<>();
        Place last = start(map);
        Event event = events.next();
        while (!(event instanceof CollectionEndEvent)) {
            if (!(node(event, depth + 1) instanceof Text key)) {
                throw new Unreadable(start(event), "a name cannot be a list", "write one word and a colon");
            }
            Node value = node(events.next(), depth + 1);
            entries.add(new Entry(key.text().strip(), key.start(), value));
            last = value.end();
            event = events.next();
        }
        return new Entries(entries, map.isFlow(), start(map), map.isFlow() ? end(event) : last);
    }

    private Items items(CollectionStartEvent list, int depth) {
        List<Node> items = new ArrayList<>();
        Place last = start(list);
        Event event = events.next();
        while (!(event instanceof CollectionEndEvent)) {
            Node item = node(event, depth + 1);
            items.add(item);
            last = item.end();
            event = events.next();
        }
        return new Items(items, list.isFlow(), start(list), list.isFlow() ? end(event) : last);
    }

    private static Place start(Event event) {
        return place(event.getStartMark().orElse(null));
    }

    private static Place end(Event event) {
        return place(event.getEndMark().orElse(null));
    }

    /** The library counts from 0, people from 1. */
    static Place place(@Nullable Mark mark) {
        return mark == null ? Place.BEGINNING : new Place(mark.getLine() + 1, mark.getColumn() + 1);
    }
}
