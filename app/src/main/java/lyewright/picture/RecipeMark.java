package lyewright.picture;

import java.util.ArrayList;
import java.util.List;
import lyewright.formula.Formula;
import lyewright.formula.OilLine;
import lyewright.material.Names;
import lyewright.material.Tables;
import lyewright.words.Figures;

/**
 * A small picture of a formula where there is no photograph: a cut bar whose layers are the oils, as high as their shares,
 * first oil undermost. The same oil has the same look in every recipe, unless its neighbour has that already.
 */
public final class RecipeMark {

    static final int WIDTH = 96;
    static final int HEIGHT = 72;
    private static final double LEFT = 5;
    private static final double FOOT = 67;
    private static final double FACE = 70;
    private static final double TALL = 50;
    private static final double DEEP = 15;
    private static final double RISE = 11;

    /** Oils of a smaller share lie in one layer on top. */
    private static final double SMALL = 0.02;

    private static final String REST = "the rest";

    private static final List<Look> LOOKS = List.of(
            new Look("f-full", Texture.PLAIN),
            new Look("f-soft", Texture.PLAIN),
            new Look("f-mid", Texture.PLAIN),
            new Look("f-none", Texture.CLIMBING),
            new Look("f-soft", Texture.FALLING),
            new Look("f-none", Texture.DOTTED),
            new Look("f-mid", Texture.CROSSED),
            new Look("f-none", Texture.LYING),
            new Look("f-soft", Texture.STANDING),
            new Look("f-none", Texture.CROSSED),
            new Look("f-mid", Texture.DOTTED));

    /** Found by trying: with it the eleven oils met most often have each a look of their own. */
    private static final int MIXER = 0xE6C5C7ED;

    private record Look(String style, Texture texture) {}

    private record Layer(String key, double share) {}

    private RecipeMark() {}

    /**
     * The mark of a formula.
     *
     * @param formula as written; shares that do not add up to 100 are taken in proportion
     * @return the drawing; an empty bar where no oil has a share yet
     */
    public static Drawing of(Formula formula) {
        List<Layer> layers = layers(formula.oils());
        Canvas canvas = new Canvas();
        double right = LEFT + FACE;
        double top = FOOT - TALL;
        canvas.path(
                "f-none o", Canvas.outline(LEFT, top, LEFT + DEEP, top - RISE, right + DEEP, top - RISE, right, top));
        canvas.path(
                "f-none o",
                Canvas.outline(right, FOOT, right, top, right + DEEP, top - RISE, right + DEEP, FOOT - RISE));
        double y = FOOT;
        int before = -1;
        for (Layer layer : layers) {
            double high = TALL * layer.share;
            int look = look(layer.key, before);
            canvas.textured(LOOKS.get(look).style, LOOKS.get(look).texture, LEFT, y - high, FACE, high);
            y -= high;
            if (y - top > 0.5) {
                canvas.line("f-clear o", LEFT, y, right, y);
                canvas.line("f-clear o", right, y, right + DEEP, y - RISE);
            }
            before = look;
        }
        canvas.box("f-clear o", LEFT, top, FACE, TALL);
        return canvas.drawing("pic-mark", "Oils of " + formula.recipe(), described(layers), WIDTH, HEIGHT);
    }

    /** By the key alone, but never that of the layer below. */
    private static int look(String key, int before) {
        int look = ((key.hashCode() * MIXER) >>> 8) % LOOKS.size();
        return look == before ? (look + 1) % LOOKS.size() : look;
    }

    private static List<Layer> layers(List<OilLine> oils) {
        double[] amounts = new double[oils.size()];
        double percents = 0;
        for (int i = 0; i < amounts.length; i++) {
            OilLine.Amount amount = oils.get(i).amount();
            if (amount instanceof OilLine.Percent percent) {
                amounts[i] = percent.share().percent().doubleValue();
                percents += amounts[i];
            } else if (amount instanceof OilLine.Weight weight) {
                amounts[i] = weight.mass().grams();
            }
        }
        double sum = 0;
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] = oils.get(i).amount() instanceof OilLine.Rest ? Math.max(0, 100 - percents) : amounts[i];
            sum += amounts[i];
        }
        List<Layer> layers = new ArrayList<>();
        double small = 0;
        for (int i = 0; i < amounts.length; i++) {
            double share = amounts[i] > 0 ? amounts[i] / sum : 0;
            if (share >= SMALL) {
                layers.add(new Layer(oils.get(i).key(), share));
            } else {
                small += share;
            }
        }
        if (small > 0) {
            layers.add(new Layer(REST, small));
        }
        return layers;
    }

    private static String described(List<Layer> layers) {
        if (layers.isEmpty()) {
            return "No oils yet.";
        }
        StringBuilder text = new StringBuilder();
        for (Layer layer : layers) {
            text.append(text.isEmpty() ? "" : ", ")
                    .append(called(layer.key))
                    .append(' ')
                    .append(Figures.upTo(100 * layer.share, 1))
                    .append(" %");
        }
        return text.append('.').toString();
    }

    /** As the tables call it; the maker's own as the maker does. */
    private static String called(String key) {
        return Tables.bundled()
                .oil(key)
                .map(oil -> Names.inSentence(oil.name()))
                .orElse(key);
    }
}
