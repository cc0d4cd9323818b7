package lyewright.records.stock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.formula.WrittenFigure;
import lyewright.material.Alkali;
import lyewright.material.Figure;
import lyewright.material.Oil;
import lyewright.material.OilKind;
import lyewright.material.Tables;
import lyewright.measure.Problem;

/** Figures of a certificate that are hardly meant: a slip of the finger would cost a batch. */
public final class CertificateRules {

    /** Where an acid value is told of. */
    public static final String AV = "acid value";

    /** Where water is told of. */
    public static final String WATER = "water";

    /** Percent; an oil that holds more is cloudy. Common practice. */
    private static final BigDecimal MOST_WATER = BigDecimal.ONE;

    /** mg KOH/g, a tenth of an oil as free acid, where no table says better. Common practice. */
    private static final double MOST_ACID = 20;

    /** How sure a figure is, by itself: no doubt of this much in mg KOH/g or percent is asked about in small figures. */
    private static final BigDecimal SMALL = BigDecimal.ONE;

    private static final BigDecimal TENTH = new BigDecimal("0.1");
    private static final String LOOK = "look at the paper again";

    /** Percent; what is a fifth water is an emulsion and no oil. Our own choice. */
    private static final BigDecimal NO_OIL = BigDecimal.valueOf(20);

    private CertificateRules() {}

    /** What is asked about once. */
    public static List<Problem> asked(ItemSaid item, OwnMaterial own) {
        List<Problem> problems = new ArrayList<>(PublishedRange.outside(item, own));
        if (item.kind() == ItemKind.OIL) {
            own.water()
                    .filter(figure -> figure.central().compareTo(MOST_WATER) > 0)
                    .ifPresent(figure -> problems.add(new Problem(
                            WATER, "that is more than 1 %, which no oil holds and no sheet takes off it", LOOK)));
            own.acidValue().flatMap(figure -> acid(item, figure)).ifPresent(problems::add);
        }
        wide(PublishedRange.SV, own.saponificationValue(), BigDecimal.ZERO, problems);
        wide(AV, own.acidValue(), SMALL, problems);
        wide(PublishedRange.IV, own.iodineValue(), BigDecimal.ZERO, problems);
        wide(WATER, own.water(), SMALL, problems);
        wide(PublishedRange.STRENGTH, own.strength().map(OwnMaterial.Strength::pure), BigDecimal.ZERO, problems);
        return problems;
    }

    private static Optional<Problem> acid(ItemSaid item, WrittenFigure figure) {
        Optional<Oil> oil = item.identity().materialKey().flatMap(Tables.bundled()::oil);
        if (oil.filter(it -> it.kind() == OilKind.FATTY_ACID).isPresent()) {
            return Optional.empty();
        }
        Optional<Double> published = oil.flatMap(Oil::acidValue).map(Figure::high);
        double most = published.orElse(MOST_ACID);
        return figure.central().doubleValue() <= most
                ? Optional.empty()
                : Optional.of(new Problem(
                        AV,
                        "that is more free acid than "
                                + (published.isPresent() ? "was published, at most " : "an oil has, hardly over ")
                                + PublishedRange.brief(most),
                        LOOK));
    }

    private static void wide(String path, Optional<WrittenFigure> figure, BigDecimal from, List<Problem> problems) {
        figure.filter(it -> it.form() == WrittenFigure.Form.PLUS_MINUS)
                .filter(it -> it.second().compareTo(it.first().multiply(TENTH)) > 0
                        && it.second().compareTo(from) > 0)
                .ifPresent(it ->
                        problems.add(new Problem(path, "the doubt after ± is wider than a tenth of the figure", LOOK)));
    }

    /**
     * What is not kept: a dry alkali so weak is a solution. Sold lye of soda is 97 to 99 % (INRS, fiche toxicologique 20); potash
     * was once sold at 75 to 80 % (a handbook of 1908), and nobody sells either under these.
     */
    public static List<Problem> refused(ItemSaid item, OwnMaterial own) {
        if (item.kind() == ItemKind.OIL
                && own.water()
                        .filter(figure -> figure.central().compareTo(NO_OIL) > 0)
                        .isPresent()) {
            return List.of(new Problem(
                    WATER,
                    "what is more than a fifth water is no oil, and a sheet would count all of it as one",
                    "look at the paper again, or refuse the lot"));
        }
        Optional<Alkali> dry = item.identity().materialKey().flatMap(Alkali::ofKey);
        return dry
                .filter(alkali -> own.strength()
                        .filter(strength -> strength.pure().central().doubleValue() < least(alkali))
                        .isPresent())
                .map(alkali -> new Problem(
                        PublishedRange.STRENGTH,
                        "dry " + (alkali == Alkali.SODIUM ? "sodium" : "potassium") + " hydroxide is at least "
                                + PublishedRange.brief(least(alkali)) + " % pure",
                        "a solution is a stock lye: make or receive it under a name of its own"))
                .stream()
                .toList();
    }

    private static double least(Alkali alkali) {
        return alkali == Alkali.SODIUM ? 70 : 60;
    }
}
