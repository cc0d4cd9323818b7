package lyewright.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.formula.OwnMaterial;
import lyewright.formula.OwnMaterial.BlendPart;
import lyewright.formula.OwnMaterial.Strength;
import lyewright.formula.WrittenFigure;
import lyewright.material.Alkali;
import lyewright.material.Figure;
import lyewright.material.OilKind;
import lyewright.material.Tables;
import lyewright.measure.Share;

/** What a lot is that the workshop makes of others: stock lye of alkali and water, or oils mixed beforehand. By mass balance. */
public final class MadeHere {

    /** Decimals of a share in percent: a gram in a tonne. */
    private static final int DECIMALS = 4;

    private static final BigDecimal PERCENT = new BigDecimal(100);

    private MadeHere() {}

    /**
     * Stock lye.
     *
     * @param key what recipes call it
     * @param alkali which alkali
     * @param parts what of it goes in: the purity of each, percent, and its mass
     * @param water milligrams of water, above 0
     * @param source where its strength comes from, such as the codes of the lots
     * @return the lye with its strength, percent pure alkali, and how sure that is by the purities
     */
    public static OwnMaterial lye(
            String key, Alkali alkali, List<MixedFigures.Weighted> parts, long water, String source) {
        List<MixedFigures.Weighted> all = new ArrayList<>(parts);
        all.add(new MixedFigures.Weighted(Figure.exact(0, ""), water));
        Strength strength = new Strength(MixedFigures.written(MixedFigures.mean(all, source)), alkali);
        return OwnMaterial.made(key, OwnMaterial.LYE, Optional.of(strength), List.of(), source);
    }

    /**
     * So much of an oil that goes into a premix.
     *
     * @param key the oil's key
     * @param amount milligrams, above 0
     * @param saponificationValue what the certificate of its lot says, mg KOH/g; empty where it has none
     */
    public record Oil(String key, long amount, Optional<Figure> saponificationValue) {}

    /**
     * Oils mixed beforehand. Each keeps the saponification value of its lots' certificates, so that sheets follow it by mass balance and
     * know how sure it is; an oil of which some lot has no certificate stays with the tables.
     *
     * @param key what recipes call them
     * @param oils what goes in, in order; one oil may come of several lots
     * @param source where the shares come from
     * @return the premix, whose shares add up to 100 %
     */
    public static OwnMaterial premix(String key, List<Oil> oils, String source) {
        Map<String, List<Oil>> byKey =
                oils.stream().collect(Collectors.groupingBy(Oil::key, LinkedHashMap::new, Collectors.toList()));
        BigDecimal whole =
                BigDecimal.valueOf(oils.stream().mapToLong(Oil::amount).sum());
        List<BlendPart> parts = new ArrayList<>();
        BigDecimal rest = PERCENT;
        int left = byKey.size();
        for (Map.Entry<String, List<Oil>> oil : byKey.entrySet()) {
            left--;
            long amount = oil.getValue().stream().mapToLong(Oil::amount).sum();
            BigDecimal share = left == 0
                    ? rest
                    : BigDecimal.valueOf(amount).multiply(PERCENT).divide(whole, DECIMALS, RoundingMode.HALF_EVEN);
            rest = rest.subtract(share);
            BigDecimal plain = share.stripTrailingZeros();
            parts.add(new BlendPart(oil.getKey(), Share.ofPercent(plain.toPlainString()), certified(oil.getValue())));
        }
        return OwnMaterial.made(key, OwnMaterial.OILS, Optional.empty(), parts, source);
    }

    private static Optional<WrittenFigure> certified(List<Oil> lots) {
        List<MixedFigures.Weighted> weighted = lots.stream()
                .flatMap(lot ->
                        lot
                                .saponificationValue()
                                .map(figure -> new MixedFigures.Weighted(figure, lot.amount()))
                                .stream())
                .toList();
        return weighted.size() == lots.size()
                ? Optional.of(MixedFigures.written(MixedFigures.mean(weighted, "")))
                : Optional.empty();
    }

    /**
     * The saponification value of a premix: its oils' by mass, those of certificates and, where there is none, what sheets take from the
     * tables.
     *
     * @param premix a premix
     * @param tables of oils
     * @return mg KOH/g, and how sure it is; empty where it is no premix, or some oil of it is not in the tables or a wax, of which only
     *     some reacts
     */
    public static Optional<Figure> saponificationValue(OwnMaterial premix, Tables tables) {
        List<MixedFigures.Weighted> parts = new ArrayList<>();
        for (BlendPart part : premix.oils()) {
            Optional<lyewright.material.Oil> oil = tables.oil(part.key()).filter(known -> known.kind() != OilKind.WAX);
            oil.map(known -> part.saponificationValue()
                            .map(figure -> figure.figure(""))
                            .orElseGet(() -> byTables(known)))
                    .ifPresent(figure -> parts.add(
                            new MixedFigures.Weighted(figure, part.share().fraction())));
        }
        return parts.isEmpty() || parts.size() < premix.oils().size()
                ? Optional.empty()
                : Optional.of(MixedFigures.mean(parts, premix.source()));
    }

    /** As wide as what is published, around what sheets compute with. */
    private static Figure byTables(lyewright.material.Oil oil) {
        Figure published = oil.saponificationValue();
        double off = oil.reckoned().milligramsKohPerGram() - published.middle();
        return new Figure(published.low() + off, published.high() + off, published.spread(), published.source());
    }
}
