package lyewright.web.start;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.fill.Shape;
import lyewright.measure.Outcome;
import lyewright.measure.Volume;
import lyewright.measure.WrittenMass;
import lyewright.web.start.AskedMould.Called;

/** A mould said in one line: three sides, a tube's two, cavities, bars, what it holds, or simply a mass. */
final class MouldText {

    static final String EXAMPLES = "300 x 80 x 65 mm, 12 x 95 ml, 1.2 l or 1500 g";

    private static final int LONGEST = 80;
    private static final double LEAST_GRAMS = 1;
    private static final double MOST_GRAMS = 1e7;

    /** What people write between sides. */
    private static final Pattern TIMES = Pattern.compile("\\s*(?:[x×*]|(?<![a-z])by(?![a-z]))\\s*");

    /** Words that say which kind of mould, or nothing at all. */
    private static final Pattern KIND =
            Pattern.compile("^(?:an?\\s+|my\\s+)?(loaf|box|slab|tray|tube|pipe|mould|mold|cavities|bars)\\b[\\s:,]*");

    private static final Pattern MASS_AT_END = Pattern.compile("(?:mg|g|kg|oz|lb)$");

    private MouldText() {}

    static Outcome<AskedMould> read(String typed) {
        String text = typed.strip().toLowerCase(Locale.ROOT).replace('\u00a0', ' ');
        if (text.length() > LONGEST) {
            return Outcome.refused("that is too long for a mould", "write it as " + EXAMPLES);
        }
        Matcher kind = KIND.matcher(text);
        String word = kind.find() ? kind.group(1) : "";
        String size = TIMES.matcher(
                        text.substring(word.isEmpty() ? 0 : kind.end()).strip())
                .replaceAll("x");
        return size.isEmpty()
                ? Outcome.refused("'" + typed.strip() + "' says no size", "write it as " + EXAMPLES)
                : ofSize(size, word);
    }

    private static Outcome<AskedMould> ofSize(String size, String word) {
        long sides = 1 + size.chars().filter(c -> c == 'x').count();
        if (sides >= 3) {
            return Shape.parseLoaf(size)
                    .then(loaf -> held(loaf, size))
                    .then(loaf -> box((Shape.Loaf) loaf, word, size));
        }
        if (sides == 2 && MASS_AT_END.matcher(size).find()) {
            return Fill.parseBars(size, false).then(bars -> bars(bars, size));
        }
        if (sides == 2 && size.endsWith("l")) {
            return Shape.parseCavities(size)
                    .then(cavities -> held(cavities, size))
                    .then(cavities ->
                            Outcome.ok(AskedMould.full(Called.moulds("your cavities"), shaped(cavities), size)));
        }
        if (sides == 2) {
            return Shape.parseTube(size)
                    .then(tube -> held(tube, size))
                    .then(tube -> Outcome.ok(AskedMould.full(Called.mould("your tube"), shaped(tube), size)));
        }
        return size.endsWith("l") ? volume(size) : mass(size);
    }

    private static Outcome<AskedMould> box(Shape.Loaf loaf, String word, String size) {
        boolean slab = word.equals("slab") || word.equals("tray");
        Shape shape = slab ? new Shape.Slab(loaf.length(), loaf.width(), loaf.height()) : loaf;
        return Outcome.ok(AskedMould.full(Called.mould(slab ? "your slab" : "your loaf"), shaped(shape), size));
    }

    private static Outcome<AskedMould> bars(Fill.Bars bars, String size) {
        double grams = bars.count() * bars.grams();
        Called called = bars.count() == 1
                ? Called.amount("one such bar", false)
                : Called.amount(bars.count() + " such bars", true);
        return grams >= LEAST_GRAMS && grams <= MOST_GRAMS
                ? Outcome.ok(AskedMould.amount(called, bars, "bars", size))
                : beyond("the bars");
    }

    private static Outcome<AskedMould> volume(String size) {
        return Volume.parse(size)
                .then(volume -> volume.millilitres() > 0
                        ? held(new Shape.Cavities(1, volume.millilitres()), size)
                        : beyond("'" + size + "'"))
                .then(shape -> Outcome.ok(AskedMould.full(Called.mould("your mould"), shaped(shape), "1x" + size)));
    }

    private static Outcome<AskedMould> mass(String size) {
        Outcome<WrittenMass> mass = WrittenMass.parse(size);
        if (!(mass instanceof Outcome.Ok<WrittenMass> ok)) {
            return Outcome.refused("'" + size + "' says no size that is understood", "write it as " + EXAMPLES);
        }
        double grams = ok.value().grams();
        return grams >= LEAST_GRAMS && grams <= MOST_GRAMS
                ? Outcome.ok(AskedMould.amount(
                        Called.amount(ok.value().toString(), false),
                        new Fill.MouldMass(grams),
                        "total",
                        ok.value().toString()))
                : beyond("'" + size + "'");
    }

    private static Mould shaped(Shape shape) {
        return new Mould(Optional.of(shape), Optional.empty(), Optional.empty());
    }

    private static Outcome<Shape> held(Shape shape, String size) {
        return shape.millilitres() >= LEAST_GRAMS && shape.millilitres() <= MOST_GRAMS
                ? Outcome.ok(shape)
                : beyond("'" + size + "'");
    }

    private static <T> Outcome<T> beyond(String what) {
        return Outcome.refused(what + " is no size of a mould", "write something from 1 g or 1 ml to 10 tonnes");
    }
}
