package lyewright.fill;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.measure.Outcome;
import lyewright.measure.Said;
import lyewright.measure.Volume;

/** Reads a mould in one line, as people write one. */
final class MouldReader {

    /** What people write between sides. */
    private static final Pattern TIMES = Pattern.compile("\\s*[x×]\\s*");

    /** Words that say which kind of mould, or nothing at all. */
    private static final Pattern KIND =
            Pattern.compile("^(?:an?\\s+|my\\s+)?(loaf|box|slab|tray|tube|pipe|mould|mold|cavities|bars)\\b[\\s:,]*");

    private static final Pattern WATER = Pattern.compile("(.+?)\\s*(?:of )?water");

    private MouldReader() {}

    /**
     * A line taken apart.
     *
     * @param kind of mould; empty where it is not said
     * @param size in small letters, with {@code x} between its measures
     */
    record Typed(String kind, String size) {}

    static Typed said(String text) {
        String line = text.replace('\u00a0', ' ').strip().toLowerCase(Locale.ROOT);
        Matcher kind = KIND.matcher(line);
        String word = kind.find() ? kind.group(1) : "";
        String size = word.isEmpty() ? line : line.substring(kind.end());
        return new Typed(word, TIMES.matcher(Said.counted(size)).replaceAll("x"));
    }

    static Outcome<Mould> read(String text) {
        Typed said = said(text);
        String size = said.size();
        Matcher water = WATER.matcher(size);
        if (water.matches()) {
            return FillText.mass(water.group(1))
                    .then(m -> Outcome.ok(new Mould(Optional.empty(), Optional.of(m.grams()), Optional.empty())));
        }
        boolean slab = said.kind().equals("slab") || said.kind().equals("tray");
        return shape(size, text)
                .then(shape -> FillText.held(shape, text))
                .then(shape -> Outcome.ok(new Mould(
                        Optional.of(slab ? FillText.slab(shape) : shape), Optional.empty(), Optional.empty())));
    }

    private static Outcome<Shape> shape(String size, String text) {
        int measures = size.split("x", -1).length;
        boolean volume = size.endsWith("l");
        if (measures == 1 && volume && Volume.parse(size) instanceof Outcome.Ok<Volume> whole) {
            return Outcome.ok(new Shape.Cavities(1, whole.value().millilitres()));
        }
        if (measures == 1) {
            return Outcome.refused(
                    "'" + text.strip() + "' does not say what the mould holds",
                    "write 300x80x65mm, 300x76mm, 12x95ml, 1.2l, or the water that fills it, as in 1450g water");
        }
        if (measures > 2) {
            return Shape.parseLoaf(size);
        }
        Outcome<Shape> cavities = Shape.parseCavities(size);
        return cavities instanceof Outcome.Ok || volume ? cavities : Shape.parseTube(size);
    }
}
