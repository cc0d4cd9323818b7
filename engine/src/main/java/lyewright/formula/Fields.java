package lyewright.formula;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lyewright.formula.Places.Place;
import lyewright.formula.YamlTree.Entries;
import lyewright.formula.YamlTree.Entry;
import lyewright.formula.YamlTree.Items;
import lyewright.formula.YamlTree.Node;
import lyewright.formula.YamlTree.Text;
import lyewright.material.NearestKey;
import lyewright.measure.Outcome;
import org.jspecify.annotations.Nullable;

/** The entries of one map of the file by name; hands them out as text, and notes what cannot be read. */
final class Fields {

    /** Longer than any figure, and than any two names with what stands around them. */
    private static final int LONGEST_VALUE = 500;

    private final Findings findings;
    private final String path;
    private final Map<String, Node> values = new LinkedHashMap<>();

    private Fields(Findings findings, String path) {
        this.findings = findings;
        this.path = path;
    }

    /** A map whose names are words of the format; others are refused with the nearest. */
    static Fields known(Findings findings, String path, Entries map, List<String> words) {
        return of(findings, path, map, words);
    }

    /** A map whose names are materials or portions. */
    static Fields open(Findings findings, String path, Entries map) {
        return of(findings, path, map, null);
    }

    private static Fields of(Findings findings, String path, Entries map, @Nullable List<String> words) {
        Fields fields = new Fields(findings, path);
        Map<String, Place> firsts = new LinkedHashMap<>();
        Entry previous = null;
        for (Entry entry : map.entries()) {
            boolean comma = map.flow() && previous != null && fields.isSplitByComma(previous, entry);
            if (!comma && fields.isNew(entry, firsts) && fields.isWord(entry, words)) {
                fields.values.put(entry.key(), entry.value());
            }
            previous = entry;
        }
        return fields;
    }

    /** {@code {sodium: 12,5 g}} comes out of braces as two entries: say what was meant. */
    private boolean isSplitByComma(Entry previous, Entry entry) {
        boolean split = entry.value() instanceof Text text
                && text.absent()
                && startsWithDigit(entry.key())
                && previous.value() instanceof Text number
                && endsWithDigit(number.text());
        if (split) {
            String left = ((Text) previous.value()).text();
            values.remove(previous.key());
            findings.expect(at(previous.key()));
            findings.add(
                    at(previous.key()),
                    Wording.quote(left + "," + entry.key()) + " has a comma in its number",
                    "write " + Wording.clip(left + "." + entry.key()));
        }
        return split;
    }

    private static boolean startsWithDigit(String text) {
        return !text.isEmpty() && Character.isDigit(text.charAt(0));
    }

    private static boolean endsWithDigit(String text) {
        return !text.isEmpty() && Character.isDigit(text.charAt(text.length() - 1));
    }

    private boolean isNew(Entry entry, Map<String, Place> firsts) {
        if (entry.key().isEmpty()) {
            findings.addAt(entry.place(), path, "there is a value without a name", "write its name before the colon");
            return false;
        }
        Place first = firsts.putIfAbsent(entry.key(), entry.place());
        if (first == null) {
            return true;
        }
        findings.addAt(
                entry.place(),
                at(entry.key()),
                Wording.quote(entry.key()) + " stands twice, at line " + first.line() + ", column " + first.column()
                        + " and at line " + entry.place().line() + ", column "
                        + entry.place().column(),
                "take one of them out");
        return false;
    }

    private boolean isWord(Entry entry, @Nullable List<String> words) {
        if (words == null || words.contains(entry.key())) {
            return true;
        }
        if (findings.areEnough()) {
            return false;
        }
        findings.addAt(
                entry.place(),
                at(entry.key()),
                Wording.quote(entry.key()) + " is not a word "
                        + (path.isEmpty() ? "of a formula" : "that belongs here"),
                Wording.offer(entry.key(), words));
        NearestKey.among(entry.key(), words).stream().limit(1).forEach(near -> findings.expect(at(near)));
        return false;
    }

    String at(String name) {
        return Places.join(path, name);
    }

    String path() {
        return path;
    }

    Findings findings() {
        return findings;
    }

    Set<String> names() {
        return values.keySet();
    }

    boolean has(String name) {
        return values.containsKey(name);
    }

    /** The value as it stands, null where there is none. */
    @Nullable
    Node node(String name) {
        return values.get(name);
    }

    /** Whether the name stands there with nothing behind it. */
    boolean isAbsent(String name) {
        return values.get(name) instanceof Text text && text.absent();
    }

    /** The value's text without spaces at its ends; null, and noted, where it is something else or nothing. */
    @Nullable
    String text(String name) {
        Node node = values.get(name);
        if (node == null) {
            return null;
        }
        if (!(node instanceof Text text)) {
            String kind = node instanceof Items ? "a list" : "a group of names";
            findings.add(at(name), Wording.quote(name) + " cannot be " + kind, "write one value behind the colon");
            return null;
        }
        String value = text.text().strip();
        if (value.isEmpty()) {
            findings.add(
                    at(name),
                    Wording.quote(name) + " has no value",
                    "write one behind the colon, or take the line out");
            return null;
        }
        return value;
    }

    /** Notes it if an entry is not there that must be. */
    void require(String name, String remedy) {
        if (!has(name) && !findings.expects(at(name))) {
            findings.add(at(name), Wording.quote(name) + " is missing", remedy);
        }
    }

    /** The text of an entry that must be there; null, and noted, where there is none. */
    @Nullable
    String needed(String name, String remedy) {
        require(name, remedy);
        return text(name);
    }

    /** The value read by a rule of its own; null, and noted, where it is missing or refused. */
    <T> @Nullable T read(String name, Reading<T> reading) {
        String text = shortText(name);
        if (text == null) {
            return null;
        }
        String tidy = Wording.tidy(text);
        if (FigureText.hasPowerOfTen(tidy)) {
            findings.add(at(name), Wording.quote(tidy) + " is written in powers of ten", "write the number out");
            return null;
        }
        return take(name, reading.read(tidy));
    }

    /** As {@link #read}, for a value that holds a name, in which every space counts. */
    <T> @Nullable T readNames(String name, Reading<T> reading) {
        String text = shortText(name);
        return text == null ? null : take(name, reading.read(text));
    }

    private @Nullable String shortText(String name) {
        String text = text(name);
        if (text != null && text.length() > LONGEST_VALUE) {
            findings.add(at(name), Wording.quote(text) + " is too long here", "write it shorter");
            return null;
        }
        return text;
    }

    /** How a text becomes a value. */
    interface Reading<T> {
        Outcome<T> read(String text);
    }

    private <T> @Nullable T take(String name, Outcome<T> outcome) {
        if (outcome instanceof Outcome.Ok<T> ok) {
            return ok.value();
        }
        findings.addAll(at(name), outcome.problems());
        return null;
    }

    /** The entries inside an entry; null where it is not there, absent, or, then noted, not a map. */
    @Nullable
    Entries map(String name, String remedy) {
        Node node = values.get(name);
        if (node == null || isAbsent(name)) {
            return null;
        }
        if (node instanceof Entries entries) {
            return entries;
        }
        findings.add(
                at(name),
                Wording.quote(name) + " needs names with values, not "
                        + (node instanceof Items ? "a list" : "one value"),
                remedy);
        return null;
    }
}
