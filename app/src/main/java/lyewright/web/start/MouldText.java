package lyewright.web.start;

import java.util.regex.Pattern;
import lyewright.fill.Fill;
import lyewright.fill.FillText;
import lyewright.fill.Mould;
import lyewright.fill.Shape;
import lyewright.measure.Outcome;

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
            return FillText.mould(typed).then(mould -> Outcome.ok(AskedMould.full(takes(mould), mould)));
        }
        return size.indexOf('x') >= 0
                ? FillText.bars(size, false).then(MouldText::bars)
                : FillText.mass(size)
                        .then(mass -> Outcome.ok(AskedMould.of(mass + " takes", new Fill.MouldMass(mass.grams()))));
    }

    private static Outcome<AskedMould> bars(Fill.Bars bars) {
        String said = bars.count() == 1 ? "One such bar takes" : bars.count() + " such bars take";
        return Outcome.ok(AskedMould.of(said, bars));
    }

    private static String takes(Mould mould) {
        Shape shape = mould.shape().orElse(null);
        if (shape instanceof Shape.Cavities cavities && cavities.count() > 1) {
            return "Your cavities take";
        }
        return shape instanceof Shape.Loaf
                ? "Your loaf takes"
                : shape instanceof Shape.Slab
                        ? "Your slab takes"
                        : shape instanceof Shape.Tube ? "Your tube takes" : "Your mould takes";
    }
}
