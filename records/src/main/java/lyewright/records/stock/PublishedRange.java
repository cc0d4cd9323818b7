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
        Optional<String> key = item.identity().materialKey();
        Optional<Oil> oil = key.flatMap(Tables.bundled()::oil);
        oil.map(Oil::saponificationValue)
                .ifPresent(published -> outside(SV, certificate.saponificationValue(), published, problems));
        oil.flatMap(Oil::iodineValue)
                .ifPresent(published -> outside(IV, certificate.iodineValue(), published, problems));
        key.flatMap(Alkali::ofKey)
                .map(Alkali::assumedPurity)
                .ifPresent(assumed ->
                        outside(STRENGTH, certificate.strength().map(OwnMaterial.Strength::pure), assumed, problems));
        return problems;
    }

    private static void outside(String path, Optional<WrittenFigure> said, Figure published, List<Problem> problems) {
        said.map(figure -> figure.figure("").middle())
                .filter(middle -> middle < published.low() || middle > published.high())
                .ifPresent(middle -> problems.add(new Problem(
                        path,
                        "that is outside what was published, " + brief(published.low()) + " to "
                                + brief(published.high()),
                        "look at the paper again")));
    }

    private static String brief(double figure) {
        return String.format(Locale.ROOT, "%.1f", figure).replaceAll("\\.0$", "");
    }
}
