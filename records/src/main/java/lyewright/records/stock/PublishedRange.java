package lyewright.records.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.formula.WrittenFigure;
import lyewright.material.Alkali;
import lyewright.material.Figure;
import lyewright.material.Oil;
import lyewright.material.Tables;
import lyewright.measure.Problem;

/** Figures of certificates that lie outside what was published: a slip of the finger would cost a batch. */
public final class PublishedRange {

    /** Where a saponification value outside is told. */
    public static final String SV = "saponification value";

    /** Where an iodine value outside is told. */
    public static final String IV = "iodine value";

    /** Where an alkali's purity outside is told. */
    public static final String STRENGTH = "strength";

    private PublishedRange() {}

    /** What of a certificate lies outside. */
    public static List<Problem> outside(ItemSaid item, OwnMaterial certificate) {
        List<Problem> problems = new ArrayList<>();
        outside(item, SV, certificate.saponificationValue(), problems);
        outside(item, IV, certificate.iodineValue(), problems);
        outside(item, STRENGTH, certificate.strength().map(OwnMaterial.Strength::pure), problems);
        return problems;
    }

    private static void outside(ItemSaid item, String path, Optional<WrittenFigure> said, List<Problem> problems) {
        of(item, path)
                .filter(published ->
                        said.filter(figure -> isOutside(figure, published)).isPresent())
                .ifPresent(published -> problems.add(new Problem(
                        path, "that is outside what was published, " + words(published), "look at the paper again")));
    }

    /** What was published of a figure of a thing, if anything was. */
    public static Optional<Figure> of(ItemSaid item, String path) {
        Optional<String> key = item.identity().materialKey();
        Optional<Oil> oil = key.flatMap(Tables.bundled()::oil);
        return switch (path) {
            case SV -> oil.map(Oil::saponificationValue);
            case IV -> oil.flatMap(Oil::iodineValue);
            case STRENGTH -> key.flatMap(Alkali::ofKey).map(Alkali::assumedPurity);
            default -> Optional.empty();
        };
    }

    /** Whether a figure lies outside what was published. */
    public static boolean isOutside(WrittenFigure said, Figure published) {
        double middle = said.figure("").middle();
        return middle < published.low() || middle > published.high();
    }

    /** From where to where something was published. */
    public static String words(Figure published) {
        return brief(published.low()) + " to " + brief(published.high());
    }

    static String brief(double figure) {
        return String.format(Locale.ROOT, "%.1f", figure).replaceAll("\\.0$", "");
    }
}
