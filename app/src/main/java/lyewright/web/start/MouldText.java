package lyewright.web.start;

import java.util.regex.Pattern;
import lyewright.fill.Fill;
import lyewright.fill.FillText;
import lyewright.fill.Mould;
import lyewright.fill.Shape;
import lyewright.measure.Outcome;
import lyewright.measure.WrittenMass;
import lyewright.web.start.AskedMould.Called;

/** What to fill, said in one line: a mould, bars, or simply a mass, which is then what comes out. */
final class MouldText {

    static final String EXAMPLES = "300 x 80 x 65 mm, 12 x 95 ml, 1.2 l or 1500 g";

    private static final int LONGEST = 80;

    private static final Pattern MASS_AT_END = Pattern.compile(".*(?:mg|g|kg|oz|lb)");

    private MouldText() {}

    static Outcome<AskedMould> read(String typed) {
        if (typed.strip().length() > LONGEST) {
            return Outcome.refused("that is too long for a mould", "write it as " + EXAMPLES);
        }
        String size = FillText.size(typed);
        if (!MASS_AT_END.matcher(size).matches()) {
            return FillText.mould(typed)
                    .then(mould -> Outcome.ok(AskedMould.full(called(mould), mould, typed.strip())));
        }
        return size.indexOf('x') >= 0
                ? FillText.bars(size, false).then(bars -> bars(bars, size))
                : FillText.mass(size).then(MouldText::mass);
    }

    private static Outcome<AskedMould> mass(WrittenMass mass) {
        return Outcome.ok(AskedMould.amount(
                Called.amount(mass.toString(), false), new Fill.MouldMass(mass.grams()), "total", mass.toString()));
    }

    private static Outcome<AskedMould> bars(Fill.Bars bars, String size) {
        Called called = bars.count() == 1
                ? Called.amount("one such bar", false)
                : Called.amount(bars.count() + " such bars", true);
        return Outcome.ok(AskedMould.amount(called, bars, "bars", size));
    }

    private static Called called(Mould mould) {
        Shape shape = mould.shape().orElse(null);
        if (shape instanceof Shape.Cavities cavities && cavities.count() > 1) {
            return Called.moulds("your cavities");
        }
        return Called.mould(
                shape instanceof Shape.Loaf
                        ? "your loaf"
                        : shape instanceof Shape.Slab
                                ? "your slab"
                                : shape instanceof Shape.Tube ? "your tube" : "your mould");
    }
}
