package lyewright.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.formula.OwnMaterial.BlendPart;
import lyewright.formula.OwnMaterial.Strength;
import lyewright.material.Alkali;
import lyewright.material.Figure;
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
     * Oils mixed beforehand.
     *
     * @param key what recipes call them
     * @param oils milligrams of each by its key, above 0
     * @param source where the shares come from
     * @return the premix, whose shares add up to 100 %
     */
    public static OwnMaterial premix(String key, Map<String, Long> oils, String source) {
        BigDecimal whole = BigDecimal.valueOf(
                oils.values().stream().mapToLong(Long::longValue).sum());
        List<BlendPart> parts = new ArrayList<>();
        BigDecimal rest = PERCENT;
        int left = oils.size();
        for (Map.Entry<String, Long> oil : oils.entrySet()) {
            left--;
            BigDecimal share = left == 0
                    ? rest
                    : BigDecimal.valueOf(oil.getValue())
                            .multiply(PERCENT)
                            .divide(whole, DECIMALS, RoundingMode.HALF_EVEN);
            rest = rest.subtract(share);
            BigDecimal plain = share.stripTrailingZeros();
            parts.add(new BlendPart(oil.getKey(), Share.ofPercent(plain.toPlainString())));
        }
        return OwnMaterial.made(key, OwnMaterial.OILS, Optional.empty(), parts, source);
    }
}
